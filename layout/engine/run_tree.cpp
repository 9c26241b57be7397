// The cheapest tree of a filled table, found again from its costs.
#include "layout/engine/run_table.h"

#include <algorithm>
#include <cassert>

namespace wainscot::engine {

// The two kinds of row are not stored apart; where it matters, the cost of one is worked out again.
Cost RunTable::rowCost(int first, int last, int q, int h, Face which) const
{
    Cost best = kNever;
    for (int split = first + 1; split < last; ++split) {
        const bool oneLeft = split - first == 1;
        const bool leads =
            which == StackRowFace ? !oneLeft : oneLeft || m_rules.wholeGroup(first, split);
        if (!leads || !m_rules.splitAllowed(first, split, last))
            continue;
        const Rows lead = which == StackRowFace ? Stack : Calm;
        const Rows next = which == StackRowFace && m_rules.stackExtra(split) > 0 ? Beside : Any;
        for (const Intervals::Parting& parting : m_spans.partings(q)) {
            const Cost left = at(slot(first, split, parting.left), oneLeft, lead, h);
            const Cost right = at(slot(split, last, parting.right), last - split == 1, next, h);
            if (left < kNever && right < kNever)
                best = std::min(best, left + right + parting.price);
        }
    }
    return best;
}

RunTable::Face RunTable::bestFace(int first, int last, int q, int h, bool stacksToo) const
{
    const bool single = last - first == 1;
    const Slot* here = slot(first, last, q);
    const Cost value = at(here, single, stacksToo ? Any : Calm, h);
    if (single || rowCost(first, last, q, h, PlainFace) == value)
        return PlainFace;
    return stacksToo && at(here, single, Stack, h) == value ? StackFace : StackRowFace;
}

// The face that costs `value` at the right of a stack of its own kind.
RunTable::Face RunTable::besideFace(int first, int last, int q, int h, Cost value) const
{
    const bool single = last - first == 1;
    if (single || rowCost(first, last, q, h, PlainFace) == value)
        return PlainFace;
    const Cost stack = at(slot(first, last, q), single, Stack, h);
    return stack + m_stackExtra == value ? StackFace : StackRowFace;
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
    if (out.last - out.first == 1)
        return;
    const int q = m_spans.find(out.at.x, out.at.w);
    if (which == StackFace) {
        out.type = NodeType::Stack;
        buildStack(out, at(slot(out.first, out.last, q), false, Stack, out.at.h));
    } else {
        out.type = NodeType::Row;
        buildRow(out, rowCost(out.first, out.last, q, out.at.h, which), which);
    }
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
    const int band = m_rules.bandInside(out.first, out.last);
    for (int split = out.first + 1; split < out.last; ++split) {
        if ((band >= 0 && split != band) || !m_rules.splitAllowed(out.first, split, out.last))
            continue;
        const bool stacksToo = m_rules.wholeGroup(out.first, split) || split == band;
        const int gap = m_rules.gapRows(split);
        for (int a = 1; a + gap < h; ++a) {
            const Cost top =
                at(slot(out.first, split, q), split - out.first == 1, stacksToo ? Any : Calm, a);
            const int rest = h - a - gap;
            if (top >= kNever || top + cost(split, out.last, x, w, rest) != value)
                continue;
            Node above = part(out.first, split, {page, x, y, w, a});
            build(above, bestFace(out.first, split, q, a, stacksToo));
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
    const bool stackLeads = which == StackRowFace;
    for (int split = out.first + 1; split < out.last; ++split) {
        const bool oneLeft = split - out.first == 1;
        const bool oneRight = out.last - split == 1;
        if (!m_rules.splitAllowed(out.first, split, out.last)
            || (stackLeads ? oneLeft : !oneLeft && !m_rules.wholeGroup(out.first, split)))
            continue;
        const bool misleads = stackLeads && m_rules.stackExtra(split) > 0;
        for (const auto& parting : m_spans.partings(m_spans.find(x, w))) {
            const Slot* left = slot(out.first, split, parting.left);
            const Slot* right = slot(split, out.last, parting.right);
            const Cost lead = at(left, oneLeft, stackLeads ? Stack : Calm, h);
            const Cost next = at(right, oneRight, misleads ? Beside : Any, h);
            if (lead >= kNever || next >= kNever || lead + next + parting.price != value)
                continue;
            const int cut = m_spans.span(parting.right).x;
            Node first = part(out.first, split, {page, x, y, cut - x, h});
            build(
                first, stackLeads ? StackFace : bestFace(out.first, split, parting.left, h, false));
            out.children.push_back(std::move(first));
            Node second = part(split, out.last, {page, cut, y, x + w - cut, h});
            build(second,
                misleads ? besideFace(split, out.last, parting.right, h, next)
                         : bestFace(split, out.last, parting.right, h, true));
            adopt(out, std::move(second));
            return;
        }
    }
    assert(!"a stored cost has no tree");
}

} // namespace wainscot::engine
