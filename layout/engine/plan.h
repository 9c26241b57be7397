// Templates as constraints: bands across the page, and in each band the places that kinds of pieces
// may take. A plan is data; the exact engine still finds the best page that keeps to it.
#pragma once

#include "layout/engine/solve.h"

#include <algorithm>

namespace wainscot::engine {

enum class Role {
    Title, // where it stands apart from the rest of the entry
    Entry, // title, question, context and credits, one below the other
    Dominant, // the one large picture
    Group, // pieces that belong together (a day, a meeting), or one piece that stands alone
    Adult, // interpretation, next steps, invitation
    Work, // the work sample a panel is about
    Picture, // any picture of a group
    Label, // of a group
    Voice, // children's words
    Context,
    Invitation,
    Note, // adult text kept at the foot
    Credits,
    Rest, // whatever else a group holds, in its order
    Blank, // planned white
};

struct PlanPart {
    Role role = Role::Group;
    int least = 1; // columns
    int most = 12;
    int first = -1; // column it begins at; -1 = any
    double rows = 0; // share of the page's rows wished for; 0 = none
    double area = 0; // share of the panel wished for a picture; 0 = none
    double keep = 0; // least share of a picture that a crop keeps here; 0 = the picture's own
    int groups = 0; // Role::Group: at most so many side by side
    int take = 0; // at most so many items; 0 = any number
    int side = 0; // of two languages: only items of this side; 0 = all
    int rowsAbove = 0; // of white, above its first item
    int exactRows = 0; // of each item, white above included; 0 = as high as it takes
    Stand stand = Stand::Top;
    bool indented = false; // words moved in by a gutter
    bool even = false; // texts share out their white evenly
    bool toThread = false; // exactly as high as the rows down to the plan's thread
    bool belowThread = false; // begins where the words below the thread do
    int pictureColumns = 0; // pictures but the dominant one are at most so wide; 0 = no limit
    bool besideLast = false; // stands in the last group's columns, to the right of its words
    bool head = false; // its height is what is above the band with the thread; every one is tried
    int whiteBeside = 0; // columns of planned white to its right, where there is such an item
    bool keepsPlace = false; // white where there is no such item
    std::vector<PlanPart> inner; // Role::Group: the places of a group's own items, in order
};

struct PlanBand {
    std::vector<PlanPart> parts;
    bool repeats = false; // as many such bands as the groups need
    bool spread = false; // parts take all columns from left to right; every share is tried
};

struct Plan {
    std::string name;
    std::vector<PlanBand> landscape;
    std::vector<PlanBand> portrait;
    std::vector<PlanBand> upright; // landscape panel, upright work; empty = as landscape
    std::vector<PlanBand> strip; // more than twice as wide as high; empty = as landscape
    std::vector<int> cuts; // columns at which something may begin
    int mostGroups = 0; // 0 = any number
    bool alternates = false; // picture first, then words first, from group to group
    double thread = 0; // height of a line through all meetings, share of the page's rows; 0 = none
    bool easy = false; // optional groups come only where the page stays good with them
    bool level = false; // texts of two languages side by side end on one baseline
};

// The plans by name, each with what it is for; the order is that of the style.
//   "days"      days on a wall: a process, its days one after the other
//   "voices"    one question, many voices
//   "evening"   an evening for families: everything in two languages, room to write
//   "drawing"   one drawing and its words
//   "thread"    one idea over two to four meetings
//   "door"      one picture and two voices on a small sheet
//   "before"    before and after: a day then, small, and a later one, large
//   "questions" what one child asked, page by page
[[nodiscard]] const std::vector<Plan>& plans();
[[nodiscard]] const Plan* planByName(const std::string& name); // null for another name

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
    const Plan& plan, const Request& request, TextMemo& text, std::vector<DroppedWish>& dropped);

// A page that costs so much less without a wish shows that the wish made it bad.
[[nodiscard]] bool muchCheaper(const Arrangement& loose, const Arrangement& strict);

// Calls attempt(request) with ever fewer optional items, the last one first, until it answers with
// an arrangement; what was left out is noted in it and in `dropped`.
template <class Attempt>
[[nodiscard]] std::optional<Arrangement> withFewerOptional(
    const Request& request, std::vector<DroppedWish>& dropped, Attempt attempt)
{
    Request fewer = request;
    std::vector<ItemId> out;
    const auto goes = [](const Item& item) { return item.optional && !item.pinned; };
    for (;;) {
        if (std::optional<Arrangement> found = attempt(fewer)) {
            found->leftOut = out;
            if (!out.empty()) {
                dropped.push_back({WishAbout::OptionalPieces,
                    WishReason::NoRoom,
                    request.form ? request.form->name : request.plan,
                    0,
                    0,
                    out});
            }
            return found;
        }
        const auto last = std::find_if(fewer.items.rbegin(), fewer.items.rend(), goes);
        if (last == fewer.items.rend())
            return std::nullopt;
        // What belongs together goes together.
        const Item leaving = *last;
        for (auto at = fewer.items.begin(); at != fewer.items.end();) {
            const bool together = leaving.group > 0 && at->group == leaving.group && goes(*at);
            if (at->id == leaving.id || together) {
                out.push_back(at->id);
                at = fewer.items.erase(at);
            } else {
                ++at;
            }
        }
    }
}

} // namespace wainscot::engine
