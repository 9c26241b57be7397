#include "layout/engine/least_height.h"

#include "layout/engine/bounds.h"
#include "layout/engine/run_rules.h"

#include <algorithm>

namespace wainscot::engine {

namespace {

class Heights {
public:
    Heights(LeafTable& leaves, const ColumnSystem& system)
        : m_leaves(leaves)
        , m_rules(leaves)
        , m_spans(system, leaves.page().columns)
        , m_none(leaves.page().rows + 1)
        , m_least(leaves.size(), std::vector<int>())
    {
    }

    int all(const std::atomic<bool>* cancel)
    {
        const int count = m_leaves.size();
        for (int length = 1; length <= count; ++length)
            for (int first = 0; first + length <= count; ++first) {
                if (cancel != nullptr && cancel->load(std::memory_order_relaxed))
                    return m_none;
                fillRun(first, first + length);
            }
        return m_least(0, count)[std::size_t(m_spans.find(0, m_leaves.page().columns))];
    }

private:
    void fillRun(int first, int last)
    {
        auto& heights = m_least(first, last);
        heights.assign(std::size_t(m_spans.count()), m_none);
        if (!m_rules.runAllowed(first, last))
            return;
        const bool banded = m_rules.bandInside(first, last) >= 0;
        for (int q = 0; q < m_spans.count(); ++q) {
            const auto span = m_spans.span(q);
            int& least = heights[std::size_t(q)];
            if (span.w > m_rules.widest(first, last)
                || (banded && span.w != m_leaves.page().columns))
                continue;
            if (last - first == 1)
                least = m_leaves.leastRows(first, span.x, span.w);
            for (int split = first + 1; split < last; ++split)
                least = std::min(least, parted(first, split, last, q, banded));
        }
    }

    [[nodiscard]] int parted(int first, int split, int last, int q, bool banded) const
    {
        if (!m_rules.splitAllowed(first, split, last)
            || (banded && split != m_rules.bandInside(first, last)))
            return m_none;
        const auto& before = m_least(first, split);
        const auto& after = m_least(split, last);
        const auto at = std::size_t(q);
        int least = before[at] + after[at] + m_rules.gapRows(split);
        for (const Intervals::Parting& parting : m_spans.partings(q))
            if (!banded)
                least = std::min(least,
                    std::max(before[std::size_t(parting.left)], after[std::size_t(parting.right)]));
        return least;
    }

    LeafTable& m_leaves;
    RunRules m_rules;
    Intervals m_spans;
    int m_none; // more rows than the page has
    ByRun<std::vector<int>> m_least; // by span
};

} // namespace

int leastHeight(LeafTable& leaves, const ColumnSystem& system, const std::atomic<bool>* cancel)
{
    return std::min(Heights(leaves, system).all(cancel), leaves.page().rows + 1);
}

} // namespace wainscot::engine
