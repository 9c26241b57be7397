// Templates as constraints: bands across the page, and in each band the places that kinds of pieces
// may take. A plan is data; the exact engine still finds the best page that keeps to it.
#pragma once

#include "layout/engine/solve.h"

namespace wainscot::engine {

enum class Role {
    Entry, // title, question, context and credits, one below the other
    Dominant, // the one large picture
    Group, // pieces that belong together (a day), or one piece that stands alone
    Adult, // interpretation, next steps, invitation
    Work, // the work sample a panel is about
    Voice, // children's words
    Note, // adult text kept at the foot
    Credits,
    Blank, // planned white
};

struct PlanPart {
    Role role = Role::Group;
    int least = 1; // columns
    int most = 12;
    int first = -1; // column it begins at; -1 = any
    double rows = 0; // share of the page's rows wished for; 0 = none
    double area = 0; // share of the panel wished for a picture; 0 = none
    int groups = 0; // Role::Group: at most so many side by side
    Stand stand = Stand::Top;
    bool indented = false; // words moved in by a gutter
};

struct PlanBand {
    std::vector<PlanPart> parts;
    bool repeats = false; // as many such bands as the groups need
};

struct Plan {
    std::string name;
    std::vector<PlanBand> landscape;
    std::vector<PlanBand> portrait;
    std::vector<PlanBand> upright; // landscape panel, upright work; empty = as landscape
    std::vector<int> cuts; // columns at which something may begin
    int mostGroups = 0; // 0 = any number
    bool alternates = false; // picture first, then words first, from group to group
};

// "days" (days on a wall) and "drawing" (one drawing and its words); null for another name.
[[nodiscard]] const Plan* planByName(const std::string& name);

// One way to lay the request's items out by a plan: bands and spans set as wishes, planned white
// put in, in the plan's order.
struct PlannedItems {
    std::vector<Item> items;
};
// All ways worth trying; `loose` lets the spans of the entry and of the dominant picture go.
// Empty when the plan has no place for some item.
[[nodiscard]] std::vector<PlannedItems> plannedItems(
    const Plan& plan, const Request& request, bool loose);

// The best page by the plan. Nothing when no page keeps to it; `dropped` then says why.
[[nodiscard]] std::optional<Arrangement> arrangeByPlan(
    const Plan& plan, const Request& request, TextMemo& text, std::vector<std::string>& dropped);

} // namespace wainscot::engine
