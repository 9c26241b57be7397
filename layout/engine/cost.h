// Prices of an arrangement. All sums are whole 1/1024 of a cost unit, so that ties and results are
// the same on every machine.
#pragma once

#include <cstdint>

namespace wainscot::engine {

using Cost = std::int32_t;

inline constexpr Cost kUnit = 1024;
inline constexpr Cost kNever = Cost(1) << 28; // "cannot be"; two of them still fit in a Cost

// A price in cost units to a Cost, rounded half away from zero, never above kNever.
[[nodiscard]] Cost toCost(double units);

// Natural logarithm from +, -, *, / alone: IEEE 754 makes those equal everywhere, the library's
// log need not be. Error below 1e-13. REQUIRES: x > 0, finite.
[[nodiscard]] double steadyLog(double x);

// All in cost units. Areas are shares of the page between its margins.
struct Weights {
    double crop = 40; // (1 - keep)^2
    double white = 30; // white beside or under a picture, inside its cell
    double textWhite = 9; // white under and beside text: the style likes it
    double pool = 0.35; // per squared row of white beyond what a reader takes for planned
    double ragged = 3; // a photo that does not reach its column's edge
    double size = 3; // ln(area / aimed-at area)^2
    double rank = 30; // ln^2 of a picture too large beside, or too small as, the dominant one
    double measure = 22; // ln(characters / limit)^2
    double captionLines = 0.6; // squared lines of a caption beyond two
    double wish = 26; // ((got - wished) / wished)^2, columns and rows
    double cut = 0.25; // a vertical cut; half a unit more on an odd column
    double sideBySideStacks = 4; // two stacks side by side read ambiguously
    double foot = 4; // the page's foot left white, as share of its height
    double empty = 10; // a planned empty cell, as share of the page
    double page = 1.5;
    double stay = 3; // moving an item that has a previous place
    double edge = 2; // each left edge beyond what the style allows
    double inversion = 1; // each pair that a row-first reader meets the wrong way round
};

} // namespace wainscot::engine
