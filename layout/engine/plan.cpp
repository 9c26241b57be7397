#include "layout/engine/plan.h"

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
            continue;
        }
        auto& found = std::get<Arrangement>(outcome);
        if (!best.arrangement || found.cost.total() < best.arrangement->cost.total())
            best.arrangement = std::move(found);
    }
    return best;
}

// A page that costs so much less without a wish shows that the wish made it bad.
bool muchCheaper(const Arrangement& loose, const Arrangement& strict)
{
    return loose.cost.total() * 2 < strict.cost.total()
        && loose.cost.total() + 6 * kUnit < strict.cost.total();
}

} // namespace

std::optional<Arrangement> arrangeByPlan(
    const Plan& plan, const Request& request, TextMemo& text, std::vector<std::string>& dropped)
{
    if (request.page.columns != 12) {
        dropped.push_back("plan " + plan.name + ": the page does not have twelve columns");
        return std::nullopt;
    }
    std::set<int> groups;
    for (const Item& item : request.items)
        if (item.group > 0)
            groups.insert(item.group);
    if (plan.mostGroups > 0 && int(groups.size()) > plan.mostGroups) {
        dropped.push_back("plan " + plan.name + ": it holds " + std::to_string(plan.mostGroups)
            + " groups, here are " + std::to_string(groups.size()));
        return std::nullopt;
    }
    Best strict = bestVariant(plan, request, false, text);
    Best loose = bestVariant(plan, request, true, text);
    if (strict.arrangement
        && !(loose.arrangement && muchCheaper(*loose.arrangement, *strict.arrangement)))
        return strict.arrangement;
    if (loose.arrangement) {
        const std::string why = strict.arrangement ? "they crop or leave white too much here"
                                                   : "the pieces do not fit so";
        dropped.push_back("plan " + plan.name + ": widths of title and large picture, " + why);
        return loose.arrangement;
    }
    const bool noPlace = !strict.failure && !loose.failure;
    dropped.push_back("plan " + plan.name
        + (noPlace ? ": it has no place for some of the pieces"
                   : ": the pieces do not fit its bands on one page"));
    return std::nullopt;
}

} // namespace wainscot::engine
