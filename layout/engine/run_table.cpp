#include "layout/engine/run_table.h"

#include <algorithm>

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
    const int begin = m_runs[runIndex(first, last)];
    if (begin < 0 || q < 0)
        return nullptr;
    const Slot& found = m_slots[std::size_t(begin) + std::size_t(q)];
    return found.empty() ? nullptr : &found;
}

const Cost* RunTable::row(const Slot* slot, bool single, Face which) const
{
    if (single && which != Plain)
        return nullptr;
    return slot->data + std::ptrdiff_t(which) * std::ptrdiff_t(m_rows - slot->least + 1);
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
    m_runs[runIndex(first, last)] = begin;
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
    const auto count = std::size_t(m_rows - least) + 1;
    Cost* const data = room(count * (single ? 1 : 3));
    Cost* at = data;
    for (std::size_t face = 0; face < (single ? 1U : 3U); ++face)
        for (std::size_t k = 0; k < count; ++k)
            *at++ = std::min(kNever, faces[face][std::size_t(least) + k]);
    const int begin = m_runs[runIndex(first, last)];
    m_slots[std::size_t(begin) + std::size_t(q)] = {data, least};
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

} // namespace wainscot::engine
