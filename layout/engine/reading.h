// What the eye makes of an arrangement, measured apart from the engine's own costs.
#pragma once

#include "layout/engine/arrangement.h"

namespace wainscot::engine {

// Order in which a row-first reader meets the rectangles: cut across white rows first, then down
// white columns (recursive XY-cut). Indices into `cells`.
[[nodiscard]] std::vector<int> rowFirstOrder(const std::vector<GridRect>& cells);

// Pairs of `cells`, given in the intended order, that a row-first reader meets the wrong way round.
// `groups` (0 = alone) are read as one piece each, then within: nobody reads three days' labels
// before the first day.
[[nodiscard]] int orderInversions(
    const std::vector<GridRect>& cells, const std::vector<int>& groups);

// Columns at which something begins, counted once each.
[[nodiscard]] int leftEdges(const std::vector<GridRect>& cells);

} // namespace wainscot::engine
