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
    double crop = 330; // (1 - keep)^2
    double white = 30; // white beside or under a picture, inside its cell
    double textWhite = 14; // white under and beside text: the style likes it
    double pool = 0.5; // per squared row of white beyond what a reader takes for planned
    double side = 0.012; // by row, per squared column of white beyond two beside words
    double ragged = 2; // a photo that does not reach its column's edge
    double size = 4; // ln(area / aimed-at area)^2
    double rank = 80; // ln^2 of a dominant picture too small to dominate
    double measure = 22; // ln(characters / limit)^2
    double titleLines = 12; // squared lines of a title beyond three
    double captionLines = 2; // squared lines of a caption beyond two
    double wish = 26; // ((got - wished) / wished)^2, columns and rows
    double even = 0.05; // squared rows of white below a text that shares them out evenly
    double cut = 0.25; // a vertical cut; half a unit more on an odd column
    double sideBySideStacks = 4; // two stacks side by side read ambiguously
    double foot = 4; // the page's foot left white, as share of its height
    double footPool = 8; // the same, squared: pages of one display are equally full
    double noVoice = 8; // a page on which adults say more than children by more than a third
    double tint = 30; // share of the panel on a pale ground
    double tone = 0; // the panel's area covered by pictures, as share
    double empty = 15; // a planned empty cell, as share of the page
    double page = 1.5;
    double stay = 3; // moving an item that has a previous place
    // Of finished pages:
    double edge = 8; // each left edge beyond what the style allows
    double hole = 12; // each rectangle of white inside the page; as much again for 60 cells
    double lean = 150; // what covers the quarters, standard deviation beyond a tenth
    double ink = 1500; // share of ink beyond a sixth, and of untouched paper missing to a half
    double lead = 10; // a leading picture smaller than a tenth of the panel, or over 23 %
    double rival = 15; // a picture that comes too near to the dominant one's size
    double inversion = 10; // each pair that a row-first reader meets the wrong way round
};

} // namespace wainscot::engine
