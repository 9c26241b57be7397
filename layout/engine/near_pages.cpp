#include "layout/engine/near_pages.h"

#include "layout/engine/divisions.h"
#include "layout/engine/search.h"

#include <algorithm>

namespace wainscot::engine {

namespace {

constexpr Cost kNear = 12 * kUnit; // above the cheapest
constexpr std::size_t kHeights = 8;
constexpr std::size_t kDivisions = 16;

// The same pieces on fewer or more rows, the cheapest of them first.
std::vector<PagePlan> otherHeights(const RunTable& table, LeafTable& leaves, const PagePlan& best)
{
    const int rows = leaves.page().rows;
    const int columns = leaves.page().columns;
    const int own = best.trees.front().at.h;
    const auto priceOf = [&](int h) {
        const Cost filled = table.cost(best.first, best.last, 0, columns, h);
        const double foot = double(rows - h) / rows;
        return filled >= kNever ? kNever : filled + toCost(leaves.weights().foot * foot);
    };
    const Cost least = priceOf(own);
    std::vector<std::pair<Cost, int>> heights;
    for (int h = 1; h <= rows; ++h)
        if (const Cost price = priceOf(h); price <= least + kNear)
            heights.emplace_back(price, h);
    std::sort(heights.begin(), heights.end());
    std::vector<PagePlan> out;
    for (const auto& [price, h] : heights) {
        if (h == own || out.size() >= kHeights)
            continue;
        PagePlan page{best.first, best.last, best.cost + price - least, {}, {}, false};
        page.trees.push_back(table.tree(best.first, best.last, {0, 0, 0, columns, h}));
        out.push_back(std::move(page));
    }
    return out;
}

} // namespace

std::vector<PagePlan> pagesNear(
    const ColumnSystem& system, LeafTable& leaves, const std::atomic<bool>* cancel)
{
    RunTable table(leaves, system);
    const Pagination found = cheapestPages(table, leaves, {}, {1, kNever, cancel});
    if (found.pages.empty())
        return {};
    const PagePlan& best = found.pages.front();
    std::vector<PagePlan> out = otherHeights(table, leaves, best);
    out.insert(out.begin(), best);
    for (PagePlan& page : divisions(table, best, kDivisions, best.cost + kNear))
        out.push_back(std::move(page));
    return out;
}

} // namespace wainscot::engine
