// Making room by hand's logic: a cell grows, what is in its way gives up height or moves on.
#pragma once

#include "layout/engine/leaf.h"

#include <map>
#include <set>

namespace wainscot::engine {

enum class Push { Down, Up };

struct Pushing {
    std::map<ItemId, GridRect> cells; // of one page
    std::set<ItemId> fixed; // pinned pieces
    double share = 1; // of its height that a piece gives at most before it moves
};

// Puts `piece` into the cell `to` and pushes the others out of its way: each first gives what
// height it can spare, then moves. Groups keep a row of white between them. False when the page
// ends or something fixed is in the way; `pushing` is then of no use. `leaves` has all pieces.
[[nodiscard]] bool push(
    Pushing& pushing, ItemId piece, const GridRect& to, Push direction, LeafTable& leaves);

} // namespace wainscot::engine
