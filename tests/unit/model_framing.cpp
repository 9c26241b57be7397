#include "core/model/display.h"

#include <gtest/gtest.h>

#include <random>

namespace wainscot {

namespace {

TEST(VisiblePart, IsAllOfAPictureInAFrameOfItsShape)
{
    EXPECT_EQ(visiblePart({4000, 3000}, 4.0 / 3, {}), RectFraction());
}

TEST(VisiblePart, CutsTheSidesInANarrowFrameAndTheEndsInAWideOne)
{
    const RectFraction narrow = visiblePart({4000, 3000}, 1, {});
    EXPECT_DOUBLE_EQ(narrow.width, 0.75);
    EXPECT_DOUBLE_EQ(narrow.x, 0.125);
    const RectFraction wide = visiblePart({4000, 3000}, 8.0 / 3, {});
    EXPECT_DOUBLE_EQ(wide.height, 0.5);
    EXPECT_DOUBLE_EQ(wide.y, 0.25);
}

TEST(VisiblePart, OfNothingIsAll)
{
    EXPECT_EQ(visiblePart({0, 0}, 1, {}), RectFraction());
    EXPECT_EQ(visiblePart({10, 10}, 0, {}), RectFraction());
}

TEST(VisiblePart, LiesInsideThePictureAndHasTheShapeOfTheFrame)
{
    std::mt19937 random(5);
    std::uniform_real_distribution<double> any(-0.5, 1.5);
    for (int i = 0; i < 2000; ++i) {
        const SizePx picture{1 + int(random() % 9000), 1 + int(random() % 9000)};
        const double aspect = 0.2 + any(random) * any(random) * 2;
        if (aspect <= 0)
            continue;
        const Framing framing{{any(random), any(random)}, any(random) * 8};
        const RectFraction part = visiblePart(picture, aspect, framing);
        ASSERT_GE(part.x, 0);
        ASSERT_GE(part.y, 0);
        ASSERT_LE(part.x + part.width, 1 + 1e-12);
        ASSERT_LE(part.y + part.height, 1 + 1e-12);
        ASSERT_NEAR(
            part.width * picture.width / (part.height * picture.height), aspect, aspect * 1e-9);
    }
}

} // namespace

} // namespace wainscot
