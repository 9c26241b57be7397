#include "app/ui/canvas/grid_snap.h"

#include <algorithm>
#include <cmath>

namespace wainscot::ui {

namespace {

Mm columnPitch(const Grid& grid)
{
    return grid.column + grid.gutter;
}

// A cell of n columns is n pitches less one gutter wide; the same down the page.
int countFor(Mm length, Mm pitch, Mm gutter, int most)
{
    return std::clamp(int(std::lround((length + gutter) / pitch)), 1, most);
}

int lineFor(Mm at, Mm start, Mm pitch, int last)
{
    return std::clamp(int(std::lround((at - start) / pitch)), 0, last);
}

} // namespace

GridCell nearestCell(const Grid& grid, const RectMm& rect)
{
    GridCell cell;
    cell.columns = countFor(rect.width, columnPitch(grid), grid.gutter, grid.columns);
    cell.rows = countFor(rect.height, grid.rowUnit, grid.gutter, grid.rows);
    cell.column = lineFor(rect.x, grid.x(0), columnPitch(grid), grid.columns - cell.columns);
    cell.row = lineFor(rect.y, grid.y(0), grid.rowUnit, grid.rows - cell.rows);
    return cell;
}

RectMm rectOf(const Grid& grid, const GridCell& cell)
{
    return grid.cell(cell.column, cell.row, cell.columns, cell.rows);
}

RectMm snapped(const Grid& grid, const RectMm& rect)
{
    int column = lineFor(rect.x, grid.x(0), columnPitch(grid), grid.columns - 1);
    int row = lineFor(rect.y, grid.y(0), grid.rowUnit, grid.rows - 1);
    const Mm most(0.01); // sums of columns and gutters differ in their last digits
    const Mm right = grid.x(grid.columns - 1) + grid.column;
    const Mm bottom = grid.y(0) + grid.height(grid.rows);
    while (column > 0 && grid.x(column) + rect.width > right + most)
        --column;
    while (row > 0 && grid.y(row) + rect.height > bottom + most)
        --row;
    return {grid.x(column), grid.y(row), rect.width, rect.height};
}

RectMm moved(const Grid& grid, const RectMm& rect, int columns, int rows)
{
    return snapped(grid, rect.movedBy(columns * columnPitch(grid), rows * grid.rowUnit));
}

RectMm resized(const Grid& grid, const RectMm& from, Qt::Edges edges, Mm dx, Mm dy)
{
    const GridCell old = nearestCell(grid, from);
    int left = old.column;
    int right = old.column + old.columns;
    int top = old.row;
    int bottom = old.row + old.rows;
    const Mm pitch = columnPitch(grid);
    if (edges.testFlag(Qt::LeftEdge))
        left = std::min(lineFor(from.x + dx, grid.x(0), pitch, grid.columns - 1), right - 1);
    if (edges.testFlag(Qt::RightEdge)) {
        const Mm end = from.right() + dx + grid.gutter;
        right = std::max(lineFor(end, grid.x(0), pitch, grid.columns), left + 1);
    }
    if (edges.testFlag(Qt::TopEdge))
        top = std::min(lineFor(from.y + dy, grid.y(0), grid.rowUnit, grid.rows - 1), bottom - 1);
    if (edges.testFlag(Qt::BottomEdge)) {
        const Mm end = from.bottom() + dy + grid.gutter;
        bottom = std::max(lineFor(end, grid.y(0), grid.rowUnit, grid.rows), top + 1);
    }
    return rectOf(grid, {left, top, right - left, bottom - top});
}

GridCell stepped(const Grid& grid, GridCell cell, int step)
{
    const RectMm before = rectOf(grid, cell);
    const int columns = std::clamp(cell.columns + step, 1, grid.columns);
    const double shape = before.height / before.width;
    cell.columns = columns;
    cell.rows = countFor(grid.width(columns) * shape, grid.rowUnit, grid.gutter, grid.rows);
    cell.column = std::min(cell.column, grid.columns - cell.columns);
    cell.row = std::min(cell.row, grid.rows - cell.rows);
    return cell;
}

} // namespace wainscot::ui
