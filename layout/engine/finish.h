// From slicing trees to places in millimetres: tints and mats hug, captions in a row keep the same
// room so that the pictures above them end on one line, hairlines part the groups.
#pragma once

#include "layout/engine/pages.h"

namespace wainscot::engine {

// Appends what lies on `page` to `out`, and its costs to out.cost.
void finishPage(const PagePlan& plan,
    int page,
    const ColumnSystem& system,
    LeafTable& leaves,
    Arrangement& out);

// A pinned piece exactly where it was put, even where that breaks a limit.
[[nodiscard]] Placement placePinned(int piece, const GridRect& at, LeafTable& leaves);

} // namespace wainscot::engine
