// Picture files as cameras and scanners write them: some stored sideways, most with capture times.
#pragma once

#include <QDateTime>
#include <QImage>
#include <QString>

#include <optional>

#include "core/base/result.h"

namespace wainscot::samples {

struct CameraNotes {
    std::optional<QDateTime> taken; // wall clock of the place
    std::optional<int> offsetMinutes; // from UTC, when the camera knew it
    int orientation = 1; // EXIF 1, 3, 6 or 8: the pixels are stored so that this turns them upright
    bool makerNote = false; // an invented one, which no output may keep
};

// Writes JPEG, PNG, WebP or TIFF by the file's ending; notes go into JPEG files only.
// The file appears whole or not at all.
Result<> writeCameraFile(const QString& path, const QImage& upright, const CameraNotes& notes);

// The EXIF block of a JPEG (an APP1 segment's content, from "Exif" on). EXIF 2.31, TIFF 6.0.
[[nodiscard]] QByteArray exifBlock(const CameraNotes& notes);

} // namespace wainscot::samples
