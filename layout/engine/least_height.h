// How high a page would have to be, cost what it may.
#pragma once

#include "layout/engine/columns.h"
#include "layout/engine/leaf.h"

namespace wainscot::engine {

// The least rows in which all pieces of `leaves` fit the full width in some slicing tree, taking
// each piece as able to be any higher than it must; rows + 1 when they do not fit the page at all,
// or cancelled.
[[nodiscard]] int leastHeight(
    LeafTable& leaves, const ColumnSystem& system, const std::atomic<bool>* cancel = nullptr);

} // namespace wainscot::engine
