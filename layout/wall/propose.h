// Where panels could hang on a wall: in their order, on one centre line, with equal gaps, clear of
// doors and of whatever must stay in sight.
#pragma once

#include "core/base/geometry.h"

#include <optional>
#include <span>
#include <vector>

namespace wainscot::wall {

struct HangingWish {
    SizeMm wall;
    std::vector<SizeMm> panels; // in the order they are read
    std::vector<RectMm> keepClear; // from the wall's upper left corner
    Mm centre; // of the panels above the floor: the eyes they are for
};

// A place for each panel, from the wall's upper left corner; none where there is no room left.
// Together in one stretch when they fit there, otherwise dealt over the stretches from the left;
// with the widest gap from 200 to 50 mm (common practice, no source) that holds them all. A panel
// that would reach over the wall's edge is moved up or down just onto it. Nothing overlaps.
[[nodiscard]] std::vector<std::optional<RectMm>> proposePlaces(const HangingWish& wish);

} // namespace wainscot::wall
