// A plan beyond the five of the style: a small sheet beside a door.
#include "layout/engine/plan_parts.h"

namespace wainscot::engine::planning {

namespace {

// What an adult adds stands at the foot, the small print at its end.
PlanBand footOf(int adult, int credits)
{
    return {{atFoot(part(Role::Adult, adult, adult, 0)),
        part(Role::Blank, 1, 12),
        atFoot(part(Role::Credits, credits, credits, 12 - credits))}};
}

} // namespace

// One picture and two voices, large enough for a sheet beside a door.
Plan door()
{
    Plan plan;
    plan.name = "door";
    plan.portrait = {
        {{part(Role::Title, 12, 12, 0)}},
        {{withSize(part(Role::Dominant, 12, 12, 0), 0, 0.26)}},
        {{evenly(part(Role::Voice, 6, 6, 0)), evenly(part(Role::Voice, 6, 6, 6))}},
        footOf(7, 4),
    };
    plan.landscape = {
        {{part(Role::Title, 12, 12, 0)}},
        {{withSize(part(Role::Dominant, 7, 7, 0), 0, 0.28),
            evenly(indented(part(Role::Voice, 5, 5, 7)))}},
        footOf(7, 4),
    };
    plan.cuts = {4, 5, 6, 7, 8};
    return plan;
}

} // namespace wainscot::engine::planning
