// What a finished panel costs, comparable over panels of other pieces of the same display.
#pragma once

#include "layout/engine/arrangement.h"

namespace wainscot::engine {

// In cost units, never negative: standard prices of the pieces and of what the page shows to be
// wrong, its white (squared, so that equally full panels are cheapest), and each wish of its
// template that was dropped. REQUIRES: `page` was arranged by `request`, of one page.
[[nodiscard]] double panelPrice(
    const Request& request, const Arrangement& page, const TextMeasurer& text);

} // namespace wainscot::engine
