// A page photographed from the side, as rows of a rectangle.
#pragma once

#include "core/media/page_part.h"
#include "core/model/treatment.h"

namespace wainscot {

// How a part of the straightened page comes out of the upright picture.
struct StraightenPlan {
    PagePart page; // what is wanted of the straightened page
    Corners corners; // in the upright picture
    SizePx upright;
    RectPx needed; // part of the upright picture in which all of it lies
    // `needed` may be shrunk to this and still has a pixel for each pixel of the page, where the
    // page is farthest from the camera; never larger than `needed`.
    SizePx neededSize;
};

// REQUIRES: canStraighten(corners, upright)
[[nodiscard]] StraightenPlan planStraightening(
    const PagePart& page, const Corners& corners, SizePx upright);

// The page's rows from rows of `plan.needed` in `plan.neededSize`. Each pixel is the mean of as
// many places as the camera had pixels for it, each taken by Catmull-Rom (Keys 1981) from sixteen.
// Holds only the rows that one slanted row of the page crosses.
// REQUIRES: source is grey or RGB
[[nodiscard]] std::unique_ptr<RowSource> straightened(
    std::unique_ptr<RowSource> source, const StraightenPlan& plan);

// The most bytes `straightened` holds of an RGB source.
[[nodiscard]] qint64 bytesHeld(const StraightenPlan& plan);

} // namespace wainscot
