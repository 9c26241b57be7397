// What is fixed on a wall, and how much around it stays free of panels.
#pragma once

#include "core/model/wall.h"

namespace wainscot::wall {

// The place itself; around what must be seen and reached in a fire 100 mm more on all sides, and
// the wall below an extinguisher down to the floor (that nothing may obstruct exits, exit signs,
// extinguishers and alarms: IFC 1030.6, second-hand; the 100 mm: common practice, no source).
[[nodiscard]] RectMm keptClear(const Fitting& fitting, SizeMm wall);
// Exits, exit signs, extinguishers and alarms.
[[nodiscard]] bool isForFire(FittingKind kind);

} // namespace wainscot::wall
