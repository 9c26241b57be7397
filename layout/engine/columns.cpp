#include "layout/engine/columns.h"

#include <algorithm>

namespace wainscot::engine {

Intervals::Intervals(const ColumnSystem& system, int columns)
    : m_side(columns + 1)
    , m_index(std::size_t(m_side) * std::size_t(m_side), -1)
{
    std::vector<int> edges = system.cuts;
    edges.insert(edges.begin(), 0);
    edges.push_back(columns);
    for (std::size_t a = 0; a < edges.size(); ++a)
        for (std::size_t b = a + 1; b < edges.size(); ++b)
            m_spans.push_back({edges[a], edges[b] - edges[a]});
    std::stable_sort(
        m_spans.begin(), m_spans.end(), [](const Span& a, const Span& b) { return a.w < b.w; });
    for (std::size_t q = 0; q < m_spans.size(); ++q)
        m_index[place(m_spans[q].x, m_spans[q].w)] = int(q);
    m_partings.resize(m_spans.size());
    for (std::size_t q = 0; q < m_spans.size(); ++q)
        for (std::size_t c = 0; c < system.cuts.size(); ++c) {
            const auto [x, w] = m_spans[q];
            const int cut = system.cuts[c];
            if (cut > x && cut < x + w)
                m_partings[q].push_back(
                    {find(x, cut - x), find(cut, x + w - cut), system.prices[c]});
        }
}

int Intervals::find(int x, int w) const
{
    return m_index[place(x, w)];
}

ColumnSystem columnSystem(std::string name, std::vector<int> cuts)
{
    const Weights weights;
    ColumnSystem system{std::move(name), std::move(cuts), {}};
    for (const int cut : system.cuts)
        system.prices.push_back(toCost(weights.cut + (cut % 2 != 0 && cut % 3 != 0 ? 0.5 : 0)));
    return system;
}

bool contains(const ColumnSystem& fine, const ColumnSystem& coarse)
{
    for (std::size_t c = 0; c < coarse.cuts.size(); ++c) {
        const auto at = std::find(fine.cuts.begin(), fine.cuts.end(), coarse.cuts[c]);
        if (at == fine.cuts.end()
            || fine.prices[std::size_t(at - fine.cuts.begin())] > coarse.prices[c])
            return false;
    }
    return true;
}

std::vector<ColumnSystem> freeSystems(int columns)
{
    if (columns != 12) {
        std::vector<int> cuts;
        for (int c = 1; c < columns; ++c)
            cuts.push_back(c);
        return {columnSystem("every column", cuts)};
    }
    return {columnSystem("two columns", {6}),
        columnSystem("three columns", {4, 8}),
        columnSystem("four columns", {3, 6, 9}),
        columnSystem("five and seven", {5, 7}),
        columnSystem("thirds and halves", {4, 6, 8}),
        columnSystem("twelve columns", {3, 4, 5, 6, 7, 8, 9})};
}

} // namespace wainscot::engine
