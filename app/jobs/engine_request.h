// Between pieces in a book and items of the arrangement engine.
#pragma once

#include "core/permit/cleared.h"
#include "layout/engine/arrangement.h"
#include "layout/typeset/measurer.h"
#include "layout/typeset/style.h"

#include <vector>

namespace wainscot {

// One panel to be arranged: cleared pieces in reading order, those that are pinned in their cells.
[[nodiscard]] engine::Request requestFor(
    const ClearedPanel& panel, const PanelStyle& style, const PanelMeasurer& text);

// The grid cell nearest to a place in millimetres, inside the grid.
[[nodiscard]] engine::GridRect gridRectFor(const Grid& grid, const RectMm& cell);

// The least resolution a picture may be printed at for people at the reading distance: one pixel an
// arcminute from close by, and never under 100 ppi.
[[nodiscard]] double leastPpi(const PanelStyle& style);

} // namespace wainscot
