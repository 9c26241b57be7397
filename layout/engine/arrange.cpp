#include "layout/engine/advice.h"
#include "layout/engine/form.h"
#include "layout/engine/obstacles.h"
#include "layout/engine/plan.h"
#include "layout/engine/sizes.h"

namespace wainscot::engine {

namespace {

std::optional<Arrangement> byTemplate(
    const Request& request, TextMemo& memo, std::vector<DroppedWish>& dropped)
{
    const std::string name = request.form ? request.form->name : request.plan;
    if (name.empty())
        return std::nullopt;
    if (request.pages.value_or(1) != 1) {
        dropped.push_back({WishAbout::Plan, WishReason::SeveralPages, name, 0, 0, {}});
        return std::nullopt;
    }
    if (request.form)
        return arrangeByForm(request, memo, dropped);
    if (const Plan* plan = planByName(request.plan))
        return arrangeByPlan(*plan, request, memo, dropped);
    dropped.push_back({WishAbout::Plan, WishReason::NoSuchPlan, name, 0, 0, {}});
    return std::nullopt;
}

// A built-in plan that leaves a third of the page empty in one piece makes a bad page of these
// pieces, if a free one does not. What a teacher has kept or placed is kept nevertheless.
std::optional<Arrangement> muchFuller(
    const Request& request, const Arrangement& planned, TextMemo& memo)
{
    constexpr double kHole = 0.35; // of the page
    constexpr double kFuller = 0.7;
    const bool placed = std::any_of(request.items.begin(),
        request.items.end(),
        [](const Item& item) { return item.pinned.has_value() || item.previous.has_value(); });
    const double hole = pageUse(planned, request.page).hole;
    if (request.form || placed || hole < kHole)
        return std::nullopt;
    Outcome outcome = solve(request, freeSystems(request.page.columns), memo, Effort::Mend);
    auto* free = std::get_if<Arrangement>(&outcome);
    if (free == nullptr || pageUse(*free, request.page).hole > kFuller * hole)
        return std::nullopt;
    return std::move(*free);
}

std::optional<Arrangement> quickly(const Request& request, TextMemo& memo)
{
    if (request.page.columns != 12)
        return solveQuickly(request, freeSystems(request.page.columns).front(), memo);
    for (const auto& cuts : std::vector<std::vector<int>>{{3, 6, 9}, {4, 8}})
        if (auto found = solveQuickly(request, columnSystem("first", cuts), memo))
            return found;
    return std::nullopt;
}

Outcome arrangeOnce(const Request& request, TextMemo& memo)
{
    std::vector<DroppedWish> dropped;
    if (auto found = byTemplate(request, memo, dropped)) {
        if (auto better = muchFuller(request, *found, memo)) {
            better->droppedWishes = {
                {WishAbout::Plan, WishReason::BadPage, request.plan, 0, 0, {}}};
            return *better;
        }
        found->droppedWishes = std::move(dropped);
        return *found;
    }
    Outcome outcome = Failure{};
    auto free = withFewerOptional(
        request, dropped, [&](const Request& fewer) -> std::optional<Arrangement> {
            outcome = solve(fewer, freeSystems(request.page.columns), memo, Effort::Mend);
            auto* found = std::get_if<Arrangement>(&outcome);
            return found != nullptr ? std::optional(std::move(*found)) : std::nullopt;
        });
    if (!free)
        return outcome;
    free->droppedWishes = std::move(dropped);
    return std::move(*free);
}

} // namespace

std::optional<Arrangement> arrangeQuickly(const Request& request, const TextMeasurer& text)
{
    TextMemo memo(text);
    return quickly(request, memo);
}

Outcome arrange(const Request& request, const TextMeasurer& text)
{
    TextMemo memo(text);
    if (request.onFirst)
        if (const auto first = quickly(request, memo))
            request.onFirst(*first);
    Request placed = request;
    for (const Pin& pin : pinsOf(request, memo))
        for (Item& item : placed.items)
            if (item.id == pin.id && !item.pinned)
                item.pinned = pin.at;
    return arrangeWithSizes(placed, [&](const Request& one) { return arrangeOnce(one, memo); });
}

} // namespace wainscot::engine
