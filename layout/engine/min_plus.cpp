#include "layout/engine/min_plus.h"

#include <algorithm>

#if defined(__x86_64__) && defined(__GNUC__)
#define WAINSCOT_WIDE __attribute__((target("avx2")))
#endif

namespace wainscot::engine {

namespace {

// Each body is compiled twice; whole numbers make both give the same results.
[[gnu::always_inline]] inline void lesser(Cost* __restrict out, const Cost* a, const Cost* b, int n)
{
    for (int k = 0; k < n; ++k)
        out[k] = std::min(a[k], b[k]);
}

[[gnu::always_inline]] inline void lower(Cost* __restrict out, const Cost* a, int n)
{
    for (int k = 0; k < n; ++k)
        out[k] = std::min(out[k], a[k]);
}

[[gnu::always_inline]] inline const Cost* cheapest(
    const Faces& faces, bool stacks, Cost* scratch, int n)
{
    if (faces.stack == nullptr)
        return faces.plain;
    lesser(scratch, faces.plain, faces.stackRow, n);
    if (stacks)
        lower(scratch, faces.stack, n);
    return scratch;
}

[[gnu::always_inline]] inline void stackBody(const StackJob& job)
{
    const int uppers = job.rows - job.upperLeast + 1;
    const int lowers = job.rows - job.lowerLeast + 1;
    const Cost* upper = cheapest(job.upper, job.upperStacks, job.scratch, uppers);
    const Cost* below = cheapest(job.lower, true, job.scratch + job.rows + 1, lowers);
    const int last = job.rows - job.lowerLeast - job.shift;
    for (int a = job.upperLeast; a <= last; ++a) {
        const Cost top = upper[a - job.upperLeast];
        if (top >= kNever)
            continue;
        Cost* __restrict out = job.out + a + job.lowerLeast + job.shift;
        const Cost* __restrict low = below;
        const int count = last - a + 1;
        for (int k = 0; k < count; ++k)
            out[k] = std::min(out[k], top + low[k]);
    }
}

[[gnu::always_inline]] inline void rowBody(const RowJob& job)
{
    Cost* __restrict out = job.out;
    const Cost* __restrict left = job.left;
    const Cost* __restrict plain = job.right.plain;
    const Cost* __restrict stack = job.right.stack;
    const Cost* __restrict stackRow = job.right.stackRow;
    if (stack == nullptr) {
        for (int k = 0; k < job.count; ++k)
            out[k] = std::min(out[k], left[k] + plain[k] + job.price);
        return;
    }
    for (int k = 0; k < job.count; ++k) {
        const Cost ambiguous = std::min(stack[k], stackRow[k]) + job.stackExtra;
        out[k] = std::min(out[k], left[k] + std::min(plain[k], ambiguous) + job.price);
    }
}

#ifdef WAINSCOT_WIDE
WAINSCOT_WIDE void stackWide(const StackJob& job)
{
    stackBody(job);
}
WAINSCOT_WIDE void rowWide(const RowJob& job)
{
    rowBody(job);
}
bool hasWide()
{
    __builtin_cpu_init();
    return __builtin_cpu_supports("avx2") != 0;
}
const bool kWide = hasWide();
#endif

} // namespace

void stackAll(const StackJob& job)
{
#ifdef WAINSCOT_WIDE
    if (kWide)
        return stackWide(job);
#endif
    stackBody(job);
}

void addRow(const RowJob& job)
{
#ifdef WAINSCOT_WIDE
    if (kWide)
        return rowWide(job);
#endif
    rowBody(job);
}

} // namespace wainscot::engine
