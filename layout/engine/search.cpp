#include "layout/engine/search.h"

#include <algorithm>

namespace wainscot::engine {

namespace {

constexpr Cost kFirstGap = 20 * kUnit; // of the first guess above the lower bound
constexpr Cost kLastGap = 160 * kUnit; // beyond it nothing is left out

class Rounds {
public:
    Rounds(RunTable& table, LeafTable& leaves, const Search& search)
        : m_table(table)
        , m_leaves(leaves)
        , m_search(search)
        , m_count(leaves.size())
        , m_cells(leaves.page().columns * leaves.page().rows)
        , m_perPage(toCost(leaves.weights().page))
        , m_bounds(leaves, table.spans())
        , m_floor(m_count, kNever)
        , m_known(m_count, 0)
    {
        for (int first = 0; first < m_count && m_bounds.possible(); ++first)
            for (int last = first + 1; last <= m_count; ++last)
                if (table.rules().runAllowed(first, last))
                    m_floor(first, last) = m_bounds.least(first, last, m_cells);
    }

    Pagination run()
    {
        Cost ceiling = m_search.ceiling;
        for (Cost gap = kFirstGap;; gap *= 2) {
            const Path bound = shortest(false);
            if (bound.cost >= kNever)
                return {};
            const bool whole = gap > kLastGap;
            const Cost guess = whole ? kNever : std::min(ceiling, bound.cost + gap);
            if (!fill(guess, whole))
                return {};
            // Every path over a page that is not known now costs more than the guess.
            const Path found = shortest(true);
            // What is dearer may be the best all the same, when no page can still turn out cheaper.
            if (found.cost < kNever
                && (found.cost <= guess || (found.cost <= shortest(false).cost && holds(found))))
                return plan(found);
            if (whole)
                return {};
            ceiling = std::min(ceiling, found.cost);
        }
    }

private:
    struct Path {
        Cost cost = kNever;
        std::vector<std::pair<int, int>> pages; // pieces of each
    };

    // Learns the costs of all pages that can be part of an answer at or below the guess.
    bool fill(Cost guess, bool whole)
    {
        const PageLimits limits(m_bounds, m_floor, m_perPage, guess, m_cells, m_search.pages == 1);
        if (!m_table.fill(m_search.cancel, whole ? nullptr : &limits))
            return false;
        for (int first = 0; first < m_count; ++first)
            for (int last = first + 1; last <= m_count; ++last) {
                Cost& floor = m_floor(first, last);
                const std::int64_t allowed = whole ? kNever - 1 : limits.allowed(first, last);
                if (floor >= kNever || allowed < floor)
                    continue;
                const Cost cost = pageCost(m_table, m_leaves, first, last).cost;
                m_known(first, last) = cost <= allowed ? 1 : 0;
                floor = cost <= allowed ? cost : Cost(std::min<std::int64_t>(allowed + 1, kNever));
            }
        return true;
    }

    // The cheapest pages by the bounds, or by the pages known. Ties: fewer pages, shorter last one.
    Path shortest(bool known) const
    {
        const int layers = m_search.pages.value_or(1);
        const bool counted = m_search.pages.has_value();
        const auto width = std::size_t(m_count) + 1;
        struct Best {
            Cost cost = kNever;
            int pages = 0;
            int from = -1;
        };
        std::vector<std::vector<Best>> best(
            std::size_t(counted ? layers : 1) + 1, std::vector<Best>(width));
        best.front().front().cost = 0;
        if (!counted)
            best.back().front().cost = 0;
        for (std::size_t q = 1; q < best.size(); ++q)
            for (int j = 1; j <= m_count; ++j) {
                Best& here = best[q][std::size_t(j)];
                for (int i = 0; i < j; ++i) {
                    const Best& before = best[counted ? q - 1 : q][std::size_t(i)];
                    const Cost page = known && m_known(i, j) == 0 ? kNever : m_floor(i, j);
                    if (page >= kNever || before.cost >= kNever)
                        continue;
                    const Cost cost = before.cost + page + m_perPage;
                    const int pages = before.pages + 1;
                    if (cost < here.cost || (cost == here.cost && pages < here.pages))
                        here = {cost, pages, i};
                }
            }
        Path out;
        std::size_t q = best.size() - 1;
        out.cost = best[q].back().cost;
        for (int j = m_count; j > 0 && out.cost < kNever;) {
            const int i = best[q][std::size_t(j)].from;
            out.pages.emplace_back(i, j);
            j = i;
            q -= counted ? 1 : 0;
        }
        std::reverse(out.pages.begin(), out.pages.end());
        return out;
    }

    // Whether the table, as it was last filled, has all pages of the path.
    bool holds(const Path& path) const
    {
        return std::all_of(path.pages.begin(), path.pages.end(), [this](const auto& page) {
            return pageCost(m_table, m_leaves, page.first, page.second).cost
                == m_floor(page.first, page.second);
        });
    }

    Pagination plan(const Path& path)
    {
        Pagination out;
        out.cost = path.cost;
        for (const auto& [first, last] : path.pages) {
            const PageCost page = pageCost(m_table, m_leaves, first, last);
            PagePlan one;
            one.first = first;
            one.last = last;
            one.cost = page.cost;
            const GridRect at{int(out.pages.size()), 0, 0, m_leaves.page().columns, page.height};
            one.trees.push_back(m_table.tree(first, last, at));
            out.pages.push_back(std::move(one));
        }
        return out;
    }

    RunTable& m_table;
    LeafTable& m_leaves;
    const Search& m_search;
    int m_count;
    int m_cells;
    Cost m_perPage;
    AreaBounds m_bounds;
    ByRun<Cost> m_floor; // what each page costs at least; kNever = there is no such page
    ByRun<char> m_known; // it costs exactly that
};

} // namespace

Pagination cheapestPages(
    RunTable& table, LeafTable& leaves, const std::vector<Pin>& pins, const Search& search)
{
    if (pins.empty())
        return Rounds(table, leaves, search).run();
    if (!table.fill(search.cancel))
        return {};
    return paginate(table, leaves, pins, search.pages);
}

} // namespace wainscot::engine
