// Pages of one column system that cost little more than its cheapest. What only a finished page
// shows (holes, leaning) may speak for one of them.
#pragma once

#include "layout/engine/pages.h"

namespace wainscot::engine {

// All pieces on one page: the cheapest, then other heights and other divisions of it. Nothing when
// there is none, or cancelled.
[[nodiscard]] std::vector<PagePlan> pagesNear(
    const ColumnSystem& system, LeafTable& leaves, const std::atomic<bool>* cancel);

} // namespace wainscot::engine
