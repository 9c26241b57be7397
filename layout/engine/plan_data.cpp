// The plans themselves.
#include "layout/engine/plan.h"

namespace wainscot::engine {

namespace {

PlanPart part(Role role, int least, int most, int first = -1)
{
    PlanPart out;
    out.role = role;
    out.least = least;
    out.most = most;
    out.first = first;
    return out;
}

PlanPart withSize(PlanPart one, double rows, double area)
{
    one.rows = rows;
    one.area = area;
    return one;
}

PlanPart groups(int most, int least, int widest)
{
    PlanPart one = part(Role::Group, least, widest);
    one.groups = most;
    return one;
}

PlanPart atFoot(PlanPart one)
{
    one.stand = Stand::PageFoot;
    return one;
}

PlanPart indented(PlanPart one)
{
    one.indented = true;
    return one;
}

Plan days()
{
    Plan plan;
    plan.name = "days";
    plan.landscape = {
        {{part(Role::Entry, 4, 4, 0),
             withSize(part(Role::Dominant, 5, 5, 4), 15.0 / 32, 0.155),
             groups(1, 3, 3)},
            false},
        {{groups(4, 3, 6), part(Role::Adult, 3, 6), part(Role::Blank, 1, 6)}, true},
    };
    plan.portrait = {
        {{part(Role::Entry, 4, 4, 0), withSize(part(Role::Dominant, 8, 8, 4), 16.0 / 46, 0.16)},
            false},
        {{groups(3, 4, 6), part(Role::Adult, 4, 6), part(Role::Blank, 1, 8)}, true},
    };
    plan.cuts = {3, 4, 6, 8, 9};
    plan.mostGroups = 4;
    plan.alternates = true;
    return plan;
}

Plan drawing()
{
    Plan plan;
    plan.name = "drawing";
    plan.landscape = {
        {{withSize(part(Role::Work, 8, 8, 0), 0, 0.35), indented(part(Role::Voice, 4, 4, 8))},
            false},
        {{atFoot(part(Role::Note, 5, 5, 0)),
             part(Role::Blank, 1, 8),
             atFoot(indented(part(Role::Credits, 4, 4, 8)))},
            false},
    };
    plan.upright = {
        {{withSize(part(Role::Work, 5, 5, 0), 0, 0.35),
             part(Role::Blank, 1, 1),
             part(Role::Voice, 6, 6, 6)},
            false},
        {{atFoot(part(Role::Note, 5, 5, 0)),
             part(Role::Blank, 1, 6),
             atFoot(part(Role::Credits, 6, 6, 6))},
            false},
    };
    plan.portrait = {
        {{withSize(part(Role::Work, 12, 12, 0), 0, 0.4)}, false},
        {{part(Role::Voice, 8, 8, 0), part(Role::Blank, 4, 4)}, false},
        {{atFoot(part(Role::Note, 6, 6, 0)),
             part(Role::Blank, 1, 6),
             atFoot(part(Role::Credits, 6, 6, 6))},
            false},
    };
    plan.cuts = {5, 6, 8};
    return plan;
}

} // namespace

const Plan* planByName(const std::string& name)
{
    static const std::vector<Plan> plans = {days(), drawing()};
    for (const Plan& plan : plans)
        if (plan.name == name)
            return &plan;
    return nullptr;
}

} // namespace wainscot::engine
