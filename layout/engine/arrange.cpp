#include "layout/engine/plan.h"

namespace wainscot::engine {

Outcome arrange(const Request& request, const TextMeasurer& text)
{
    TextMemo memo(text);
    std::vector<std::string> dropped;
    if (!request.plan.empty() && request.pages.value_or(1) == 1) {
        const Plan* plan = planByName(request.plan);
        if (plan == nullptr)
            dropped.push_back("plan " + request.plan + ": there is none of this name");
        else if (auto found = arrangeByPlan(*plan, request, memo, dropped)) {
            found->droppedWishes = std::move(dropped);
            return *found;
        }
    }
    Outcome outcome = solve(request, freeSystems(request.page.columns), memo, Effort::Mend);
    if (auto* found = std::get_if<Arrangement>(&outcome))
        found->droppedWishes = std::move(dropped);
    return outcome;
}

} // namespace wainscot::engine
