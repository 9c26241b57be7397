// Plans beyond the five of the style: a sheet for the door, before and after, one child's
// questions.
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

// Then small below the title, now large beside both, each with its day and its words.
Plan before()
{
    Plan plan;
    plan.name = "before";
    PlanPart then = part(Role::Group, 4, 4, 0);
    then.groups = 1;
    plan.landscape = {
        {{part(Role::Title, 4, 4, 0),
            then,
            atFoot(part(Role::Adult, 4, 4, 0)),
            part(Role::Label, 8, 8, 4),
            withSize(part(Role::Dominant, 8, 8, 4), 0, 0.24),
            evenly(part(Role::Voice, 4, 4, 4)),
            evenly(part(Role::Voice, 4, 4, 8)),
            atFoot(part(Role::Credits, 4, 4, 8))}},
    };
    then.least = 5;
    then.most = 5;
    then.pictureColumns = 4; // the one beside it leads
    plan.portrait = {
        {{part(Role::Title, 5, 5, 0),
            then,
            atFoot(part(Role::Adult, 5, 5, 0)),
            part(Role::Label, 7, 7, 5),
            withSize(part(Role::Dominant, 7, 7, 5), 0, 0.15),
            evenly(part(Role::Voice, 7, 7, 5)),
            atFoot(part(Role::Credits, 7, 7, 5))}},
    };
    plan.cuts = {4, 5, 6, 7, 8};
    return plan;
}

// What one child asked, one below the other, beside a picture of its own.
Plan questions()
{
    Plan plan;
    plan.name = "questions";
    plan.landscape = {
        {{part(Role::Title, 12, 12, 0)}},
        {{withSize(part(Role::Dominant, 6, 6, 0), 0, 0.22),
            evenly(indented(part(Role::Voice, 6, 6, 6))),
            atFoot(indented(part(Role::Credits, 6, 6, 6)))}},
    };
    plan.portrait = {
        {{part(Role::Title, 12, 12, 0)}},
        {{withSize(part(Role::Dominant, 12, 12, 0), 0, 0.26)}},
        {{evenly(part(Role::Voice, 8, 8, 0)), part(Role::Blank, 4, 4)}},
        {{part(Role::Blank, 1, 12), atFoot(part(Role::Credits, 5, 5, 7))}},
    };
    plan.cuts = {4, 5, 6, 7, 8};
    return plan;
}

} // namespace wainscot::engine::planning
