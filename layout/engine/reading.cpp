#include "layout/engine/reading.h"

#include <algorithm>
#include <map>
#include <numeric>
#include <set>

namespace wainscot::engine {

namespace {

struct Axis {
    int begin;
    int end;
};

Axis axisOf(const GridRect& cell, bool across)
{
    return across ? Axis{cell.y, cell.y + cell.h} : Axis{cell.x, cell.x + cell.w};
}

// Splits `ids` where a straight line passes between them.
std::vector<std::vector<int>> cutApart(
    std::vector<int> ids, const std::vector<GridRect>& cells, bool across)
{
    const auto at = [&](int i) { return axisOf(cells[std::size_t(i)], across); };
    std::stable_sort(
        ids.begin(), ids.end(), [&](int a, int b) { return at(a).begin < at(b).begin; });
    std::vector<std::vector<int>> parts;
    int end = 0;
    for (const int id : ids) {
        if (parts.empty() || at(id).begin >= end)
            parts.emplace_back();
        parts.back().push_back(id);
        end = std::max(end, at(id).end);
    }
    return parts;
}

void read(std::vector<int> ids, const std::vector<GridRect>& cells, std::vector<int>& out)
{
    if (ids.size() <= 1) {
        out.insert(out.end(), ids.begin(), ids.end());
        return;
    }
    auto parts = cutApart(ids, cells, true);
    if (parts.size() == 1)
        parts = cutApart(ids, cells, false);
    if (parts.size() == 1) { // a pinwheel: top to bottom, then left to right
        std::stable_sort(ids.begin(), ids.end(), [&](int a, int b) {
            const GridRect& p = cells[std::size_t(a)];
            const GridRect& q = cells[std::size_t(b)];
            return std::pair(p.y, p.x) < std::pair(q.y, q.x);
        });
        out.insert(out.end(), ids.begin(), ids.end());
        return;
    }
    for (auto& part : parts)
        read(std::move(part), cells, out);
}

} // namespace

std::vector<int> rowFirstOrder(const std::vector<GridRect>& cells)
{
    std::vector<int> order;
    std::vector<int> ids(cells.size());
    std::iota(ids.begin(), ids.end(), 0);
    int pages = 0;
    for (const GridRect& cell : cells)
        pages = std::max(pages, cell.page + 1);
    for (int page = 0; page < pages; ++page) {
        std::vector<int> here;
        std::copy_if(ids.begin(), ids.end(), std::back_inserter(here), [&](int i) {
            return cells[std::size_t(i)].page == page;
        });
        read(std::move(here), cells, order);
    }
    return order;
}

int orderInversions(const std::vector<GridRect>& cells, const std::vector<int>& groups)
{
    std::vector<GridRect> blocks;
    std::vector<std::vector<std::size_t>> members;
    std::map<std::pair<int, int>, std::size_t> places; // of page and group
    for (std::size_t i = 0; i < cells.size(); ++i) {
        const auto [at, isNew] = places.try_emplace({cells[i].page, groups[i]}, blocks.size());
        if (isNew || groups[i] == 0) {
            at->second = blocks.size();
            blocks.push_back(cells[i]);
            members.push_back({i});
            continue;
        }
        GridRect& block = blocks[at->second];
        const GridRect& cell = cells[i];
        const int right = std::max(block.x + block.w, cell.x + cell.w);
        const int bottom = std::max(block.y + block.h, cell.y + cell.h);
        block.x = std::min(block.x, cell.x);
        block.y = std::min(block.y, cell.y);
        block.w = right - block.x;
        block.h = bottom - block.y;
        members[at->second].push_back(i);
    }
    std::vector<std::size_t> order;
    for (const int block : rowFirstOrder(blocks)) {
        const auto& inside = members[std::size_t(block)];
        std::vector<GridRect> own;
        for (const std::size_t i : inside)
            own.push_back(cells[i]);
        for (const int k : rowFirstOrder(own))
            order.push_back(inside[std::size_t(k)]);
    }
    int count = 0;
    for (std::size_t a = 0; a < order.size(); ++a)
        for (std::size_t b = a + 1; b < order.size(); ++b)
            count += order[a] > order[b] ? 1 : 0;
    return count;
}

int leftEdges(const std::vector<GridRect>& cells)
{
    std::set<int> edges;
    for (const GridRect& cell : cells)
        edges.insert(cell.x);
    return int(edges.size());
}

} // namespace wainscot::engine
