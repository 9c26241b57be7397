// What a file is, told by its first bytes. Its name and extension are never believed.
#pragma once

#include <QByteArrayView>
#include <QString>

namespace wainscot {

// "jpeg", "png", "webp", "tiff" or "heic"; empty for everything else. 32 bytes are enough.
[[nodiscard]] QString pictureFormat(QByteArrayView firstBytes);

// Why a file that is no picture we read is refused: "is a web page, not a picture" and the like.
// ENSURES: not empty
[[nodiscard]] QString whyNotAPicture(QByteArrayView firstBytes);

} // namespace wainscot
