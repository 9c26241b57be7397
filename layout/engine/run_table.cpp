#include "layout/engine/run_table.h"

#include <algorithm>
#include <cassert>
#include <cstring>

namespace wainscot::engine {

namespace {

constexpr std::size_t kBlock = 1 << 15; // costs taken from the system at a time

} // namespace

// Working rows of one state; index = height.
struct RunTable::Scratch {
    explicit Scratch(int rows)
        : size(std::size_t(rows) + 1)
        , stacks(2 * size)
    {
        for (auto& row : faces)
            row.assign(size, kNever);
    }
    std::size_t size;
    std::array<std::vector<Cost>, 3> faces;
    std::vector<Cost> stacks;
};

RunTable::RunTable(LeafTable& leaves, ColumnSystem system)
    : m_leaves(leaves)
    , m_system(std::move(system))
    , m_spans(m_system, leaves.page().columns)
    , m_count(leaves.size())
    , m_rows(leaves.page().rows)
    , m_stackExtra(toCost(leaves.weights().sideBySideStacks))
    , m_cells(1, 0)
    , m_runs(std::size_t(m_count) * std::size_t(m_count + 1), -1)
{
    for (int i = 0; i < m_count; ++i) {
        m_groups.push_back(leaves.piece(i).item.group);
        int least = leaves.page().columns * m_rows + 1;
        for (int q = 0; q < m_spans.count(); ++q) {
            const auto span = m_spans.span(q);
            const int rows = leaves.leastRows(i, span.x, span.w);
            if (rows <= m_rows)
                least = std::min(least, span.w * rows);
        }
        m_cells.push_back(m_cells.back() + least);
    }
}

// A group is one rectangle: a run holds all of it and strangers, or a part of it alone.
bool RunTable::runAllowed(int first, int last) const
{
    for (int i = first + 1; i < last; ++i)
        if (m_leaves.piece(i).item.breakBefore)
            return false;
    const auto group = [this](int i) { return m_groups[std::size_t(i)]; };
    const bool inside = group(first) > 0 && group(first) == group(last - 1);
    if (inside)
        return true;
    const bool cutsAbove = first > 0 && group(first) > 0 && group(first - 1) == group(first);
    const bool cutsBelow = last < m_count && group(last) > 0 && group(last - 1) == group(last);
    return !cutsAbove && !cutsBelow;
}

bool RunTable::splitAllowed(int first, int split, int last) const
{
    const auto group = [this](int i) { return m_groups[std::size_t(i)]; };
    if (group(split) <= 0 || group(split) != group(split - 1))
        return true;
    return group(first) == group(split) && group(last - 1) == group(split);
}

bool RunTable::wholeGroup(int first, int last) const
{
    const int group = m_groups[std::size_t(first)];
    return group > 0 && last - first > 1 && m_groups[std::size_t(last - 1)] == group
        && (last >= m_count || m_groups[std::size_t(last)] != group);
}

int RunTable::bandInside(int first, int last) const
{
    for (int i = first + 1; i < last; ++i)
        if (m_leaves.piece(i).item.wish.bandBefore)
            return i;
    return -1;
}

// One whole row of white parts two groups, and a band of groups from another, one above the other.
int RunTable::gapRows(int split) const
{
    const int above = m_groups[std::size_t(split - 1)];
    const int below = m_groups[std::size_t(split)];
    if (m_leaves.piece(split).item.wish.bandBefore)
        return above > 0 || below > 0 ? 1 : 0;
    return above > 0 && below > 0 && above != below ? 1 : 0;
}

// Side by side, two stacks of one kind read ambiguously; where a group ends, nobody can be misled.
Cost RunTable::stackExtra(int split) const
{
    const int left = m_groups[std::size_t(split - 1)];
    return left == m_groups[std::size_t(split)] ? m_stackExtra : 0;
}

int RunTable::widest(int first, int last) const
{
    const int asked = m_leaves.piece(first).item.wish.blockColumns;
    const bool starts =
        first == 0 || m_leaves.piece(first - 1).item.group != m_leaves.piece(first).item.group;
    const int columns = m_leaves.page().columns;
    return asked > 0 && starts && wholeGroup(first, last) ? std::min(asked, columns) : columns;
}

const RunTable::Slot* RunTable::slot(int first, int last, int q) const
{
    const int begin = m_runs[std::size_t(first * (m_count + 1) + last - first)];
    if (begin < 0 || q < 0)
        return nullptr;
    const Slot& found = m_slots[std::size_t(begin + q)];
    return found.empty() ? nullptr : &found;
}

const Cost* RunTable::row(const Slot* slot, bool single, Face which) const
{
    if (single && which != Plain)
        return nullptr;
    return slot->data + std::ptrdiff_t(which) * (m_rows - slot->least + 1);
}

Faces RunTable::faces(const Slot& slot, bool single, int from) const
{
    const int skip = from - slot.least;
    const int stride = m_rows - slot.least + 1;
    if (single)
        return {slot.data + skip, nullptr, nullptr};
    return {slot.data + skip, slot.data + stride + skip, slot.data + 2 * stride + skip};
}

Cost RunTable::face(const Slot* slot, bool single, Face which, int h) const
{
    if (slot == nullptr || h < slot->least || h > m_rows)
        return kNever;
    const Cost* at = row(slot, single, which);
    return at == nullptr ? kNever : at[h - slot->least];
}

bool RunTable::fill(const std::atomic<bool>* cancel)
{
    Scratch scratch(m_rows);
    for (int length = 1; length <= m_count; ++length) {
        bool any = false;
        for (int first = 0; first + length <= m_count; ++first) {
            if (cancel != nullptr && cancel->load(std::memory_order_relaxed))
                return false;
            const int last = first + length;
            const int cells = m_cells[std::size_t(last)] - m_cells[std::size_t(first)];
            if (cells > m_leaves.page().columns * m_rows)
                continue;
            any = true;
            if (runAllowed(first, last))
                fillRun(first, last, scratch);
        }
        if (!any)
            break; // nothing longer fits a page either
    }
    return true;
}

void RunTable::fillRun(int first, int last, Scratch& scratch)
{
    const int begin = int(m_slots.size());
    m_runs[std::size_t(first * (m_count + 1) + last - first)] = begin;
    m_slots.resize(m_slots.size() + std::size_t(m_spans.count()));
    const int cells = m_cells[std::size_t(last)] - m_cells[std::size_t(first)];
    const bool banded = bandInside(first, last) >= 0;
    const int most = widest(first, last);
    for (int q = 0; q < m_spans.count(); ++q) {
        const auto span = m_spans.span(q);
        if (span.w > most || cells > span.w * m_rows
            || (banded && span.w != m_leaves.page().columns))
            continue;
        if (last - first == 1) {
            scratch.faces[Plain] = m_leaves.costs(first, span.x, span.w);
        } else {
            for (auto& face : scratch.faces)
                std::fill(face.begin(), face.end(), kNever);
            fillStacks(first, last, q, scratch);
            if (!banded)
                fillRows(first, last, q, scratch);
        }
        keep(first, last, q, scratch);
    }
}

void RunTable::fillStacks(int first, int last, int q, Scratch& scratch)
{
    const int band = bandInside(first, last);
    for (int split = first + 1; split < last; ++split) {
        if ((band >= 0 && split != band) || !splitAllowed(first, split, last))
            continue;
        const Slot* above = slot(first, split, q);
        const Slot* below = slot(split, last, q);
        if (above == nullptr || below == nullptr)
            continue;
        const int gap = gapRows(split);
        if (above->least + below->least + gap > m_rows)
            continue;
        StackJob job;
        job.out = scratch.faces[Stack].data();
        job.upper = faces(*above, split - first == 1, above->least);
        job.upperStacks = wholeGroup(first, split) || split == band;
        job.lower = faces(*below, last - split == 1, below->least);
        job.upperLeast = above->least;
        job.lowerLeast = below->least;
        job.rows = m_rows;
        job.shift = gap;
        job.scratch = scratch.stacks.data();
        stackAll(job);
    }
}

void RunTable::fillRows(int first, int last, int q, Scratch& scratch)
{
    const auto span = m_spans.span(q);
    for (int split = first + 1; split < last; ++split) {
        if (!splitAllowed(first, split, last))
            continue;
        const bool oneLeft = split - first == 1;
        const bool group = wholeGroup(first, split);
        const Cost extra = stackExtra(split);
        for (std::size_t c = 0; c < m_system.cuts.size(); ++c) {
            const int cut = m_system.cuts[c];
            if (cut <= span.x || cut >= span.x + span.w)
                continue;
            const Slot* left = slot(first, split, m_spans.find(span.x, cut - span.x));
            const Slot* right = slot(split, last, m_spans.find(cut, span.x + span.w - cut));
            if (left == nullptr || right == nullptr)
                continue;
            const int from = std::max(left->least, right->least);
            const Faces lead = faces(*left, oneLeft, from);
            RowJob job{scratch.faces[Plain].data() + from,
                lead.plain,
                faces(*right, last - split == 1, from),
                m_system.prices[c],
                0,
                m_rows - from + 1};
            if (oneLeft || group)
                addRow(job);
            if (oneLeft)
                continue;
            if (group) {
                job.left = lead.stackRow;
                addRow(job);
            }
            job.out = scratch.faces[StackRow].data() + from;
            job.left = lead.stack;
            job.stackExtra = extra;
            addRow(job);
        }
    }
}

Cost* RunTable::room(std::size_t count)
{
    if (m_blockUsed + count > m_blockSize) {
        m_blockSize = std::max(kBlock, count);
        m_blocks.push_back(std::make_unique<Cost[]>(m_blockSize));
        m_blockUsed = 0;
        m_bytes += m_blockSize * sizeof(Cost);
    }
    Cost* at = m_blocks.back().get() + m_blockUsed;
    m_blockUsed += count;
    return at;
}

void RunTable::keep(int first, int last, int q, const Scratch& scratch)
{
    const bool single = last - first == 1;
    const auto& faces = scratch.faces;
    int least = 1;
    for (; least <= m_rows; ++least) {
        const auto h = std::size_t(least);
        const Cost rest = single ? kNever : std::min(faces[Stack][h], faces[StackRow][h]);
        if (std::min(faces[Plain][h], rest) < kNever)
            break;
    }
    if (least > m_rows)
        return;
    const int count = m_rows - least + 1;
    Cost* data = room(std::size_t(count) * (single ? 1 : 3));
    for (int face = 0; face < (single ? 1 : 3); ++face)
        for (int k = 0; k < count; ++k)
            data[face * count + k] =
                std::min(kNever, faces[std::size_t(face)][std::size_t(least + k)]);
    const int begin = m_runs[std::size_t(first * (m_count + 1) + last - first)];
    m_slots[std::size_t(begin + q)] = {data, least};
}

std::size_t RunTable::bytes() const
{
    return m_bytes + m_slots.capacity() * sizeof(Slot) + m_runs.capacity() * sizeof(int);
}

Cost RunTable::cost(int first, int last, int x, int w, int h) const
{
    if (h < 1 || h > m_rows)
        return kNever;
    const Slot* at = slot(first, last, m_spans.find(x, w));
    const bool single = last - first == 1;
    return std::min(
        {face(at, single, Plain, h), face(at, single, Stack, h), face(at, single, StackRow, h)});
}

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
