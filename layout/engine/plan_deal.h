// The ways in which a plan's places can be dealt out to what there is: groups over bands, voices
// over columns, columns over meetings.
#pragma once

#include "layout/engine/plan.h"

#include <map>

namespace wainscot::engine {

// Items by the place they may take, groups one by one.
struct SortedItems {
    std::map<Role, std::vector<Item>> items;
    std::vector<std::vector<Item>> groups;
    [[nodiscard]] int count(Role role) const;
};

[[nodiscard]] const std::vector<PlanBand>& bandsFor(const Plan& plan, const Request& request);
[[nodiscard]] bool hasRole(const std::vector<PlanBand>& bands, Role role);
[[nodiscard]] SortedItems sortItems(
    const std::vector<Item>& items, const std::vector<PlanBand>& bands);

struct Deal {
    int lead = 0; // groups in bands that do not repeat
    std::vector<int> bands; // groups in each repeated band
    bool adultsApart = false; // in a band of their own
    bool blank = false; // white at the end of the last band
    std::vector<int> voices; // quotes for each voice part, in the plan's order
    std::vector<int> widths; // of a spread band, column by column
    int headRows = 0; // rows above the band with the thread; 0 = none
};

[[nodiscard]] std::vector<Deal> dealsFor(
    const Plan& plan, const std::vector<PlanBand>& bands, const SortedItems& items, int rows);

} // namespace wainscot::engine
