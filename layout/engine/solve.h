// One request solved with given column systems: the engine without templates.
#pragma once

#include "layout/engine/columns.h"
#include "layout/engine/leaf.h"
#include "layout/engine/obstacles.h"

namespace wainscot::engine {

// How often a page is tried.
enum class Effort {
    Once, // the cheapest one
    Mend, // again with other sizes and prices while the finished page has faults; see mend.h
};

// The best arrangement over the column systems; earlier systems win ties. What a hand has placed,
// or where things were, is never traded for fewer faults.
[[nodiscard]] Outcome solve(const Request& request,
    const std::vector<ColumnSystem>& systems,
    TextMemo& text,
    Effort effort = Effort::Once);

// The cheapest arrangement of one coarse column system, not refined page by page. Nothing when
// there is none; why is for solve() to say.
[[nodiscard]] std::optional<Arrangement> solveQuickly(
    const Request& request, const ColumnSystem& system, TextMemo& text);

// One column system's answer.
struct Candidate {
    Arrangement arrangement; // without the pinned items
    std::vector<std::pair<int, int>> breaks; // pieces of each page
    double score = 0; // the cost in units, and what the geometry does not price
    bool possible = false;
    Cost cost = kNever; // of its pages before they are finished
};

// The best over the column systems by prices and by what the finished page is like.
[[nodiscard]] Candidate solveSystems(const Job& job,
    const std::vector<ColumnSystem>& systems,
    TextMemo& text,
    const Weights& weights);

// The best of one column system. `leaves` holds the job's pieces; pages of the cost `ceiling` are
// known to exist.
[[nodiscard]] Candidate solveSystem(
    const Job& job, const ColumnSystem& system, LeafTable& leaves, Cost ceiling = kNever);

// Pages found some other way, made an arrangement.
[[nodiscard]] Candidate finished(const Job& job,
    const std::vector<PagePlan>& pages,
    const ColumnSystem& system,
    LeafTable& leaves);

// Puts the pinned items back, each at its place in the request's order.
void addPinned(const Request& request, TextMemo& text, Arrangement& arrangement);

} // namespace wainscot::engine
