#include "layout/engine/divide.h"

#include <algorithm>

namespace wainscot::engine {

bool overlap(const GridRect& a, const GridRect& b)
{
    return a.x < b.x + b.w && b.x < a.x + a.w && a.y < b.y + b.h && b.y < a.y + a.h;
}

bool sameCell(const GridRect& a, const GridRect& b)
{
    return a.x == b.x && a.y == b.y && a.w == b.w && a.h == b.h;
}

bool contains(const GridRect& outer, const GridRect& inner)
{
    return outer.x <= inner.x && outer.y <= inner.y && inner.x + inner.w <= outer.x + outer.w
        && inner.y + inner.h <= outer.y + outer.h;
}

GridRect around(const GridRect& a, const GridRect& b)
{
    GridRect both = a;
    both.x = std::min(a.x, b.x);
    both.y = std::min(a.y, b.y);
    both.w = std::max(a.x + a.w, b.x + b.w) - both.x;
    both.h = std::max(a.y + a.h, b.y + b.h) - both.y;
    return both;
}

std::set<int> edgesOf(const std::vector<GridRect>& blocks, bool across)
{
    std::set<int> edges;
    for (const GridRect& block : blocks) {
        const int begin = across ? block.y : block.x;
        edges.insert(begin);
        edges.insert(begin + (across ? block.h : block.w));
    }
    return edges;
}

bool crosses(const std::vector<GridRect>& blocks, bool across, int at)
{
    return std::any_of(blocks.begin(), blocks.end(), [&](const GridRect& block) {
        const int begin = across ? block.y : block.x;
        const int end = begin + (across ? block.h : block.w);
        return begin < at && at < end;
    });
}

bool partable(const std::vector<GridRect>& blocks)
{
    if (blocks.size() <= 1)
        return true;
    for (const bool across : {true, false})
        for (const int at : edgesOf(blocks, across)) {
            if (crosses(blocks, across, at))
                continue;
            std::vector<GridRect> before;
            std::vector<GridRect> after;
            for (const GridRect& block : blocks)
                ((across ? block.y : block.x) < at ? before : after).push_back(block);
            if (!before.empty() && !after.empty())
                return partable(before) && partable(after);
        }
    return false;
}

namespace {

// The block, grown until it overlaps none of the others; those it met are taken in.
std::vector<GridRect> takenIn(GridRect block, std::vector<GridRect> others)
{
    for (bool grew = true; grew;) {
        grew = false;
        for (std::size_t k = 0; k < others.size() && !grew; ++k)
            if (overlap(block, others[k])) {
                block = around(block, others[k]);
                others.erase(others.begin() + std::ptrdiff_t(k));
                grew = true;
            }
    }
    others.push_back(block);
    return others;
}

int areaOf(const std::vector<GridRect>& blocks)
{
    int cells = 0;
    for (const GridRect& block : blocks)
        cells += block.w * block.h;
    return cells;
}

} // namespace

std::vector<GridRect> withoutOverlaps(const std::vector<GridRect>& blocks)
{
    std::vector<GridRect> out;
    for (const GridRect& block : blocks)
        out = takenIn(block, std::move(out));
    return out;
}

std::vector<GridRect> joinedBlocks(std::vector<GridRect> blocks)
{
    blocks = withoutOverlaps(blocks);
    while (!partable(blocks)) {
        std::vector<GridRect> best;
        for (std::size_t a = 0; a < blocks.size(); ++a)
            for (std::size_t b = a + 1; b < blocks.size(); ++b) {
                std::vector<GridRect> others;
                for (std::size_t k = 0; k < blocks.size(); ++k)
                    if (k != a && k != b)
                        others.push_back(blocks[k]);
                auto joined = takenIn(around(blocks[a], blocks[b]), std::move(others));
                if (best.empty() || areaOf(joined) < areaOf(best))
                    best = std::move(joined);
            }
        blocks = std::move(best);
    }
    return blocks;
}

std::vector<Ring> ringsIn(const GridRect& part, const std::vector<GridRect>& blocks)
{
    const int right = part.x + part.w;
    const int foot = part.y + part.h;
    const auto inside = [](const std::set<int>& edges, int begin, int end) {
        return std::vector<int>(edges.upper_bound(begin), edges.lower_bound(end));
    };
    const std::vector<int> xs = inside(edgesOf(blocks, false), part.x, right);
    const std::vector<int> ys = inside(edgesOf(blocks, true), part.y, foot);
    const auto rect = [&](int x1, int y1, int x2, int y2) {
        return GridRect{part.page, x1, y1, x2 - x1, y2 - y1};
    };
    std::vector<Ring> out;
    const auto offer = [&](const Ring& ring) {
        const bool whole = std::all_of(blocks.begin(), blocks.end(), [&](const GridRect& block) {
            return std::any_of(ring.begin(), ring.end(), [&](const GridRect& one) {
                return contains(one, block);
            });
        });
        if (whole)
            out.push_back(ring);
    };
    for (std::size_t a = 0; a < xs.size(); ++a)
        for (std::size_t b = a + 1; b < xs.size(); ++b)
            for (std::size_t c = 0; c < ys.size(); ++c)
                for (std::size_t d = c + 1; d < ys.size(); ++d) {
                    const int x1 = xs[a];
                    const int x2 = xs[b];
                    const int y1 = ys[c];
                    const int y2 = ys[d];
                    const GridRect middle = rect(x1, y1, x2, y2);
                    offer({rect(part.x, part.y, x2, y1),
                        rect(x2, part.y, right, y2),
                        rect(part.x, y1, x1, foot),
                        middle,
                        rect(x1, y2, right, foot)});
                    offer({rect(part.x, part.y, x1, y2),
                        rect(x1, part.y, right, y1),
                        middle,
                        rect(x2, y1, right, foot),
                        rect(part.x, y2, x2, foot)});
                }
    return out;
}

} // namespace wainscot::engine
