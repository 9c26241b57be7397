// A small square code (QR Code, ISO/IEC 18004) as modules to draw.
#pragma once

#include "core/base/geometry.h"

#include <QString>

#include <vector>

namespace wainscot {

struct CodeSquare {
    int side = 0; // modules; 0 = the text cannot be put into a code
    std::vector<bool> dark; // row by row
    [[nodiscard]] bool isDark(int column, int row) const
    {
        return dark[std::size_t(row) * std::size_t(side) + std::size_t(column)];
    }
};

// Capital letters, digits and / take the fewest modules. Error correction level M: 15 % of it may
// be dirt (ISO/IEC 18004, 6.5.1).
[[nodiscard]] CodeSquare codeSquareOf(const QString& text);

// What must stay white around it, in modules (ISO/IEC 18004, 6.3.8).
inline constexpr int kCodeQuietModules = 4;

// The dark modules inside a square place, neighbours in a row as one rectangle.
[[nodiscard]] std::vector<RectMm> darkOf(const CodeSquare& code, PointMm topLeft, Mm module);

} // namespace wainscot
