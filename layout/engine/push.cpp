#include "layout/engine/push.h"

#include <algorithm>

namespace wainscot::engine {

namespace {

constexpr int kMostSteps = 400;

int indexOf(const LeafTable& leaves, ItemId id)
{
    for (int i = 0; i < leaves.size(); ++i)
        if (leaves.piece(i).item.id == id)
            return i;
    return -1;
}

int groupOf(const LeafTable& leaves, ItemId id)
{
    const int at = indexOf(leaves, id);
    return at < 0 ? 0 : leaves.piece(at).item.group;
}

// Rows by which `other` has to go on so that it keeps clear of `placed`; 0 = it is not in the way.
int inTheWay(const GridRect& placed, const GridRect& other, int gap, Push direction)
{
    if (placed.x >= other.x + other.w || other.x >= placed.x + placed.w)
        return 0;
    const bool apart = placed.y + placed.h + (direction == Push::Down ? gap : 0) <= other.y
        || other.y + other.h + (direction == Push::Up ? gap : 0) <= placed.y;
    if (apart)
        return 0;
    return direction == Push::Down ? placed.y + placed.h + gap - other.y
                                   : other.y + other.h + gap - placed.y;
}

// The most rows, up to `wanted`, that the piece can do without.
int spare(LeafTable& leaves, ItemId id, const GridRect& at, int wanted)
{
    const int index = indexOf(leaves, id);
    if (index < 0)
        return 0;
    for (int rows = std::min(wanted, at.h - 1); rows > 0; --rows)
        if (leaves.fit(index, at.x, at.w, at.h - rows).possible)
            return rows;
    return 0;
}

} // namespace

bool push(Pushing& pushing, ItemId piece, const GridRect& to, Push direction, LeafTable& leaves)
{
    const int rows = leaves.page().rows;
    if (to.y < 0 || to.y + to.h > rows)
        return false;
    pushing.cells[piece] = to;
    std::vector<ItemId> placed = {piece};
    int steps = 0;
    for (std::size_t k = 0; k < placed.size(); ++k) {
        const GridRect here = pushing.cells[placed[k]];
        for (auto& [id, cell] : pushing.cells) {
            if (id == placed[k])
                continue;
            const int a = groupOf(leaves, id);
            const int b = groupOf(leaves, placed[k]);
            const int gap = a > 0 && b > 0 && a != b ? 1 : 0;
            const int needed = inTheWay(here, cell, gap, direction);
            if (needed <= 0)
                continue;
            if (id == piece || pushing.fixed.count(id) > 0 || ++steps > kMostSteps)
                return false;
            const int gives = std::min(needed, int(pushing.share * cell.h));
            const int given = spare(leaves, id, cell, gives);
            cell.h -= given;
            cell.y += direction == Push::Down ? needed : given - needed;
            if (cell.y < 0 || cell.y + cell.h > rows)
                return false;
            placed.push_back(id);
        }
    }
    return true;
}

} // namespace wainscot::engine
