#include "app/ui/session/align.h"

#include <algorithm>
#include <numeric>

namespace wainscot::ui {

std::vector<RectMm> aligned(std::vector<RectMm> cells, Line line)
{
    if (cells.empty())
        return cells;
    const RectMm to = cells.front();
    for (RectMm& cell : cells) {
        switch (line) {
        case Line::Left:
            cell.x = to.x;
            break;
        case Line::Centre:
            cell.x = to.x + (to.width - cell.width) / 2;
            break;
        case Line::Right:
            cell.x = to.right() - cell.width;
            break;
        case Line::Top:
            cell.y = to.y;
            break;
        case Line::Middle:
            cell.y = to.y + (to.height - cell.height) / 2;
            break;
        case Line::Foot:
            cell.y = to.bottom() - cell.height;
            break;
        }
    }
    return cells;
}

std::vector<RectMm> spread(std::vector<RectMm> cells, Qt::Orientation along)
{
    if (cells.size() < 3)
        return cells;
    const bool across = along == Qt::Horizontal;
    const auto startOf = [across](const RectMm& cell) { return across ? cell.x : cell.y; };
    const auto lengthOf = [across](
                              const RectMm& cell) { return across ? cell.width : cell.height; };
    std::vector<std::size_t> order(cells.size());
    std::iota(order.begin(), order.end(), std::size_t(0));
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        return startOf(cells[a]) < startOf(cells[b]);
    });
    const Mm first = startOf(cells[order.front()]);
    const RectMm& last = cells[order.back()];
    Mm room = startOf(last) + lengthOf(last) - first;
    for (const RectMm& cell : cells)
        room -= lengthOf(cell);
    const Mm gap = room / double(cells.size() - 1);
    Mm at = first;
    for (const std::size_t i : order) {
        (across ? cells[i].x : cells[i].y) = at;
        at += lengthOf(cells[i]) + gap;
    }
    return cells;
}

} // namespace wainscot::ui
