#include "core/base/geometry.h"
#include "core/base/id.h"

#include <gtest/gtest.h>

#include <type_traits>

namespace wainscot {

namespace {

using namespace literals;

template <class A, class B>
concept Adds = requires(A a, B b)
{
    a + b;
};
template <class A, class B>
concept Compares = requires(A a, B b)
{
    a < b;
};

// Kinds that must not be mixed do not compile together.
static_assert(Adds<Mm, Mm> && !Adds<Mm, Pt> && !Adds<Mm, double>);
static_assert(Compares<Mm, Mm> && !Compares<Mm, Pt>);
static_assert(!std::is_convertible_v<double, Mm>);
static_assert(!Compares<Id<struct OneTag>, Id<struct OtherTag>>);

TEST(Lengths, ConvertByTheInch)
{
    EXPECT_DOUBLE_EQ(toPt(Mm(25.4)).value(), 72);
    EXPECT_DOUBLE_EQ(toMm(72_pt).value(), 25.4);
    EXPECT_DOUBLE_EQ(toPx(210_mm, DotsPerInch(300)).value(), 210 / 25.4 * 300);
    EXPECT_DOUBLE_EQ(inches(24).value(), 609.6);
}

TEST(Lengths, OfOneKindDivideToARatio)
{
    EXPECT_DOUBLE_EQ(30_mm / 20_mm, 1.5);
}

TEST(Rectangles, ShareTheirIntersection)
{
    const RectMm a{0_mm, 0_mm, 10_mm, 10_mm};
    const RectMm b{6_mm, 4_mm, 10_mm, 3_mm};
    EXPECT_EQ(intersection(a, b), (RectMm{6_mm, 4_mm, 4_mm, 3_mm}));
    EXPECT_TRUE(intersection(a, a.movedBy(10_mm, 0_mm)).isEmpty()); // they only touch
}

TEST(Rectangles, HoldTheirTopLeftEdgeButNotTheirBottomRight)
{
    const RectMm a{1_mm, 1_mm, 2_mm, 2_mm};
    EXPECT_TRUE(a.contains({1_mm, 1_mm}));
    EXPECT_FALSE(a.contains({3_mm, 2_mm}));
    EXPECT_EQ(a.grown(1_mm), (RectMm{0_mm, 0_mm, 4_mm, 4_mm}));
}

} // namespace

} // namespace wainscot
