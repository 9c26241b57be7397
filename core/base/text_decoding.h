// Bytes of a text file to letters.
#pragma once

#include <QByteArray>
#include <QString>

namespace wainscot {

// By byte order mark UTF-8 or UTF-16 (either order); without one UTF-8 where the bytes are valid
// UTF-8; otherwise Windows-1252 by the table of the WHATWG Encoding Standard.
[[nodiscard]] QString textFromBytes(const QByteArray& bytes);

} // namespace wainscot
