#include "layout/engine/again.h"

#include "layout/engine/edited_page.h"

#include <algorithm>
#include <map>

namespace wainscot::engine {

namespace {

// The page of each piece of the request; new pieces go with the one before them.
std::map<ItemId, int> pagesOf(const Request& request, const std::vector<Placement>& before)
{
    std::map<ItemId, int> was;
    for (const Placement& place : before)
        was[place.id] = place.at.page;
    std::map<ItemId, int> out;
    int page = 0;
    for (const Item& item : request.items) {
        if (item.pinned)
            page = item.pinned->page;
        else if (const auto at = was.find(item.id); at != was.end())
            page = at->second;
        out[item.id] = page;
    }
    return out;
}

} // namespace

std::variant<Again, Failure> arrangeAgain(const Request& request,
    const std::vector<Placement>& before,
    const TextMeasurer& text,
    const AgainWish& wish)
{
    const std::map<ItemId, int> pageOf = pagesOf(request, before);
    std::map<ItemId, Placement> known;
    for (const Placement& place : before)
        known[place.id] = place;
    std::set<int> pages;
    std::set<int> edited;
    for (const auto& [id, page] : pageOf) {
        pages.insert(page);
        const bool named =
            std::find(wish.edited.begin(), wish.edited.end(), id) != wish.edited.end();
        if (named || known.count(id) == 0)
            edited.insert(page);
    }
    for (const auto& [id, place] : known)
        if (pageOf.count(id) == 0)
            edited.insert(place.at.page);
    Again out;
    std::map<ItemId, Placement> places;
    for (const int page : pages) {
        Request one = request;
        one.pages = 1;
        std::erase_if(one.items, [&](const Item& item) { return pageOf.at(item.id) != page; });
        std::map<ItemId, Placement> here;
        for (auto [id, place] : known)
            if (place.at.page == page) {
                place.at.page = 0;
                here[id] = place;
            }
        if (edited.count(page) == 0 || wish.locked.count(page) > 0) {
            for (const Item& item : one.items) {
                if (here.count(item.id) > 0)
                    places[item.id] = known[item.id];
                else
                    out.waiting.push_back(item.id);
            }
            continue;
        }
        for (Item& item : one.items) {
            item.breakBefore = false;
            item.previous.reset();
            if (item.pinned)
                item.pinned->page = 0;
        }
        auto answer = EditedPage(std::move(one), std::move(here), wish, text).run();
        if (const auto* failed = std::get_if<Failure>(&answer))
            return *failed;
        auto& again = std::get<Again>(answer);
        for (Placement& place : again.arrangement.items) {
            place.at.page = page;
            places[place.id] = place;
        }
        out.gaveWay = std::max(out.gaveWay, again.gaveWay);
        out.movement = std::max(out.movement, again.movement);
        out.priceRatio = std::max(out.priceRatio, again.priceRatio);
        out.arrangement.orderInversions += again.arrangement.orderInversions;
    }
    for (const Item& item : request.items)
        if (const auto at = places.find(item.id); at != places.end())
            out.arrangement.items.push_back(at->second);
    out.arrangement.pages = pages.empty() ? 0 : *pages.rbegin() + 1;
    return out;
}

} // namespace wainscot::engine
