#include "layout/engine/divisions.h"

#include <algorithm>

namespace wainscot::engine {

namespace {

constexpr int kLargePart = 3; // a part with at least a third of the page's pieces

// Two runs of pieces, one above the other or side by side.
struct Division {
    Cost cost = kNever;
    int split = 0;
    NodeType type = NodeType::Stack;
    GridRect before;
    GridRect after;
};

bool beginsWithStack(const Node& node)
{
    return node.type == NodeType::Stack
        || (node.type == NodeType::Row && node.children.front().type == NodeType::Stack);
}

// Finds divisions of the run first..last-1 in one rectangle.
class Divider {
public:
    Divider(const RunTable& table, int first, int last, const GridRect& at)
        : m_table(table)
        , m_first(first)
        , m_last(last)
        , m_at(at)
    {
    }

    [[nodiscard]] std::vector<Division> all() const
    {
        std::vector<Division> out;
        const int band = m_table.rules().bandInside(m_first, m_last);
        for (int split = m_first + 1; split < m_last; ++split) {
            if (!m_table.rules().splitAllowed(m_first, split, m_last)
                || (band >= 0 && split != band))
                continue;
            keep(across(split), out);
            if (band < 0)
                for (std::size_t c = 0; c < m_table.system().cuts.size(); ++c)
                    keep(down(split, c), out);
        }
        return out;
    }

    [[nodiscard]] Node tree(const Division& division) const
    {
        Node out{division.type, m_first, m_last, m_at, {}};
        out.children.push_back(m_table.tree(m_first, division.split, division.before));
        out.children.push_back(m_table.tree(division.split, m_last, division.after));
        return out;
    }

private:
    static void keep(const Division& one, std::vector<Division>& out)
    {
        if (one.cost < kNever)
            out.push_back(one);
    }

    [[nodiscard]] Cost costIn(int first, int last, const GridRect& at) const
    {
        return m_table.cost(first, last, at.x, at.w, at.h);
    }

    // The cheapest height for a cut across.
    [[nodiscard]] Division across(int split) const
    {
        Division best;
        const int gap = m_table.rules().gapRows(split);
        for (int a = 1; a + gap < m_at.h; ++a) {
            Division one{0, split, NodeType::Stack, m_at, m_at};
            one.before.h = a;
            one.after.y = m_at.y + a + gap;
            one.after.h = m_at.h - a - gap;
            one.cost = std::min(
                kNever, costIn(m_first, split, one.before) + costIn(split, m_last, one.after));
            if (one.cost < best.cost)
                best = one;
        }
        return best;
    }

    [[nodiscard]] Division down(int split, std::size_t c) const
    {
        const int cut = m_table.system().cuts[c];
        if (cut <= m_at.x || cut >= m_at.x + m_at.w)
            return {};
        Division one{0, split, NodeType::Row, m_at, m_at};
        one.before.w = cut - m_at.x;
        one.after.x = cut;
        one.after.w = m_at.x + m_at.w - cut;
        one.cost = std::min(kNever,
            costIn(m_first, split, one.before) + costIn(split, m_last, one.after)
                + m_table.system().prices[c]);
        return one;
    }

    const RunTable& m_table;
    int m_first;
    int m_last;
    GridRect m_at;
};

// A larger part of the page, reached by child numbers, and another way to divide it.
struct Way {
    Cost cost = kNever; // of the whole page, without what the halves do not know of each other
    std::vector<std::size_t> path;
    Division division;
};

Node& partAt(PagePlan& page, const std::vector<std::size_t>& path)
{
    Node* at = &page.trees[path.front()];
    for (std::size_t k = 1; k < path.size(); ++k)
        at = &at->children[path[k]];
    return *at;
}

void addWays(const RunTable& table,
    const PagePlan& page,
    const Node& part,
    const std::vector<std::size_t>& path,
    Cost dearest,
    std::vector<Way>& out)
{
    if (part.children.empty() || kLargePart * (part.last - part.first) < page.last - page.first)
        return;
    const GridRect& at = part.at;
    const Cost rest = page.cost - table.cost(part.first, part.last, at.x, at.w, at.h);
    for (const Division& one : Divider(table, part.first, part.last, at).all()) {
        const Node& next = part.children[1];
        const bool asItIs = one.type == part.type && one.split == next.first
            && (one.type == NodeType::Stack || one.after.x == next.at.x);
        if (!asItIs && rest + one.cost <= dearest)
            out.push_back({rest + one.cost, path, one});
    }
}

PagePlan pageWith(const RunTable& table, const PagePlan& best, const Way& way)
{
    PagePlan page = best;
    Node& part = partAt(page, way.path);
    part = Divider(table, part.first, part.last, part.at).tree(way.division);
    page.cost = way.cost;
    if (part.type == NodeType::Row && part.children[0].type == NodeType::Stack
        && beginsWithStack(part.children[1]))
        page.cost += table.rules().stackExtra(way.division.split);
    return page;
}

} // namespace

std::vector<PagePlan> divisions(
    const RunTable& table, const PagePlan& best, std::size_t most, Cost dearest)
{
    std::vector<Way> ways;
    for (std::size_t t = 0; t < best.trees.size(); ++t) {
        const Node& root = best.trees[t];
        addWays(table, best, root, {t}, dearest, ways);
        for (std::size_t k = 0; k < root.children.size(); ++k)
            addWays(table, best, root.children[k], {t, k}, dearest, ways);
    }
    std::stable_sort(
        ways.begin(), ways.end(), [](const Way& a, const Way& b) { return a.cost < b.cost; });
    std::vector<PagePlan> out;
    for (const Way& way : ways)
        if (out.size() < most)
            out.push_back(pageWith(table, best, way));
    return out;
}

} // namespace wainscot::engine
