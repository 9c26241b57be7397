// One page, tried again with other sizes and prices while the finished page has faults that no sum
// over pieces can see.
#pragma once

#include "layout/engine/solve.h"

namespace wainscot::engine {

// `first` or something better for the same pieces; sizes are shared out on one page. A candidate of
// several pages comes back as it is.
[[nodiscard]] Candidate mended(
    Candidate first, const Job& job, const std::vector<ColumnSystem>& systems, TextMemo& text);

// The prices and sizes a page is tried with besides the standard ones, 0 to ways() - 1.
[[nodiscard]] int ways();
[[nodiscard]] Weights weightsOfWay(int way);
void resizeForWay(std::vector<Piece>& pieces, int way);

} // namespace wainscot::engine
