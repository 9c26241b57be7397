// The thread of one idea through several meetings: a line, a knot where each meeting begins, and an
// open ring at its end, because the thought is not finished.
#pragma once

#include "layout/typeset/display_list.h"
#include "layout/typeset/style.h"

#include <vector>

namespace wainscot {

struct Thread {
    std::vector<Fill> lines; // one
    std::vector<Disc> knots; // from left to right, the open ring last
};

// From the labels of the meetings: 0.7 rows above them, from the first meeting's left edge to the
// right margin. Empty where there are fewer than two, or not all on one line with room above.
[[nodiscard]] Thread threadOf(const std::vector<ClearedPiece>& pieces, const PanelStyle& style);

} // namespace wainscot
