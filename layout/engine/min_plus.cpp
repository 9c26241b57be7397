#include "layout/engine/min_plus.h"

#include <algorithm>

#if defined(__x86_64__) && defined(__GNUC__)
#define WAINSCOT_WIDE __attribute__((target("avx2")))
#endif

namespace wainscot::engine {

namespace {

// One body, compiled twice; integers make both give the same numbers.
[[gnu::always_inline]] inline void stackBody(const StackJob& job)
{
    const int last = job.rows - job.lowerLeast - job.shift;
    for (int a = job.upperLeast; a <= last; ++a) {
        const Cost top = job.upper[a - job.upperLeast];
        if (top >= kNever)
            continue;
        Cost* __restrict out = job.out + a + job.lowerLeast + job.shift;
        const Cost* __restrict low = job.lower;
        const int count = last - a + 1;
        for (int k = 0; k < count; ++k)
            out[k] = std::min(out[k], top + low[k]);
    }
}

[[gnu::always_inline]] inline void rowBody(const RowJob& job)
{
    Cost* __restrict out = job.out;
    const Cost* __restrict left = job.left;
    const Cost* __restrict plain = job.right;
    const Cost* __restrict stack = job.rightStack;
    for (int k = 0; k < job.count; ++k) {
        const Cost right = std::min(plain[k], stack[k] + job.stackExtra);
        out[k] = std::min(out[k], left[k] + right + job.extra);
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
    static const bool has = __builtin_cpu_supports("avx2") != 0;
    return has;
}
#endif

} // namespace

void stackAll(const StackJob& job)
{
#ifdef WAINSCOT_WIDE
    if (hasWide())
        return stackWide(job);
#endif
    stackBody(job);
}

void addRow(const RowJob& job)
{
#ifdef WAINSCOT_WIDE
    if (hasWide())
        return rowWide(job);
#endif
    rowBody(job);
}

void addPairs(Cost* out, const Cost* left, const Cost* right, Cost extra, int count)
{
    for (int k = 0; k < count; ++k)
        out[k] = std::min(out[k], left[k] + right[k] + extra);
}

void lesser(Cost* out, const Cost* a, const Cost* b, int count)
{
    for (int k = 0; k < count; ++k)
        out[k] = std::min(a[k], b[k]);
}

} // namespace wainscot::engine
