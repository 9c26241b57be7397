// Words for writing plans down: places in bands, and what is wished of them.
#pragma once

#include "layout/engine/plan.h"

namespace wainscot::engine::planning {

[[nodiscard]] inline PlanPart part(Role role, int least, int most, int first = -1)
{
    PlanPart out;
    out.role = role;
    out.least = least;
    out.most = most;
    out.first = first;
    return out;
}

[[nodiscard]] inline PlanPart withSize(PlanPart one, double rows, double area)
{
    one.rows = rows;
    one.area = area;
    return one;
}

[[nodiscard]] inline PlanPart groups(int most, int least, int widest)
{
    PlanPart one = part(Role::Group, least, widest);
    one.groups = most;
    return one;
}

[[nodiscard]] inline PlanPart atFoot(PlanPart one)
{
    one.stand = Stand::PageFoot;
    return one;
}

[[nodiscard]] inline PlanPart indented(PlanPart one)
{
    one.indented = true;
    return one;
}

[[nodiscard]] inline PlanPart ofSide(PlanPart one, int side)
{
    one.side = side;
    return one;
}

[[nodiscard]] inline PlanPart evenly(PlanPart one)
{
    one.even = true;
    return one;
}

[[nodiscard]] inline PlanPart lower(PlanPart one, int rows)
{
    one.rowsAbove = rows;
    return one;
}

[[nodiscard]] inline PlanPart withWhite(PlanPart one, int columns)
{
    one.whiteBeside = columns;
    return one;
}

[[nodiscard]] inline PlanPart atMost(PlanPart one, int items)
{
    one.take = items;
    return one;
}

// The plans that do not stand in plan_data.cpp.
[[nodiscard]] Plan door();
[[nodiscard]] Plan before();
[[nodiscard]] Plan questions();

} // namespace wainscot::engine::planning
