#include "layout/engine/plan_deal.h"

#include <set>

namespace wainscot::engine {

namespace {

struct Best {
    std::optional<Arrangement> arrangement;
    std::optional<Failure> failure; // of the last variant tried
};

Best bestVariant(const Plan& plan, const Request& request, bool loose, TextMemo& text)
{
    Best best;
    std::vector<int> cuts = plan.cuts;
    if (loose)
        cuts = {3, 4, 5, 6, 7, 8, 9};
    for (PlannedItems& variant : plannedItems(plan, request, loose)) {
        Request one = request;
        one.items = std::move(variant.items);
        one.pages = 1;
        Outcome outcome = solve(one, {columnSystem(plan.name, cuts)}, text);
        if (auto* failed = std::get_if<Failure>(&outcome)) {
            best.failure = *failed;
            if (failed->what == Obstacle::Cancelled)
                return best;
            continue;
        }
        auto& found = std::get<Arrangement>(outcome);
        if (!best.arrangement || found.cost.total() < best.arrangement->cost.total())
            best.arrangement = std::move(found);
    }
    return best;
}

int groupCount(const Request& request)
{
    std::set<int> groups;
    for (const Item& item : request.items)
        if (item.group > 0)
            groups.insert(item.group);
    return int(groups.size());
}

// The page with all the items of the request, by the plan, strictly or with the widths let go.
std::optional<Arrangement> strictOrLoose(const Plan& plan,
    const Request& request,
    TextMemo& text,
    std::optional<DroppedWish>& dropped,
    bool& hasPlace)
{
    dropped.reset();
    Best strict = bestVariant(plan, request, false, text);
    Best loose = bestVariant(plan, request, true, text);
    hasPlace = strict.arrangement || loose.arrangement || strict.failure || loose.failure;
    if (strict.arrangement
        && !(loose.arrangement && muchCheaper(*loose.arrangement, *strict.arrangement)))
        return strict.arrangement;
    if (loose.arrangement) {
        const WishReason why = strict.arrangement ? WishReason::BadPage : WishReason::NoRoom;
        dropped = DroppedWish{WishAbout::Widths, why, plan.name, 0, 0, {}};
    }
    return loose.arrangement;
}

// Share of the wished-for area from which the large picture still leads as the plan means it.
constexpr double kLeastLead = 0.6;

bool starved(const Plan& plan, const Request& request, const Arrangement& found)
{
    double wished = 0;
    for (const PlanBand& band : bandsFor(plan, request))
        for (const PlanPart& place : band.parts)
            if (place.role == Role::Dominant)
                wished = place.area;
    const double panel = request.page.size.width.value() * request.page.size.height.value();
    double largest = 0;
    bool pinned = false;
    for (const Item& item : request.items)
        for (const Placement& one : found.items)
            if (one.id == item.id && item.importance >= 3) {
                largest = one.picture.areaMm2();
                pinned = item.pinned.has_value();
            }
    return wished > 0 && largest > 0 && !pinned && largest < kLeastLead * wished * panel;
}

// The optional groups one by one, the last first, as long as they starve the large picture.
void leaveOutWhatMakesItBad(const Plan& plan,
    const Request& request,
    TextMemo& text,
    Arrangement& found,
    std::vector<DroppedWish>& dropped)
{
    Request fewer = request;
    std::vector<ItemId> out = found.leftOut;
    std::erase_if(fewer.items,
        [&](const Item& item) { return std::find(out.begin(), out.end(), item.id) != out.end(); });
    while (starved(plan, request, found)) {
        int last = 0;
        for (const Item& item : fewer.items)
            last = item.optional && !item.pinned ? std::max(last, item.group) : last;
        if (last == 0)
            return;
        std::vector<ItemId> leaving;
        for (const Item& item : fewer.items)
            if (item.optional && item.group == last)
                leaving.push_back(item.id);
        std::erase_if(
            fewer.items, [&](const Item& item) { return item.optional && item.group == last; });
        Best better = bestVariant(plan, fewer, false, text);
        if (!better.arrangement)
            return;
        out.insert(out.end(), leaving.begin(), leaving.end());
        found = std::move(*better.arrangement);
        found.leftOut = out;
        dropped.push_back(
            {WishAbout::OptionalPieces, WishReason::BadPage, plan.name, 0, 0, std::move(leaving)});
    }
}

} // namespace

bool muchCheaper(const Arrangement& loose, const Arrangement& strict)
{
    return loose.cost.total() * 2 < strict.cost.total()
        && loose.cost.total() + 6 * kUnit < strict.cost.total();
}

std::optional<Arrangement> arrangeByPlan(
    const Plan& plan, const Request& request, TextMemo& text, std::vector<DroppedWish>& dropped)
{
    if (request.page.columns != 12) {
        dropped.push_back({WishAbout::Plan, WishReason::NotTwelveColumns, plan.name, 0, 0, {}});
        return std::nullopt;
    }
    const int groups = groupCount(request);
    if (plan.mostGroups > 0 && groups > plan.mostGroups) {
        dropped.push_back(
            {WishAbout::Plan, WishReason::TooManyGroups, plan.name, plan.mostGroups, groups, {}});
        return std::nullopt;
    }
    bool hasPlace = true;
    std::optional<DroppedWish> widths;
    auto found = withFewerOptional(request, dropped, [&](const Request& fewer) {
        return strictOrLoose(plan, fewer, text, widths, hasPlace);
    });
    if (found && plan.easy)
        leaveOutWhatMakesItBad(plan, request, text, *found, dropped);
    if (found && widths)
        dropped.push_back(*widths);
    if (found && starved(plan, request, *found))
        dropped.push_back({WishAbout::LargePicture, WishReason::NoRoom, plan.name, 0, 0, {}});
    if (!found) {
        const WishReason why = hasPlace ? WishReason::NoRoom : WishReason::NoPlace;
        dropped.push_back({WishAbout::Plan, why, plan.name, 0, 0, {}});
    }
    return found;
}

} // namespace wainscot::engine
