// The plans themselves.
#include "layout/engine/plan_parts.h"

namespace wainscot::engine {

using namespace planning;

namespace {

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

Plan voices()
{
    Plan plan;
    plan.name = "voices";
    plan.portrait = {
        {{part(Role::Title, 12, 12, 0)}},
        {{withSize(part(Role::Dominant, 7, 7, 0), 13.0 / 46, 0.125),
            atMost(evenly(indented(part(Role::Voice, 5, 5, 7))), 3)}},
        {{evenly(part(Role::Voice, 6, 6, 0)),
            withWhite(part(Role::Note, 5, 5, 0), 1),
            lower(evenly(part(Role::Voice, 6, 6, 6)), 1),
            atFoot(part(Role::Credits, 6, 6, 6))}},
    };
    plan.landscape = {
        {{part(Role::Title, 12, 12, 0)}},
        {{withSize(part(Role::Dominant, 4, 4, 0), 0, 0.11),
            atMost(evenly(part(Role::Voice, 4, 4, 0)), 2),
            part(Role::Note, 4, 4, 0),
            atFoot(part(Role::Credits, 4, 4, 0)),
            evenly(part(Role::Voice, 4, 4, 4)),
            lower(evenly(part(Role::Voice, 4, 4, 8)), 1)}},
    };
    plan.cuts = {4, 5, 6, 7, 8};
    return plan;
}

PlanBand twoLanguages(Role role, int rowsAbove)
{
    PlanBand band;
    for (const int side : {1, 2})
        band.parts.push_back(lower(ofSide(part(role, 6, 6, side == 1 ? 0 : 6), side), rowsAbove));
    return band;
}

// A quote, a small picture, and the quote again in the other language.
PlanBand quoteInTwoLanguages()
{
    PlanPart picture = part(Role::Picture, 2, 2, 5);
    picture.keepsPlace = true;
    PlanPart row = part(Role::Group, 12, 12);
    row.groups = 1;
    row.inner = {
        ofSide(part(Role::Voice, 5, 5, 0), 1), picture, ofSide(part(Role::Voice, 5, 5, 7), 2)};
    PlanBand band;
    band.parts = {row};
    band.repeats = true;
    return band;
}

Plan evening()
{
    Plan plan;
    plan.name = "evening";
    PlanBand invitations = twoLanguages(Role::Invitation, 1);
    for (PlanPart& one : invitations.parts)
        one = atFoot(one);
    plan.portrait = {
        twoLanguages(Role::Title, 0),
        {{withSize(part(Role::Dominant, 12, 12, 0), 14.0 / 49, 0.21)}},
        twoLanguages(Role::Context, 0),
        quoteInTwoLanguages(),
        invitations,
    };
    plan.landscape = {
        twoLanguages(Role::Title, 0),
        {{ofSide(part(Role::Context, 3, 3, 0), 1),
            withSize(part(Role::Dominant, 6, 6, 3), 0, 0.15),
            ofSide(part(Role::Context, 3, 3, 9), 2)}},
        quoteInTwoLanguages(),
        invitations,
    };
    plan.cuts = {3, 5, 6, 7, 9};
    plan.mostGroups = 3;
    plan.easy = true;
    plan.level = true;
    return plan;
}

// A meeting: its picture on the thread, the day below, then what was said.
PlanPart meeting()
{
    PlanPart picture = part(Role::Picture, 2, 6);
    picture.toThread = true;
    picture.keepsPlace = true;
    picture.stand = Stand::Foot;
    picture.keep = 0.88;
    picture.area = 0.1;
    picture.pictureColumns = 2;
    PlanPart label = part(Role::Label, 2, 6);
    label.rowsAbove = 1;
    label.exactRows = 2;
    PlanPart one = part(Role::Group, 2, 6);
    one.inner = {picture, label, evenly(part(Role::Rest, 2, 6))};
    return one;
}

Plan thread()
{
    Plan plan;
    plan.name = "thread";
    PlanPart after = part(Role::Adult, 2, 3);
    after.besideLast = true;
    const auto withHead = [](PlanPart one) {
        one.head = true;
        return one;
    };
    plan.strip = {{{part(Role::Entry, 2, 3), meeting(), after}, false, true}};
    PlanPart wideAfter = after;
    wideAfter.least = 3;
    plan.landscape = {
        {{withHead(part(Role::Title, 6, 6, 0)),
            part(Role::Context, 3, 3, 6),
            atFoot(part(Role::Credits, 3, 3, 9))}},
        {{meeting(), wideAfter}, false, true},
    };
    PlanPart upright = meeting();
    upright.inner.front().pictureColumns = 3;
    plan.portrait = {
        {{withHead(part(Role::Title, 8, 8, 0)), part(Role::Entry, 4, 4, 8)}},
        {{upright}, false, true},
        {{part(Role::Adult, 4, 6)}},
    };
    plan.cuts = {2, 3, 4, 5, 6, 7, 8, 9, 10};
    plan.mostGroups = 4;
    plan.thread = 0.535;
    return plan;
}

} // namespace

const std::vector<Plan>& plans()
{
    static const std::vector<Plan> all = {
        days(), voices(), evening(), drawing(), thread(), door(), before(), questions()};
    return all;
}

const Plan* planByName(const std::string& name)
{
    for (const Plan& plan : plans())
        if (plan.name == name)
            return &plan;
    return nullptr;
}

} // namespace wainscot::engine
