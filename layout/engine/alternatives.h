// Further arrangements of the same pieces, to choose from: they look different and are nearly as
// good. Method: the exact engine again, with a price on standing as in what is already shown; what
// comes out is then compared by what is seen.
#pragma once

#include "layout/engine/arrangement.h"

namespace wainscot::engine {

struct AlternativesWish {
    int most = 3; // how many, 0..3
    double difference = 0.4; // of the pieces, from the best and from each other, 0..1
    double areaDifference = 0.35; // of the area
    // Times the best's cost, with and without faults of the whole page; one small fault may come on
    // top.
    double dearest = 1.3;
    double solves = 3; // work spent at most, in solves of the request
};

struct Alternatives {
    std::vector<Arrangement> found; // cheapest first; may be fewer than asked for
    std::vector<double> costRatios; // of each to the best, both at standard prices, wishes aside
    int looked = 0; // arrangements compared
    int alike = 0; // of them: too much like one already shown
    int dear = 0; // of them: different enough, but too dear
    bool cancelled = false;
};

// How different two arrangements look, pinned pieces left out: 1 - intersection / union of what is
// seen of a piece, 0 = the same, 1 = nothing in its place. Small texts move easily, so that pages
// may be twins although the mean over the pieces is large; hence the mean by area as well.
struct Difference {
    double pieces = 0; // mean over the pieces in both
    double area = 0; // the same, each piece weighing as much as it covers
};
[[nodiscard]] Difference difference(
    const std::vector<Placement>& one, const std::vector<Placement>& other, const Request& request);

// Up to wish.most further arrangements of a request of one page. `best` is what arrange() answers;
// `alsoShown` is what the teacher sees, where that is something else.
// REQUIRES: request.pages is 1 and best.pages is 1
[[nodiscard]] Alternatives alternatives(const Request& request,
    const Arrangement& best,
    const TextMeasurer& text,
    const AlternativesWish& wish = {},
    const std::vector<std::vector<Placement>>& alsoShown = {});

} // namespace wainscot::engine
