// Why something cannot be arranged: what is in the way, and how much room is missing.
#pragma once

#include "layout/engine/pages.h"

namespace wainscot::engine {

// A request made ready: pieces in reading order without the pinned ones.
struct Job {
    const Request& request;
    std::vector<Piece> pieces; // without the pinned ones
    std::vector<Pin> pins;
    std::optional<int> pages;
};

// Items that can stand nowhere, whatever else is on the page.
[[nodiscard]] std::optional<Failure> impossibleItem(const Job& job, TextMemo& text);

// Where the pinned items stand, in cells and in mm; in the request's order.
[[nodiscard]] std::vector<Pin> pinsOf(const Request& request, TextMemo& text);

// Pins off the page, or on one another: the first two named lie over each other.
[[nodiscard]] std::optional<Failure> badPins(const std::vector<Pin>& pins, const PageSpec& page);

// How much higher one page would have to be for everything around the pins, and what could leave
// instead.
[[nodiscard]] Failure tooMuch(const Job& job, TextMemo& text);

} // namespace wainscot::engine
