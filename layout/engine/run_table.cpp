#include "layout/engine/run_table.h"

#include <algorithm>

namespace wainscot::engine {

// A place where the run being filled may be parted.
struct RunTable::Split {
    int at = 0;
    const Slot* before = nullptr; // by span
    const Slot* after = nullptr;
    int gap = 0; // rows of white between the two when one lies above the other
    bool single = false; // one piece before
    bool singleAfter = false;
    bool group = false; // one whole group before
    bool band = false;
    bool misleads = false; // stacks side by side
};

// Working rows of one state; index = height. A little longer than needed, for the lanes.
struct RunTable::Scratch {
    explicit Scratch(int rows)
        : plain(std::size_t(rows) + 1 + kLanes, kNever)
        , stack(plain)
        , stackRow(plain)
        , caps(std::size_t(rows) + 1, kNever - 1)
    {
    }
    std::vector<Cost> plain;
    std::vector<Cost> stack;
    std::vector<Cost> stackRow;
    std::vector<Cost> byCells; // what the run may cost at most
    std::vector<Cost> caps; // the same for one span, by height
    std::vector<Split> splits;
    std::vector<RowTerm> rowTerms;
    std::vector<StackTerm> stackTerms;
    int low = 1; // heights that matter
    int high = 0;
};

RunTable::RunTable(LeafTable& leaves, ColumnSystem system)
    : m_leaves(leaves)
    , m_rules(leaves)
    , m_system(std::move(system))
    , m_spans(m_system, leaves.page().columns)
    , m_count(leaves.size())
    , m_rows(leaves.page().rows)
    , m_stackExtra(toCost(leaves.weights().sideBySideStacks))
    , m_cells(1, 0)
    , m_runs(std::size_t(m_count) * std::size_t(m_count + 1), nullptr)
    , m_costs(kLanes)
{
    for (int i = 0; i < m_count; ++i) {
        int least = leaves.page().columns * m_rows + 1;
        for (int q = 0; q < m_spans.count(); ++q) {
            const auto span = m_spans.span(q);
            const std::vector<Cost>& costs = leaves.costs(i, span.x, span.w);
            int rows = 1;
            while (rows <= m_rows && costs[std::size_t(rows)] >= kNever)
                ++rows;
            if (rows <= m_rows)
                least = std::min(least, span.w * rows);
        }
        m_cells.push_back(m_cells.back() + least);
    }
}

const RunTable::Slot* RunTable::slot(int first, int last, int q) const
{
    const Slot* slots = m_runs[runIndex(first, last)];
    return slots == nullptr || q < 0 || slots[q].empty() ? nullptr : slots + q;
}

Cost RunTable::at(const Slot* slot, bool single, Rows which, int h)
{
    if (slot == nullptr || h < slot->least || h > slot->most || (single && which == Stack))
        return kNever;
    return row(*slot, single, which)[h - slot->least];
}

bool RunTable::fill(const std::atomic<bool>* cancel, const PageLimits* limits)
{
    Scratch scratch(m_rows);
    std::fill(m_runs.begin(), m_runs.end(), nullptr);
    m_slots.clear();
    m_costs.clear();
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
            if (m_rules.runAllowed(first, last))
                fillRun(first, last, limits, scratch);
        }
        if (!any)
            break; // nothing longer fits a page either
    }
    return true;
}

void RunTable::fillRun(int first, int last, const PageLimits* limits, Scratch& scratch)
{
    std::pair<int, int> fitting{1, m_leaves.page().columns * m_rows}; // cells
    if (limits != nullptr) {
        if (!limits->useful(first, last))
            return;
        fitting = limits->caps(first, last, scratch.byCells);
    }
    const int cells = m_cells[std::size_t(last)] - m_cells[std::size_t(first)];
    fitting.first = std::max(fitting.first, cells);
    const bool banded = m_rules.bandInside(first, last) >= 0;
    const int most = m_rules.widest(first, last);
    const auto spans = std::size_t(m_spans.count());
    Slot* const slots = m_slots.take(spans);
    std::fill_n(slots, spans, Slot{});
    m_runs[runIndex(first, last)] = slots;
    findSplits(first, last, scratch);
    for (int q = 0; q < m_spans.count(); ++q) {
        const int w = m_spans.span(q).w;
        scratch.low = (fitting.first + w - 1) / w;
        scratch.high = std::min(m_rows, fitting.second / w);
        if (w > most || scratch.low > scratch.high || (banded && w != m_leaves.page().columns))
            continue;
        for (int h = scratch.low; h <= scratch.high && limits != nullptr; ++h)
            scratch.caps[std::size_t(h)] = scratch.byCells[std::size_t(h) * std::size_t(w)];
        if (last - first == 1) {
            slots[q] = keepLeaf(first, q, scratch);
            continue;
        }
        findStacks(q, scratch);
        findRows(q, !banded, scratch);
        if (scratch.rowTerms.empty() && scratch.stackTerms.empty())
            continue;
        const auto length = std::size_t(scratch.high - scratch.low) + 1;
        for (auto* face : {&scratch.plain, &scratch.stack, &scratch.stackRow})
            std::fill_n(face->begin() + scratch.low, length, kNever);
        addStacks(scratch.stackTerms);
        addRows(scratch.rowTerms);
        slots[q] = keep(scratch);
    }
}

void RunTable::findSplits(int first, int last, Scratch& scratch) const
{
    scratch.splits.clear();
    const int band = m_rules.bandInside(first, last);
    for (int at = first + 1; at < last; ++at) {
        const Slot* before = m_runs[runIndex(first, at)];
        const Slot* after = m_runs[runIndex(at, last)];
        if (before == nullptr || after == nullptr || (band >= 0 && at != band)
            || !m_rules.splitAllowed(first, at, last))
            continue;
        scratch.splits.push_back({at,
            before,
            after,
            m_rules.gapRows(at),
            at - first == 1,
            last - at == 1,
            m_rules.wholeGroup(first, at),
            at == band,
            m_rules.stackExtra(at) > 0});
    }
}

void RunTable::findStacks(int q, Scratch& scratch) const
{
    scratch.stackTerms.clear();
    for (const Split& split : scratch.splits) {
        const Slot& above = split.before[q];
        const Slot& below = split.after[q];
        const int least = above.least + below.least + split.gap;
        const int most = std::min(above.most + below.most + split.gap, scratch.high);
        if (above.empty() || below.empty() || least > scratch.high || most < scratch.low)
            continue;
        const int lowest = std::max(least, scratch.low);
        if (above.cheapest + below.cheapest > scratch.caps[std::size_t(lowest)])
            continue;
        const bool stacksToo = split.group || split.band;
        scratch.stackTerms.push_back({row(above, split.single, stacksToo ? Any : Calm),
            row(below, split.singleAfter, Any),
            scratch.stack.data() + least,
            scratch.caps.data() + least,
            above.cheapest,
            below.cheapest,
            above.count(),
            below.count(),
            std::max(0, scratch.low - least),
            most - least + 1});
    }
}

void RunTable::findRows(int q, bool allowed, Scratch& scratch) const
{
    scratch.rowTerms.clear();
    if (!allowed)
        return;
    for (const Split& split : scratch.splits)
        for (const Intervals::Parting& parting : m_spans.partings(q)) {
            const Slot& left = split.before[parting.left];
            const Slot& right = split.after[parting.right];
            if (left.empty() || right.empty())
                continue;
            const int from = std::max({int(left.least), int(right.least), scratch.low});
            const int to = std::min({int(left.most), int(right.most), scratch.high});
            if (from > to
                || left.cheapest + right.cheapest + parting.price > scratch.caps[std::size_t(from)])
                continue;
            RowTerm term{nullptr, nullptr, nullptr, parting.price, to - from + 1};
            const auto add = [&](Rows lead, Rows next, std::vector<Cost>& out) {
                term.left = row(left, split.single, lead) + (from - left.least);
                term.right = row(right, split.singleAfter, next) + (from - right.least);
                term.out = out.data() + from;
                scratch.rowTerms.push_back(term);
            };
            if (split.single || split.group)
                add(Calm, Any, scratch.plain);
            if (!split.single)
                add(Stack, split.misleads ? Beside : Any, scratch.stackRow);
        }
}

RunTable::Slot RunTable::keepLeaf(int piece, int q, Scratch& scratch)
{
    const auto span = m_spans.span(q);
    const std::vector<Cost>& costs = m_leaves.costs(piece, span.x, span.w);
    const auto out = [&](int h) { return costs[std::size_t(h)] > scratch.caps[std::size_t(h)]; };
    int least = scratch.low;
    int most = scratch.high;
    while (least <= most && out(least))
        ++least;
    while (most > least && out(most))
        --most;
    if (least > most)
        return {};
    Cost* const data = m_costs.take(std::size_t(most - least) + 1);
    Cost cheapest = kNever;
    for (int h = least; h <= most; ++h) {
        data[h - least] = out(h) ? kNever : costs[std::size_t(h)];
        cheapest = std::min(cheapest, data[h - least]);
    }
    return {data, std::int16_t(least), std::int16_t(most), cheapest};
}

RunTable::Slot RunTable::keep(Scratch& scratch)
{
    int least = scratch.high + 1;
    int most = 0;
    const auto& plain = scratch.plain;
    const auto& stack = scratch.stack;
    const auto& stackRow = scratch.stackRow;
    for (int k = scratch.low; k <= scratch.high; ++k) {
        const auto h = std::size_t(k);
        if (std::min({plain[h], stack[h], stackRow[h]}) > scratch.caps[h])
            continue;
        least = std::min(least, k);
        most = k;
    }
    if (least > most)
        return {};
    const auto count = std::size_t(most - least) + 1;
    Cost* const data = m_costs.take(RowsCount * count);
    Cost cheapest = kNever;
    for (std::size_t k = 0; k < count; ++k) {
        const auto h = std::size_t(least) + k;
        const Cost cap = scratch.caps[h];
        const auto within = [cap](Cost cost) { return cost > cap ? kNever : cost; };
        const Cost calm = std::min(plain[h], stackRow[h]);
        const Cost stacks = std::min(stack[h], stackRow[h]);
        data[Stack * count + k] = within(stack[h]);
        data[Calm * count + k] = within(calm);
        data[Any * count + k] = within(std::min(plain[h], stacks));
        cheapest = std::min(cheapest, data[Any * count + k]);
        data[Beside * count + k] = within(std::min(plain[h], stacks + m_stackExtra));
    }
    return {data, std::int16_t(least), std::int16_t(most), cheapest};
}

std::size_t RunTable::bytes() const
{
    return m_costs.bytes() + m_slots.bytes() + m_runs.capacity() * sizeof(void*);
}

Cost RunTable::cost(int first, int last, int x, int w, int h) const
{
    return at(slot(first, last, m_spans.find(x, w)), last - first == 1, Any, h);
}

} // namespace wainscot::engine
