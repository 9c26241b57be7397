// Moves and resizes on a panel's grid. Pieces keep their width in columns and height in rows while
// they move; a resize ends on grid lines.
#pragma once

#include <Qt>

#include "core/base/geometry.h"
#include "layout/typeset/style.h"

namespace wainscot::ui {

// Columns from the left, rows from the top, and how many of each.
struct GridCell {
    int column = 0;
    int row = 0;
    int columns = 1;
    int rows = 1;
    friend bool operator==(const GridCell&, const GridCell&) = default;
};

// The cell of the grid that lies nearest to a rectangle; always inside the panel's margins.
[[nodiscard]] GridCell nearestCell(const Grid& grid, const RectMm& rect);
[[nodiscard]] RectMm rectOf(const Grid& grid, const GridCell& cell);
// The rectangle in its own size, its corner on the nearest lines of the grid that keep it inside
// the margins. A photo's place need not be whole columns wide.
[[nodiscard]] RectMm snapped(const Grid& grid, const RectMm& rect);
// The same, some columns and rows further.
[[nodiscard]] RectMm moved(const Grid& grid, const RectMm& rect, int columns, int rows);

// Resized by dragging some edges by (dx, dy); at least one column and one row remain.
[[nodiscard]] RectMm resized(const Grid& grid, const RectMm& from, Qt::Edges edges, Mm dx, Mm dy);
// One step of size with the shape kept as nearly as the grid allows: +1 column, or -1.
[[nodiscard]] GridCell stepped(const Grid& grid, GridCell cell, int step);

} // namespace wainscot::ui
