// The inner loops of the table: minima of sums over heights, many at a time. Written so that
// compilers can do several heights at once; the wide version is chosen when the processor has it.
#pragma once

#include "layout/engine/cost.h"

#include <array>
#include <vector>

namespace wainscot::engine {

// Heights done at once. The arrays of a term must be readable, and `out` writable, for kLanes - 1
// places beyond their ends; what stands there changes nothing.
inline constexpr int kLanes = 8;

// out[k] = min(itself, left[k] + right[k] + price) for k < count.
struct RowTerm {
    const Cost* left = nullptr;
    const Cost* right = nullptr;
    Cost* out = nullptr;
    Cost price = 0;
    int count = 0;
};
void addRows(const std::vector<RowTerm>& terms);

// out[a + b] = min(itself, upper[a] + lower[b]) where from <= a + b < to. Sums above the cap of
// their place may be left out; caps do not rise.
struct StackTerm {
    const Cost* upper = nullptr;
    const Cost* lower = nullptr;
    Cost* out = nullptr;
    const Cost* caps = nullptr;
    Cost upperLeast = 0; // no cost of `upper` is below
    Cost lowerLeast = 0;
    int uppers = 0;
    int lowers = 0;
    int from = 0;
    int to = 0;
};
void addStacks(const std::vector<StackTerm>& terms);

// Straight lines over 0 .. count-1: at c, line k lies at start[k] - slope[k] * c.
inline constexpr int kLines = 8;
struct Lines {
    std::array<Cost, kLines> top{};
    std::array<Cost, kLines> bottom{};
    std::array<Cost, kLines> slope{};
};
// out[c] = the least of the top lines, or -1 where that is below the highest of the bottom lines.
void between(const Lines& lines, Cost* out, int count);

} // namespace wainscot::engine
