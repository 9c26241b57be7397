// The inner loops of the table: minima of sums over heights. Written so that compilers can do
// several heights at a time; the wide version is chosen when the processor has it.
#pragma once

#include "layout/engine/cost.h"

namespace wainscot::engine {

// out[a + b + shift] = min(itself, extra + upper[a] + lower[b]) for every a and b with the sum
// within `rows`. `upper` begins at height upperLeast, `lower` at lowerLeast; both end at `rows`.
struct StackJob {
    Cost* out; // 0 .. rows
    const Cost* upper;
    const Cost* lower;
    int upperLeast;
    int lowerLeast;
    int rows;
    int shift; // rows of white between the two
};
void stackAll(const StackJob& job);

// out[h] = min(itself, extra + left[h] + right[h]), count heights.
void addPairs(Cost* out, const Cost* left, const Cost* right, Cost extra, int count);

// The same with the right part's two faces: min(a + aExtra, b).
struct RowJob {
    Cost* out;
    const Cost* left;
    const Cost* right; // read with extra
    const Cost* rightStack; // two stacks side by side: read with stackExtra more
    Cost extra;
    Cost stackExtra;
    int count;
};
void addRow(const RowJob& job);

// out[k] = min(a[k], b[k])
void lesser(Cost* out, const Cost* a, const Cost* b, int count);

} // namespace wainscot::engine
