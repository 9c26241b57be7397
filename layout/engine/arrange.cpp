#include "layout/engine/form.h"
#include "layout/engine/plan.h"

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

} // namespace

Outcome arrange(const Request& request, const TextMeasurer& text)
{
    TextMemo memo(text);
    std::vector<DroppedWish> dropped;
    if (auto found = byTemplate(request, memo, dropped)) {
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

} // namespace wainscot::engine
