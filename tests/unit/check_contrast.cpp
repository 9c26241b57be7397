// Contrast against published pairs and the edges of the limits.
#include "layout/check/contrast.h"

#include <gtest/gtest.h>

namespace wainscot::check {
namespace {

struct Pair {
    QRgb one;
    QRgb other;
    double ratio;
    double tolerance;
};

// Published: 21 for black on white (exact); 4.54 for #767676 (ColorfulSwift wiki); #00FF33 on white
// 1.368, on #616161 4.528, on black 15.3518 (accessible-colors readme). Computed by the formula of
// W3C WCAG 2: the edges of 3, 4.5 and 7 on white.
constexpr Pair kPairs[]{
    {0xffffffff, 0xff000000, 21, 1e-9},
    {0xff767676, 0xffffffff, 4.54, 0.005},
    {0xff00ff33, 0xffffffff, 1.368, 0.0005},
    {0xff00ff33, 0xff616161, 4.528, 0.0005},
    {0xff00ff33, 0xff000000, 15.3518, 0.00005},
    {0xff777777, 0xffffffff, 4.47809, 0.00001},
    {0xff949494, 0xffffffff, 3.03347, 0.00001},
    {0xff959595, 0xffffffff, 2.99535, 0.00001},
    {0xff595959, 0xffffffff, 7.00473, 0.00001},
    {0xff5a5a5a, 0xffffffff, 6.89693, 0.00001},
};

TEST(Contrast, AgreesWithPublishedPairs)
{
    for (const Pair& pair : kPairs)
        EXPECT_NEAR(contrast(pair.one, pair.other), pair.ratio, pair.tolerance);
}

TEST(Contrast, DoesNotDependOnTheOrder)
{
    for (const Pair& pair : kPairs)
        EXPECT_EQ(contrast(pair.one, pair.other), contrast(pair.other, pair.one));
}

} // namespace
} // namespace wainscot::check
