// Other pages of a table that is filled already: for every first cut of a part of the page the
// cheapest way that begins with it. They differ from the best from the top down and need no
// further table.
#pragma once

#include "layout/engine/pages.h"

namespace wainscot::engine {

// At most `most` pages, cheapest first, none above `dearest`, each with one larger part of `best`
// divided otherwise.
[[nodiscard]] std::vector<PagePlan> divisions(
    const RunTable& table, const PagePlan& best, std::size_t most, Cost dearest);

} // namespace wainscot::engine
