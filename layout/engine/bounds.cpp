#include "layout/engine/bounds.h"

#include "layout/engine/min_plus.h"

#include <algorithm>
#include <set>

namespace wainscot::engine {

static_assert(std::tuple_size_v<ByPrice> == kLines);

namespace {

constexpr std::int64_t kFar = 2 * std::int64_t(kNever); // still far from the end of a Cost
constexpr Cost kNoUse = -1;

Cost near(std::int64_t cost)
{
    return Cost(std::min(cost, kFar));
}

// The least of cost + cells * price over all shapes a piece may have.
ByPrice bestShapes(LeafTable& leaves, int piece, const Intervals& spans)
{
    ByPrice best;
    best.fill(kNever);
    std::set<const std::vector<Cost>*> seen; // most columns share one array
    for (int q = 0; q < spans.count(); ++q) {
        const auto span = spans.span(q);
        const std::vector<Cost>& costs = leaves.costs(piece, span.x, span.w);
        if (!seen.insert(&costs).second)
            continue;
        for (std::size_t h = 1; h < costs.size(); ++h) {
            if (costs[h] >= kNever)
                continue;
            for (std::size_t k = 0; k < best.size(); ++k)
                best[k] = std::min(
                    best[k], costs[h] + std::int64_t(kCellPrices[k]) * span.w * std::int64_t(h));
        }
    }
    return best;
}

} // namespace

AreaBounds::AreaBounds(LeafTable& leaves, const Intervals& spans)
    : m_sums(1)
{
    m_sums.front().fill(0);
    for (int i = 0; i < leaves.size(); ++i) {
        ByPrice next = bestShapes(leaves, i, spans);
        m_possible = m_possible && next[0] < kNever;
        for (std::size_t k = 0; k < next.size(); ++k)
            next[k] += m_sums.back()[k];
        m_sums.push_back(next);
    }
}

ByPrice AreaBounds::sums(int first, int last) const
{
    ByPrice out;
    for (std::size_t k = 0; k < out.size(); ++k)
        out[k] = m_sums[std::size_t(last)][k] - m_sums[std::size_t(first)][k];
    return out;
}

Cost AreaBounds::least(int first, int last, int cells) const
{
    const ByPrice all = sums(first, last);
    std::int64_t most = 0;
    for (std::size_t k = 0; k < all.size(); ++k)
        most = std::max(most, all[k] - std::int64_t(kCellPrices[k]) * cells);
    return Cost(std::min<std::int64_t>(most, kNever));
}

PageLimits::PageLimits(const AreaBounds& bounds,
    const ByRun<Cost>& floor,
    Cost perPage,
    Cost ceiling,
    int cells,
    bool onePage)
    : m_bounds(bounds)
    , m_floor(floor)
    , m_perPage(perPage)
    , m_ceiling(ceiling)
    , m_cells(cells)
    , m_onePage(onePage)
    , m_before(std::size_t(bounds.count()) + 1, kFar)
    , m_after(m_before)
    , m_caps(bounds.count(), {})
{
    const int count = bounds.count();
    m_before.front() = 0;
    m_after.back() = 0;
    for (int j = 1; j <= count && !onePage; ++j)
        for (int i = 0; i < j; ++i)
            m_before[std::size_t(j)] = std::min(
                m_before[std::size_t(j)], m_before[std::size_t(i)] + floor(i, j) + perPage);
    for (int i = count - 1; i >= 0 && !onePage; --i)
        for (int j = i + 1; j <= count; ++j)
            m_after[std::size_t(i)] =
                std::min(m_after[std::size_t(i)], m_after[std::size_t(j)] + floor(i, j) + perPage);
    for (int first = 0; first < count; ++first)
        for (int last = count; last > first; --last) {
            Caps& caps = m_caps(first, last);
            caps.fill(kNoUse);
            const std::int64_t most = allowed(first, last);
            if (most >= floor(first, last)) {
                const ByPrice own = bounds.sums(first, last);
                for (std::size_t k = 0; k < caps.size(); ++k)
                    caps[k] = near(most + std::int64_t(kCellPrices[k]) * cells - own[k]);
            }
            for (std::size_t k = 0; k < caps.size(); ++k) {
                if (first > 0)
                    caps[k] = std::max(caps[k], m_caps(first - 1, last)[k]);
                if (last < count)
                    caps[k] = std::max(caps[k], m_caps(first, last + 1)[k]);
            }
        }
}

std::int64_t PageLimits::allowed(int first, int last) const
{
    if (m_floor(first, last) >= kNever)
        return kNoUse;
    return m_ceiling - m_before[std::size_t(first)] - m_after[std::size_t(last)] - m_perPage;
}

std::pair<int, int> PageLimits::caps(int first, int last, std::vector<Cost>& caps) const
{
    const ByPrice own = m_bounds.sums(first, last);
    const Caps& above = m_caps(first, last);
    Lines lines;
    for (std::size_t k = 0; k < own.size(); ++k) {
        lines.top[k] = near(own[k] + above[k]);
        lines.bottom[k] = near(own[k]);
        lines.slope[k] = kCellPrices[k];
    }
    caps.resize(std::size_t(m_cells) + 1);
    between(lines, caps.data(), m_cells + 1);
    int low = 1; // the lines leave one stretch between them
    while (low <= m_cells && caps[std::size_t(low)] < 0)
        ++low;
    int high = m_cells;
    while (high > low && caps[std::size_t(high)] < 0)
        --high;
    return {low, high};
}

} // namespace wainscot::engine
