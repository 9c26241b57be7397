// Which part of a picture some rows show, in how many pixels.
#pragma once

#include "core/media/rows.h"

namespace wainscot {

struct PagePart {
    SizePx whole; // the picture
    RectPx part; // of it, in its pixels
    SizePx size; // of the rows

    // Where the middle of a pixel of the rows lies in the picture, 0..1.
    [[nodiscard]] double across(int x) const
    {
        return (part.x + (x + 0.5) * part.width / size.width) / whole.width;
    }
    [[nodiscard]] double down(int y) const
    {
        return (part.y + (y + 0.5) * part.height / size.height) / whole.height;
    }
};

} // namespace wainscot
