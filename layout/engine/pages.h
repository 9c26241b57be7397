// Where pages break: the shortest path over the breaks (after Knuth and Plass, "Breaking paragraphs
// into lines", 1981), and the pinned pieces around which a page is cut.
#pragma once

#include "layout/engine/run_table.h"

namespace wainscot::engine {

struct Pin {
    ItemId id = 0;
    GridRect at; // the cells it covers
    RectMm exact; // its own place
};

// One page: what lies on it, as trees that tile the parts the pins leave free.
struct PagePlan {
    int first = 0;
    int last = 0;
    Cost cost = kNever;
    std::vector<Node> trees;
    std::vector<GridRect> parted; // columns and first row of groups that begin below a cut at pins
    bool fallback = false; // straight cuts around the pins did not do
};

struct Pagination {
    std::vector<PagePlan> pages; // empty = cannot be
    Cost cost = kNever;
};

// What pieces first..last-1 cost on a page of their own without pins, white at its foot included,
// and the rows they use of it.
struct PageCost {
    Cost cost = kNever;
    int height = 0;
};
[[nodiscard]] PageCost pageCost(const RunTable& table, LeafTable& leaves, int first, int last);

// The cheapest sequence of pages; `pages` fixes their number. A page with pins is divided as in
// pins.h.
[[nodiscard]] Pagination paginate(const RunTable& table,
    LeafTable& leaves,
    const std::vector<Pin>& pins,
    std::optional<int> pages);

} // namespace wainscot::engine
