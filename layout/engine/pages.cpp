#include "layout/engine/pages.h"

#include "layout/engine/pins.h"

#include <algorithm>
#include <map>
#include <set>

namespace wainscot::engine {

namespace {

bool reachesFoot(LeafTable& leaves, int first, int last)
{
    for (int i = first; i < last; ++i)
        if (leaves.piece(i).item.wish.stand == Stand::PageFoot)
            return true;
    return false;
}

// Whether adults outweigh the children (panel style 12, number 22).
bool childrenOutweighed(LeafTable& leaves, int first, int last)
{
    constexpr double kMost = 1.3;
    double adults = 0;
    double children = 0;
    for (int i = first; i < last; ++i) {
        const Piece& piece = leaves.piece(i);
        const Kind kind = piece.item.kind;
        if (kind == Kind::Quote)
            children += piece.said;
        else if (kind == Kind::Context || kind == Kind::Interpretation || kind == Kind::NextStep)
            adults += piece.said;
    }
    return adults > kMost * children;
}

// Costs of single pages, asked for once each.
class PageCosts {
public:
    PageCosts(const RunTable& table, LeafTable& leaves, const std::vector<Pin>& pins)
        : m_table(table)
        , m_leaves(leaves)
        , m_side(std::size_t(leaves.size()) + 1)
        , m_free(m_side * m_side, PageCost{-1, 0})
    {
        for (const Pin& pin : pins)
            m_pins[pin.at.page].push_back(pin);
        for (auto& [page, here] : m_pins)
            m_frames.emplace(page, PinnedPage(table, leaves, here));
    }

    int leastPages() const { return m_pins.empty() ? 1 : m_pins.rbegin()->first + 1; }

    // Cost of pieces first..last-1 on a page; the height used comes along.
    PageCost of(int page, int first, int last)
    {
        const int rows = m_leaves.page().rows;
        if (const auto frame = m_frames.find(page); frame != m_frames.end())
            return {beginsInside(first, last) ? kNever : frame->second.cost(first, last), rows};
        if (first == last)
            return {kNever, rows};
        auto& known = m_free[std::size_t(first) * m_side + std::size_t(last)];
        if (known.cost >= 0)
            return known;
        return known = pageCost(m_table, m_leaves, first, last);
    }

    PagePlan plan(int page, int first, int last)
    {
        PagePlan out;
        out.first = first;
        out.last = last;
        const auto [cost, height] = of(page, first, last);
        out.cost = cost;
        if (const auto frame = m_frames.find(page); frame != m_frames.end())
            frame->second.describe(out);
        else
            out.trees.push_back(
                m_table.tree(first, last, {page, 0, 0, m_leaves.page().columns, height}));
        return out;
    }

private:
    // A piece that must begin a page cannot stand in the middle of one, not even beside a pin.
    bool beginsInside(int first, int last) const
    {
        for (int i = first + 1; i < last; ++i)
            if (m_leaves.piece(i).item.breakBefore)
                return true;
        return false;
    }

    const RunTable& m_table;
    LeafTable& m_leaves;
    std::size_t m_side;
    std::vector<PageCost> m_free; // pages without pins, by run; -1 = not asked yet
    std::map<int, std::vector<Pin>> m_pins;
    std::map<int, PinnedPage> m_frames;
};

} // namespace

PageCost pageCost(const RunTable& table, LeafTable& leaves, int first, int last)
{
    const int rows = leaves.page().rows;
    PageCost best{kNever, rows};
    const int least = reachesFoot(leaves, first, last) ? rows : 1;
    for (int h = rows; h >= least; --h) {
        const Cost filled = table.cost(first, last, 0, leaves.page().columns, h);
        if (filled >= kNever)
            continue;
        const double foot = double(rows - h) / rows;
        const Cost white = toCost(leaves.weights().foot * foot);
        if (filled + white < best.cost)
            best = {filled + white, h};
    }
    if (best.cost >= kNever)
        return best;
    // Which breaks are best, not how the page is filled: pages of one display are equally full, and
    // on each of them children speak.
    const double empty = double(rows - best.height) / rows;
    best.cost += toCost(leaves.weights().footPool * empty * empty);
    best.cost += childrenOutweighed(leaves, first, last) ? toCost(leaves.weights().noVoice) : 0;
    return best;
}

Pagination paginate(const RunTable& table,
    LeafTable& leaves,
    const std::vector<Pin>& pins,
    std::optional<int> pages)
{
    PageCosts costs(table, leaves, pins);
    const int count = leaves.size();
    const int most = pages.value_or(std::max(count, costs.leastPages()));
    const auto width = std::size_t(count) + 1;
    const Cost perPage = toCost(leaves.weights().page);
    std::vector<std::vector<Cost>> best(std::size_t(most) + 1, std::vector<Cost>(width, kNever));
    std::vector<std::vector<int>> from(best.size(), std::vector<int>(width, -1));
    best[0][0] = 0;
    int chosen = -1;
    for (int q = 1; q <= most; ++q) {
        const auto page = std::size_t(q);
        for (int j = 0; j <= count; ++j)
            for (int i = 0; i <= j && (!pages || q < *pages || j == count); ++i) {
                const Cost before = best[page - 1][std::size_t(i)];
                if (before >= kNever)
                    continue;
                const Cost here = costs.of(q - 1, i, j).cost;
                if (here < kNever && before + here + perPage < best[page][std::size_t(j)]) {
                    best[page][std::size_t(j)] = before + here + perPage;
                    from[page][std::size_t(j)] = i;
                }
            }
        const Cost end = best[page][std::size_t(count)];
        const bool counts = pages ? q == *pages : q >= costs.leastPages();
        if (counts && end < kNever
            && (chosen < 0 || end < best[std::size_t(chosen)][std::size_t(count)]))
            chosen = q;
        // Further pages only help when these do not yet hold everything.
        if (!pages && chosen > 0 && q >= chosen + 2)
            break;
    }
    Pagination out;
    if (chosen < 0)
        return out;
    out.cost = best[std::size_t(chosen)][std::size_t(count)];
    int j = count;
    for (int q = chosen; q >= 1; --q) {
        const int i = from[std::size_t(q)][std::size_t(j)];
        out.pages.push_back(costs.plan(q - 1, i, j));
        j = i;
    }
    std::reverse(out.pages.begin(), out.pages.end());
    return out;
}

} // namespace wainscot::engine
