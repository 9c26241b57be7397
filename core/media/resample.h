// Shrinking, row by row.
#pragma once

#include "core/media/rows.h"

namespace wainscot {

// Catmull-Rom (Mitchell and Netravali 1988, B = 0, C = 1/2) widened by the ratio of sizes, so that
// every source pixel counts. Plain float arithmetic without contraction: the same bytes everywhere.
[[nodiscard]] std::unique_ptr<RowSource> resampled(std::unique_ptr<RowSource> source, SizePx to);

} // namespace wainscot
