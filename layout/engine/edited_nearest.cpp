// The pages nearest to how an edited page stood, sought among all that cut straight.
#include "layout/engine/edited_page.h"
#include "layout/engine/finish.h"
#include "layout/engine/nearest_page.h"
#include "layout/engine/reading.h"

#include <algorithm>
#include <array>

namespace wainscot::engine {

namespace {

constexpr std::array kMostMoved{1.0, 2.0, 4.0, 7.0}; // pieces; the work grows with them
// From the least movement at any price to the best page among those that move so much at most.
constexpr std::array kMovePrices{1000.0, 100.0, 30.0, 10.0};
constexpr int kPages = 3; // looked at of each search
constexpr double kLess = 0.01; // pieces; anything else is not worth a change

} // namespace

// Only what moves less than anything good that is known already is looked for. Pins are left to the
// other ways.
void EditedPage::tryNearest()
{
    const auto pinned = [](const Item& item) { return item.isPinned(); };
    const auto& items = m_request.items;
    if (m_request.page.rows > NearestPage::kMostRows
        || std::any_of(items.begin(), items.end(), pinned))
        return;
    const std::vector<ItemId> order = keptOrder();
    LeafTable leaves = inOrder(order);
    m_inversions = std::max(m_inversions, inversionsIn(order));
    NearestWish wish;
    wish.touched = m_touched;
    wish.edges = edgesNear();
    wish.cancel = m_request.cancel;
    const double untouched = double(items.size() - m_touched.size());
    for (const double most : kMostMoved)
        for (const double price : kMovePrices) {
            const Again* known = nearestGood();
            const double moved = known == nullptr ? untouched : known->movement * untouched;
            wish.movePrice = price;
            wish.mostMoved = std::min(moved - kLess, most);
            if (wish.mostMoved <= 0)
                return;
            NearestPage nearest(leaves, m_before, wish);
            const auto pages = nearest.find(kPages);
            if (nearest.gaveUp())
                return;
            if (pages.empty())
                break; // nothing moves so little, whatever it costs
            if (tryNearest(pages))
                return;
        }
}

// The request's, but within each group as it was read: a template may turn that about. What is new
// comes after the piece that it follows.
std::vector<ItemId> EditedPage::keptOrder() const
{
    std::vector<ItemId> out;
    const auto& items = m_request.items;
    for (std::size_t from = 0, to = 0; from < items.size(); from = to) {
        const int group = items[from].group;
        while (to < items.size() && (to == from || (group > 0 && items[to].group == group)))
            ++to;
        std::vector<ItemId> stood;
        std::vector<GridRect> cells;
        for (std::size_t k = from; k < to; ++k)
            if (const auto was = m_before.find(items[k].id); was != m_before.end()) {
                stood.push_back(items[k].id);
                cells.push_back(was->second.at);
            }
        const auto begin = std::ptrdiff_t(out.size());
        for (const int k : rowFirstOrder(cells))
            out.push_back(stood[std::size_t(k)]);
        for (std::size_t k = from; k < to; ++k) {
            if (m_before.count(items[k].id) > 0)
                continue;
            auto at = out.begin() + begin;
            if (k > from)
                at = std::find(at, out.end(), items[k - 1].id) + 1;
            out.insert(at, items[k].id);
        }
    }
    return out;
}

LeafTable EditedPage::inOrder(const std::vector<ItemId>& order)
{
    std::vector<Piece> pieces;
    pieces.reserve(order.size());
    for (const ItemId id : order)
        pieces.push_back(m_price.leaves().piece(leafOf(id)));
    return {m_request.page, std::move(pieces), m_text};
}

// Pairs that the order has the other way round than the request.
int EditedPage::inversionsIn(const std::vector<ItemId>& order)
{
    int count = 0;
    for (std::size_t a = 0; a < order.size(); ++a)
        for (std::size_t b = a + 1; b < order.size(); ++b)
            count += leafOf(order[a]) > leafOf(order[b]) ? 1 : 0;
    return count;
}

// Whether one of the pages is better than anything good that was known.
bool EditedPage::tryNearest(const std::vector<std::map<ItemId, GridRect>>& pages)
{
    const Again* known = nearestGood();
    const double before = known == nullptr ? 2 : known->movement;
    LeafTable& leaves = m_price.leaves();
    for (const auto& cells : pages) {
        Arrangement out;
        out.pages = 1;
        GaveWay gaveWay = GaveWay::Page;
        for (const Item& item : m_request.items) {
            const GridRect& at = cells.at(item.id);
            out.items.push_back(placePinned(leafOf(item.id), at, leaves));
            const auto was = m_before.find(item.id);
            if (m_touched.count(item.id) == 0 && was != m_before.end() && was->second.at == at)
                gaveWay = GaveWay::Neighbours;
        }
        consider(std::move(out), gaveWay);
    }
    const Again* now = nearestGood();
    return now != nullptr && now->movement < before;
}

// Column lines at which something began or ended, and all of those inside what stands next to the
// edited pieces.
std::vector<char> EditedPage::edgesNear() const
{
    std::vector<char> out(std::size_t(m_request.page.columns) + 1, 0);
    out.front() = out.back() = 1;
    const auto& items = m_request.items;
    const auto isNear = [&](std::size_t k) {
        for (std::size_t other = 0; other < items.size(); ++other) {
            const bool next = other + 1 == k || k + 1 == other || k == other;
            const bool mate = items[k].group > 0 && items[k].group == items[other].group;
            if ((next || mate) && m_touched.count(items[other].id) > 0)
                return true;
        }
        return false;
    };
    for (std::size_t k = 0; k < items.size(); ++k) {
        const auto was = m_before.find(items[k].id);
        if (was == m_before.end())
            continue;
        const GridRect& at = was->second.at;
        const auto left = out.begin() + at.x;
        *left = *(left + at.w) = 1;
        if (isNear(k))
            std::fill_n(left, at.w, char(1));
    }
    return out;
}

} // namespace wainscot::engine
