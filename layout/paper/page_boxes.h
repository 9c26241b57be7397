// The boxes of a printed page: the panel itself (trim), the colour beyond it (bleed) and the paper
// with room for crop marks (media).
#pragma once

#include "core/base/geometry.h"

#include <vector>

namespace wainscot::pdf {

// Dimensions of crop marks: 0.25 pt thin, 5 mm long, never inside the bleed (common practice,
// from memory).
inline constexpr Pt kCropMarkThickness{0.25};
inline constexpr Mm kCropMarkLength{5};
inline constexpr Mm kCropMarkLeastOffset{3};
inline constexpr Mm kCropMarkEdge{1}; // paper left beyond a mark

// A page side may have 3 to 14400 units of 1/72 inch (ISO 32000-1, annex C, as tested by the
// PDFA-2B rules for clause 6.1.13).
inline constexpr Pt kLeastSide{3};
inline constexpr Pt kGreatestSide{14400};

struct PageBoxes {
    SizeMm media;
    RectMm trim; // in the media; origin at the top left
    RectMm bleed;
    [[nodiscard]] bool fitsPdf() const;
};

[[nodiscard]] PageBoxes pageBoxes(SizeMm panel, Mm bleed, bool cropMarks);

struct Line {
    PointMm from;
    PointMm to;
};

// Two marks at every corner of the trim, in media coordinates.
[[nodiscard]] std::vector<Line> cropMarks(const PageBoxes& boxes, Mm bleed);

// A rectangle on the panel with every side that touches the panel's edge moved out by the bleed,
// so that a cut a little off shows no white line.
[[nodiscard]] RectMm bledOut(const RectMm& rect, SizeMm panel, Mm bleed);

// The smallest rectangle of the shape of `shape` that covers `area`, around the same centre.
[[nodiscard]] RectMm covering(const RectMm& area, SizeMm shape);

} // namespace wainscot::pdf
