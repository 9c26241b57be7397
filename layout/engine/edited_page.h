// One page that an edit concerns, arranged again with as little movement as a good page allows.
#pragma once

#include "layout/engine/again.h"
#include "layout/engine/page_price.h"
#include "layout/engine/push.h"

#include <map>
#include <optional>
#include <set>
#include <vector>

namespace wainscot::engine {

// The page stands on its own: pages are numbered 0 here. It is tried in ever wider ways, from
// leaving everything to arranging anew; what moves least and is good enough is the answer.
class EditedPage {
public:
    // `request` holds the page's pieces as they are now, `before` the places of those that had one
    // and of those removed. `wish` and `text` must outlive it.
    EditedPage(Request request,
        std::map<ItemId, Placement> before,
        const AgainWish& wish,
        const TextMeasurer& text);

    [[nodiscard]] std::variant<Again, Failure> run();

private:
    [[nodiscard]] bool isEdited(ItemId id) const;
    [[nodiscard]] int leafOf(ItemId id); // -1 = there is none
    [[nodiscard]] Arrangement asItStood() const;
    [[nodiscard]] int inversionsOf(const Arrangement& page) const;
    void consider(Arrangement found, GaveWay gaveWay);
    [[nodiscard]] std::optional<Arrangement> nothingMoves();
    [[nodiscard]] std::vector<std::set<ItemId>> neighbourhoods() const;
    [[nodiscard]] std::vector<std::set<ItemId>> nearest() const;
    [[nodiscard]] int distance(const GridRect& at) const;
    [[nodiscard]] std::set<std::pair<int, int>> touchingGroups(const Arrangement& page) const;
    [[nodiscard]] bool isTidy(const Arrangement& page) const;
    void tryPushing();
    // A piece that takes the cell `to`, having had `from`; others whose cells change with it.
    struct Grown {
        ItemId id = 0;
        GridRect to;
        GridRect from;
        std::map<ItemId, GridRect> others;
    };
    void tryGrowing(ItemId id, int index);
    [[nodiscard]] std::optional<std::map<ItemId, GridRect>> narrowed(
        ItemId id, const GridRect& to, bool right);
    void tryPlacing(ItemId id, int index);
    void tryPlacingBeside(ItemId id, int index, ItemId other);
    void tryPush(const Grown& grown);
    void tryPush(const Grown& grown, double share);
    void tryAround(const std::set<ItemId>& free);
    void tryWholePage();
    [[nodiscard]] const Again* nearestGood() const;
    void tryNearest();
    [[nodiscard]] bool tryNearest(const std::vector<std::map<ItemId, GridRect>>& pages);
    [[nodiscard]] std::vector<ItemId> keptOrder() const;
    [[nodiscard]] LeafTable inOrder(const std::vector<ItemId>& order);
    [[nodiscard]] int inversionsIn(const std::vector<ItemId>& order);
    [[nodiscard]] std::vector<char> edgesNear() const;
    [[nodiscard]] std::vector<GridRect> places() const;

    Request m_request;
    std::map<ItemId, Placement> m_before;
    const AgainWish& m_wish;
    const TextMeasurer& m_measurer;
    TextMemo m_text;
    PagePrice m_price;
    std::set<ItemId> m_touched;
    std::map<ItemId, int> m_groupOf;
    std::set<std::pair<int, int>> m_touching; // groups without white between them as it stood
    std::vector<Again> m_found; // the first one is arranged anew; ratios are prices here
    double m_dearest = 0; // price of what is good enough
    int m_inversions = 0; // that it may have
};

} // namespace wainscot::engine
