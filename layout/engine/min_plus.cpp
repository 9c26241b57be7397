#include "layout/engine/min_plus.h"

#include <algorithm>
#include <cstring>

#if defined(__x86_64__) && defined(__GNUC__)
#define WAINSCOT_WIDE __attribute__((target("avx2")))
#endif

namespace wainscot::engine {

namespace {

// Added to the last lanes of a row that is no multiple of kLanes: from kLanes - n on, n of them
// live.
constexpr Cost kDead[2 * kLanes] = {
    0, 0, 0, 0, 0, 0, 0, 0, kNever, kNever, kNever, kNever, kNever, kNever, kNever, kNever};

// out = min(out, a + b + dead + add), lane by lane. Each body is compiled twice; whole numbers make
// both give the same results.
#ifdef __GNUC__
[[gnu::always_inline]] inline void lowerLanes(
    Cost* out, const Cost* a, const Cost* b, const Cost* dead, Cost add)
{
    using Lanes = Cost __attribute__((vector_size(kLanes * sizeof(Cost))));
    Lanes best;
    Lanes first;
    Lanes second;
    Lanes third;
    std::memcpy(&best, out, sizeof best);
    std::memcpy(&first, a, sizeof first);
    std::memcpy(&second, b, sizeof second);
    std::memcpy(&third, dead, sizeof third);
    first += second + third + add;
    best = first < best ? first : best;
    std::memcpy(out, &best, sizeof best);
}
#else
inline void lowerLanes(Cost* out, const Cost* a, const Cost* b, const Cost* dead, Cost add)
{
    for (int lane = 0; lane < kLanes; ++lane)
        out[lane] = std::min(out[lane], a[lane] + b[lane] + dead[lane] + add);
}
#endif

[[gnu::always_inline]] inline void addRow(const RowTerm& term)
{
    const int count = term.count;
    Cost* const out = term.out;
    const Cost* const left = term.left;
    const Cost* const right = term.right;
    int k = 0;
    for (; k + kLanes <= count; k += kLanes)
        lowerLanes(out + k, left + k, right + k, kDead, term.price);
    if (k < count)
        lowerLanes(out + k, left + k, right + k, kDead + kLanes - (count - k), term.price);
}

[[gnu::always_inline]] inline void addStack(StackTerm term)
{
    if (term.uppers > term.lowers) { // the longer one goes through the lanes
        std::swap(term.upper, term.lower);
        std::swap(term.uppers, term.lowers);
        std::swap(term.upperLeast, term.lowerLeast);
    }
    const int uppers = std::min(term.uppers, term.to); // higher ones leave no row of interest
    for (int a = 0; a < uppers; ++a) {
        const Cost top = term.upper[a];
        if (top + term.lowerLeast > term.caps[std::max(a, term.from)])
            continue;
        int b = std::max(0, term.from - a);
        const int end = std::min(term.lowers, term.to - a);
        for (; b + kLanes <= end; b += kLanes)
            lowerLanes(term.out + a + b, term.lower + b, kDead, kDead, top);
        if (b < end)
            lowerLanes(term.out + a + b, term.lower + b, kDead + kLanes - (end - b), kDead, top);
    }
}

[[gnu::always_inline]] inline void rowsBody(const std::vector<RowTerm>& terms)
{
    for (const RowTerm& term : terms)
        addRow(term);
}

[[gnu::always_inline]] inline void stacksBody(const std::vector<StackTerm>& terms)
{
    for (const StackTerm& term : terms)
        addStack(term);
}

[[gnu::always_inline]] inline void betweenBody(const Lines& lines, Cost* __restrict out, int count)
{
    const Lines own = lines;
    for (int c = 0; c < count; ++c) {
        Cost top = own.top[0] - own.slope[0] * c;
        Cost bottom = own.bottom[0] - own.slope[0] * c;
        for (std::size_t k = 1; k < kLines; ++k) {
            top = std::min(top, own.top[k] - own.slope[k] * c);
            bottom = std::max(bottom, own.bottom[k] - own.slope[k] * c);
        }
        out[c] = top < bottom ? -1 : top;
    }
}

#ifdef WAINSCOT_WIDE
WAINSCOT_WIDE void betweenWide(const Lines& lines, Cost* out, int count)
{
    betweenBody(lines, out, count);
}
WAINSCOT_WIDE void rowsWide(const std::vector<RowTerm>& terms)
{
    rowsBody(terms);
}
WAINSCOT_WIDE void stacksWide(const std::vector<StackTerm>& terms)
{
    stacksBody(terms);
}
bool hasWide()
{
    __builtin_cpu_init();
    return __builtin_cpu_supports("avx2") != 0;
}
const bool kWide = hasWide();
#endif

} // namespace

void addRows(const std::vector<RowTerm>& terms)
{
#ifdef WAINSCOT_WIDE
    if (kWide)
        return rowsWide(terms);
#endif
    rowsBody(terms);
}

void addStacks(const std::vector<StackTerm>& terms)
{
#ifdef WAINSCOT_WIDE
    if (kWide)
        return stacksWide(terms);
#endif
    stacksBody(terms);
}

void between(const Lines& lines, Cost* out, int count)
{
#ifdef WAINSCOT_WIDE
    if (kWide)
        return betweenWide(lines, out, count);
#endif
    betweenBody(lines, out, count);
}

} // namespace wainscot::engine
