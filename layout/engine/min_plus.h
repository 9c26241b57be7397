// The inner loops of the table: minima of sums over heights. Written so that compilers can do
// several heights at a time; the wide version is chosen when the processor has it.
#pragma once

#include "layout/engine/cost.h"

namespace wainscot::engine {

// Costs of one run by height, in its three faces. A single piece has plain only.
struct Faces {
    const Cost* plain = nullptr;
    const Cost* stack = nullptr; // null = none
    const Cost* stackRow = nullptr; // null with `stack`
};

// out[a + b + shift] = min(itself, upper[a] + lower[b]) for every a and b with the sum within
// `rows`. `upper` begins at height upperLeast, `lower` at lowerLeast; both end at `rows`.
struct StackJob {
    Cost* out = nullptr; // 0 .. rows
    Faces upper;
    bool upperStacks = false; // may the upper part be a stack itself
    Faces lower;
    int upperLeast = 0;
    int lowerLeast = 0;
    int rows = 0;
    int shift = 0; // rows of white between the two
    Cost* scratch = nullptr; // room for two lots of rows + 1
};
void stackAll(const StackJob& job);

// out[k] = min(itself, left[k] + right[k] + price), where a right part that is, or begins with, a
// stack costs stackExtra more.
struct RowJob {
    Cost* out = nullptr;
    const Cost* left = nullptr;
    Faces right;
    Cost price = 0;
    Cost stackExtra = 0;
    int count = 0;
};
void addRow(const RowJob& job);

} // namespace wainscot::engine
