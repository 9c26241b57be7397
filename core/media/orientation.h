// The eight ways a camera can have been held (EXIF 2.32, tag 274), as one swap and two flips.
#pragma once

#include "core/base/geometry.h"
#include "core/media/rows.h"

namespace wainscot {

// Stored to upright: flip along the stored axes, then swap rows and columns.
struct Turning {
    bool swaps = false;
    bool flipsX = false;
    bool flipsY = false;

    explicit constexpr Turning(int orientation)
        : swaps(orientation >= 5)
        , flipsX(orientation == 2 || orientation == 3 || orientation == 7 || orientation == 8)
        , flipsY(orientation == 3 || orientation == 4 || orientation == 6 || orientation == 7)
    {
    }

    [[nodiscard]] constexpr SizePx upright(SizePx stored) const
    {
        return swaps ? SizePx{stored.height, stored.width} : stored;
    }
    // The way back swaps the same sides.
    [[nodiscard]] constexpr SizePx stored(SizePx uprightSize) const { return upright(uprightSize); }

    // Where a rectangle of the upright picture lies in the stored one.
    [[nodiscard]] constexpr RectPx stored(const RectPx& part, SizePx storedSize) const
    {
        RectPx out = swaps ? RectPx{part.y, part.x, part.height, part.width} : part;
        if (flipsX)
            out.x = storedSize.width - out.x - out.width;
        if (flipsY)
            out.y = storedSize.height - out.y - out.height;
        return out;
    }
};

} // namespace wainscot
