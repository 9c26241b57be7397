// After an edit: the page it concerns is arranged again with as little movement as a good page
// allows; all other pages stay as they are.
#pragma once

#include "layout/engine/arrangement.h"

#include <set>

namespace wainscot::engine {

// How much of the page gave way, least first.
enum class GaveWay {
    Nothing, // the edited pieces found room where they stand
    Neighbours, // some pieces near them
    Page, // all, each as little as possible
    Anew, // all, as if nothing had stood there
};

struct AgainWish {
    std::vector<ItemId> edited; // changed or new; removed ones need not be named
    // Times the price of the page arranged anew, faults included, and half a fault. A page as dear
    // as it stood is good enough as well, unless something was removed from it.
    double dearest = 2;
    std::set<int> locked; // pages that never change
};

struct Again {
    Arrangement arrangement; // all pages
    GaveWay gaveWay = GaveWay::Nothing; // on the page where most did
    double movement = 0; // mean over untouched pieces of the edited pages; see Difference::pieces
    double priceRatio = 1; // of the dearest edited page to that page arranged anew
    std::vector<ItemId> waiting; // new pieces whose page is locked; they have no place
};

// `before` holds the places of all pieces that had one, pages and all; what the request no longer
// has was removed. A new piece goes onto the page of the piece before it in reading order.
[[nodiscard]] std::variant<Again, Failure> arrangeAgain(const Request& request,
    const std::vector<Placement>& before,
    const TextMeasurer& text,
    const AgainWish& wish);

} // namespace wainscot::engine
