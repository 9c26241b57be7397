// Where the panels of a display begin: one optimisation over all breaks at once.
//
// Laying a panel out is dear, and most panels that could be are of no use. So a panel counts with a
// lower bound until it lies on the cheapest sequence; then it is laid out, and once every panel of
// the cheapest sequence is, none can be cheaper (the lazy shortest path of Dellin and Srinivasa, "A
// unifying formalism for shortest path problems with expensive edge evaluations", 2016; from
// memory).
#pragma once

#include <functional>
#include <optional>
#include <vector>

namespace wainscot::engine {

// Blocks in reading order, dealt out so that each panel shows a stretch first..last-1 of them. An
// infinite cost says that a panel cannot be.
struct BreakProblem {
    int blocks = 0;
    int panels = 1;
    // REQUIRES: never above `cost`.
    std::function<double(int panel, int first, int last)> least;
    // Asked at most once for each panel and stretch. REQUIRES: where a stretch cannot be on a
    // panel, no longer one with the same blocks can.
    std::function<double(int panel, int first, int last)> cost;
    int most = 0; // panels laid out before an answer that is not proven will do; 0 = no limit
};

struct Breaks {
    std::vector<int> begins; // the first block of each panel; it may hold none if that costs less
    double cost = 0;
    double bound = 0; // no breaks cost less; the cost itself where that is proven
    int laidOut = 0; // how many costs were asked for
    [[nodiscard]] bool proven() const { return bound >= cost; }
};

// Nothing: no breaks are possible, or none were found below `most`. Of equal breaks, those that
// begin the last panels earliest.
[[nodiscard]] std::optional<Breaks> cheapestBreaks(const BreakProblem& problem);

} // namespace wainscot::engine
