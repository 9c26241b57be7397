// The cheapest pages of one column system, filling no more of its table than the answer needs.
#pragma once

#include "layout/engine/pages.h"

namespace wainscot::engine {

struct Search {
    std::optional<int> pages; // fixes their number
    Cost ceiling = kNever; // pages of that cost are known to exist
    const std::atomic<bool>* cancel = nullptr;
};

// As paginate() of a whole table, cost for cost and tree for tree: the table is filled below a
// guessed ceiling, and again below a higher one until the answer is proven (iterative deepening).
// What earlier rounds found out about single pages narrows the later ones. Pins are not bounded:
// with them the whole table is filled. No pages = there are none, or cancelled.
[[nodiscard]] Pagination cheapestPages(
    RunTable& table, LeafTable& leaves, const std::vector<Pin>& pins, const Search& search);

} // namespace wainscot::engine
