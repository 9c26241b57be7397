// Is a page too empty, or is there too much for it? Numbers only; what to propose, and the
// sentence, are made in app.
#pragma once

#include "layout/engine/arrangement.h"

namespace wainscot::engine {

// How a page is used, as shares of the area between its margins.
struct PageUse {
    double white = 0; // not covered by pieces, each with the gutter that follows it
    double hole = 0; // the largest empty rectangle, the foot of the page included
    int holeColumns = 0;
    int holeRows = 0;
};

// REQUIRES: the arrangement was made for that page; `number` counts from 0.
[[nodiscard]] PageUse pageUse(const Arrangement& arrangement, const PageSpec& page, int number = 0);

// More white than a panel needs to breathe: style panels of many pieces come out at .30 to .42.
inline constexpr double kSparseWhite = 0.48;
// Or a third of the page in one empty rectangle.
inline constexpr double kSparseHole = 0.30;
[[nodiscard]] bool isSparse(const PageUse& use);

// How many A4 sheets (210 x 297 mm, ISO 216) an area is, to the next half; at least a half.
[[nodiscard]] double a4Sheets(double mm2);

// Room in mm2 that items need at the least: each one's smallest cell on the page, gutters included.
[[nodiscard]] double leastRoom(
    const std::vector<Item>& items, const PageSpec& page, const TextMeasurer& text);

} // namespace wainscot::engine
