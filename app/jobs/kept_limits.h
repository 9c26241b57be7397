// Limits and measures somebody set on this computer, for every book: what a school asks for. The
// window sets them; the command line measures by the same.
#pragma once

#include "core/base/quantity.h"
#include "layout/check/limits.h"

namespace wainscot {

// The check's limits; what makes no sense in the settings counts as not set.
[[nodiscard]] check::Limits keptLimits();
void keepLimits(const check::Limits& limits);

// How far panels on their boards stand out from the wall, 0 to 500 mm.
[[nodiscard]] Mm keptStandOut();
void keepStandOut(Mm standsOut);

} // namespace wainscot
