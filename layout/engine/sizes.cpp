#include "layout/engine/sizes.h"

#include <algorithm>

namespace wainscot::engine {

namespace {

constexpr double kNoticed = 1.05; // a change of area that the eye takes for none is less

double areaOf(const Arrangement& arrangement, ItemId id)
{
    for (const Placement& one : arrangement.items)
        if (one.id == id)
            return (one.picture.width * one.picture.height.value()).value();
    return 0;
}

bool hasWish(const Item& item)
{
    return item.wish.scale != 1;
}

Request withoutSizes(Request request)
{
    for (Item& item : request.items)
        item.wish.scale = 1;
    return request;
}

std::vector<UnmetWish> unmetIn(
    const Request& request, const Arrangement& before, const Arrangement& after)
{
    std::vector<UnmetWish> unmet;
    for (const Item& item : request.items) {
        if (!hasWish(item))
            continue;
        const double change = areaOf(after, item.id) / std::max(1.0, areaOf(before, item.id));
        if (!item.picture)
            unmet.push_back({item.id, UnmetWish::Why::TextKeepsItsSize});
        else if (item.isPinned())
            unmet.push_back({item.id, UnmetWish::Why::Pinned});
        else if (item.wish.scale > 1 ? change < kNoticed : change > 1 / kNoticed)
            unmet.push_back({item.id, UnmetWish::Why::NoRoom});
    }
    return unmet;
}

} // namespace

Outcome arrangeWithSizes(
    const Request& request, const std::function<Outcome(const Request&)>& arrangeOnce)
{
    const bool asked = std::any_of(request.items.begin(), request.items.end(), hasWish);
    Outcome plain = arrangeOnce(asked ? withoutSizes(request) : request);
    auto* before = std::get_if<Arrangement>(&plain);
    if (!asked || before == nullptr)
        return plain;
    Request wished = request;
    const double panel = (request.page.size.width * request.page.size.height.value()).value();
    for (Item& item : wished.items)
        if (hasWish(item))
            item.wish.area = areaOf(*before, item.id) * item.wish.scale / panel;
    Outcome outcome = arrangeOnce(wished);
    if (auto* after = std::get_if<Arrangement>(&outcome)) {
        after->unmetWishes = unmetIn(request, *before, *after);
        return outcome;
    }
    if (std::get<Failure>(outcome).what == Obstacle::Cancelled)
        return outcome;
    before->unmetWishes = unmetIn(request, *before, *before);
    return plain;
}

} // namespace wainscot::engine
