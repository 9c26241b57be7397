// The cheapest tree of a filled table, found again from its costs.
#include "layout/engine/run_table.h"

#include <cassert>

namespace wainscot::engine {

RunTable::Face RunTable::bestFace(int first, int last, int q, int h, bool stacksToo) const
{
    const Slot* at = slot(first, last, q);
    const bool single = last - first == 1;
    Face best = Plain;
    for (const Face which : {Stack, StackRow}) {
        if (which == Stack && !stacksToo)
            continue;
        if (face(at, single, which, h) < face(at, single, best, h))
            best = which;
    }
    return best;
}

Node RunTable::tree(int first, int last, GridRect at) const
{
    Node root;
    root.first = first;
    root.last = last;
    root.at = at;
    build(root, bestFace(first, last, m_spans.find(at.x, at.w), at.h, true));
    return root;
}

void RunTable::build(Node& out, Face which) const
{
    const bool single = out.last - out.first == 1;
    if (single)
        return;
    const int q = m_spans.find(out.at.x, out.at.w);
    const Cost value = face(slot(out.first, out.last, q), single, which, out.at.h);
    out.type = which == Stack ? NodeType::Stack : NodeType::Row;
    if (which == Stack)
        buildStack(out, value);
    else
        buildRow(out, value, which);
}

namespace {

// A child of the parent's own kind is one n-ary node with it.
void adopt(Node& parent, Node child)
{
    if (child.type == parent.type && child.last == parent.last && !child.children.empty()) {
        for (auto& grandchild : child.children)
            parent.children.push_back(std::move(grandchild));
        return;
    }
    parent.children.push_back(std::move(child));
}

Node part(int first, int last, GridRect at)
{
    Node node;
    node.first = first;
    node.last = last;
    node.at = at;
    return node;
}

} // namespace

// The cheapest tree is found again instead of being remembered: the table stays lean, and the order
// of the search (smaller split, then smaller height) settles ties.
void RunTable::buildStack(Node& out, Cost value) const
{
    const auto [page, x, y, w, h] = out.at;
    const int q = m_spans.find(x, w);
    const int band = bandInside(out.first, out.last);
    for (int split = out.first + 1; split < out.last; ++split) {
        if ((band >= 0 && split != band) || !splitAllowed(out.first, split, out.last))
            continue;
        const bool stacksToo = wholeGroup(out.first, split) || split == band;
        const int gap = gapRows(split);
        for (int a = 1; a + gap < h; ++a) {
            const Face upper = bestFace(out.first, split, q, a, stacksToo);
            const Cost top = face(slot(out.first, split, q), split - out.first == 1, upper, a);
            const int rest = h - a - gap;
            if (top >= kNever || top + cost(split, out.last, x, w, rest) != value)
                continue;
            Node above = part(out.first, split, {page, x, y, w, a});
            build(above, upper);
            out.children.push_back(std::move(above));
            Node below = part(split, out.last, {page, x, y + a + gap, w, rest});
            build(below, bestFace(split, out.last, q, rest, true));
            adopt(out, std::move(below));
            return;
        }
    }
    assert(!"a stored cost has no tree");
}

void RunTable::buildRow(Node& out, Cost value, Face which) const
{
    const auto [page, x, y, w, h] = out.at;
    for (int split = out.first + 1; split < out.last; ++split) {
        if (!splitAllowed(out.first, split, out.last))
            continue;
        const bool oneLeft = split - out.first == 1;
        const bool group = wholeGroup(out.first, split);
        for (std::size_t c = 0; c < m_system.cuts.size(); ++c) {
            const int cut = m_system.cuts[c];
            if (cut <= x || cut >= x + w)
                continue;
            const Slot* left = slot(out.first, split, m_spans.find(x, cut - x));
            const Slot* right = slot(split, out.last, m_spans.find(cut, x + w - cut));
            for (const Face lead : {Plain, Stack, StackRow}) {
                const bool calm = lead == Plain ? oneLeft || group : lead == StackRow && group;
                if (which == Plain ? !calm : lead != Stack)
                    continue;
                const Cost leftCost = face(left, oneLeft, lead, h);
                for (const Face next : {Plain, Stack, StackRow}) {
                    const Cost rightCost = face(right, out.last - split == 1, next, h);
                    const Cost extra = lead == Stack && next != Plain ? stackExtra(split) : 0;
                    if (leftCost >= kNever || rightCost >= kNever
                        || leftCost + rightCost + extra + m_system.prices[c] != value)
                        continue;
                    Node first = part(out.first, split, {page, x, y, cut - x, h});
                    build(first, lead);
                    out.children.push_back(std::move(first));
                    Node second = part(split, out.last, {page, cut, y, x + w - cut, h});
                    build(second, next);
                    adopt(out, std::move(second));
                    return;
                }
            }
        }
    }
    assert(!"a stored cost has no tree");
}

} // namespace wainscot::engine
