// How much of a wall is covered, and in how long runs. What a fire authority asks for differs from
// place to place, so every limit here is a preset to choose from, with who published it.
#pragma once

#include "core/base/geometry.h"

#include <span>
#include <vector>

namespace wainscot::wall {

// What hangs on one wall. Origin of all places: the wall's upper left corner.
struct Covered {
    SizeMm wall; // gross: doors and windows count as wall, because no source says otherwise
    std::vector<RectMm> panels; // may overlap; what lies outside the wall does not count
};

// The area under the panels in square millimetres; where several overlap it counts once.
[[nodiscard]] double coveredAreaMm2(const Covered& covered);
// The same as a share of the wall, 0 to 1; 0 for a wall without size.
[[nodiscard]] double coveredShare(const Covered& covered);

struct CoverLimit {
    const char* name = ""; // stable, for settings and the command line
    double share = 1; // 0.2 is kept by 20.0 % and not by 20.01 %
    const char* source = "";
};
// Strictest first. To be changed by whoever asked the fire authority.
[[nodiscard]] std::span<const CoverLimit> coverLimits();
// Each wall by itself: a bare wall does not make room on another one.
[[nodiscard]] bool keepsLimit(const Covered& covered, const CoverLimit& limit);

// Panels that hang closer than `apart` to each other across the wall burn as one. At what height
// they hang does not matter here.
struct Runs {
    Mm widest; // of such a run, from its first edge to its last
    Mm leastGap; // between two runs; 0 when there are fewer than two
};
[[nodiscard]] Runs runsOf(const Covered& covered, Mm apart);

struct RunLimit {
    Mm widest;
    Mm apart;
    const char* source = "";
};
[[nodiscard]] const RunLimit& runLimit();

} // namespace wainscot::wall
