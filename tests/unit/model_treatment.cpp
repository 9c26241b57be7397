// What was done to a picture: turned with it, written as one line and read back.
#include "core/model/treatment.h"

#include <gtest/gtest.h>

#include <cmath>

namespace wainscot {
namespace {

const Corners kPage{{{0.2, 0.1}, {0.9, 0.2}, {0.8, 0.9}, {0.1, 0.7}}};

Treatment everything()
{
    Treatment treatment;
    treatment.covered = {
        {{0.1, 1.0 / 3, 0.2, 0.3}, Cover::Mosaic}, {{0, 0, 0.5, 0.5}, Cover::Flat}};
    treatment.straightening = Straightening{kPage, {4000, 3000}};
    treatment.evenLight = true;
    return treatment;
}

TEST(Treatment, IsWrittenAsALineAndReadBack)
{
    for (const Treatment& one : {Treatment{}, everything()}) {
        const auto again = treatmentFromText(textOf(one));
        ASSERT_TRUE(again.has_value()) << qPrintable(textOf(one));
        EXPECT_EQ(*again, one);
    }
    EXPECT_TRUE(textOf({}).isEmpty());
    for (const char* nonsense :
        {"even 3", "flat 1,2,3", "straight", "sepia", "flat 1,2,3,nan", ";"})
        EXPECT_FALSE(treatmentFromText(QLatin1String(nonsense)).has_value()) << nonsense;
}

TEST(Treatment, FourQuarterTurnsAreNone)
{
    Treatment turned = everything();
    const RectFraction rect{0.1, 0.2, 0.3, 0.4};
    RectFraction place = rect;
    for (int i = 0; i < 4; ++i) {
        turned = quarterTurned(turned);
        place = quarterTurned(place);
    }
    EXPECT_NEAR(place.x, rect.x, 1e-12);
    EXPECT_NEAR(place.height, rect.height, 1e-12);
    EXPECT_EQ(turned.straightening->from, (SizePx{4000, 3000}));
    for (std::size_t i = 0; i < 4; ++i) {
        EXPECT_NEAR(turned.straightening->corners.at(i).x, kPage.at(i).x, 1e-12);
        EXPECT_NEAR(turned.straightening->corners.at(i).y, kPage.at(i).y, 1e-12);
    }
    for (int orientation = 1; orientation <= 8; ++orientation) {
        int after = orientation;
        for (int i = 0; i < 4; ++i)
            after = quarterTurned(after);
        EXPECT_EQ(after, orientation);
    }
}

TEST(Treatment, ATurnKeepsCornersClockwise)
{
    Treatment turned = everything();
    for (int i = 0; i < 4; ++i) {
        turned = quarterTurned(turned);
        EXPECT_TRUE(canStraighten(turned.straightening->corners, turned.straightening->from)) << i;
    }
}

TEST(Treatment, CornersMustGoRoundAPage)
{
    const SizePx size{4000, 3000};
    EXPECT_TRUE(canStraighten(kPage, size));
    EXPECT_FALSE(canStraighten({{kPage[1], kPage[0], kPage[3], kPage[2]}}, size)); // mirrored
    EXPECT_FALSE(canStraighten({{kPage[0], kPage[2], kPage[1], kPage[3]}}, size)); // crossed
    EXPECT_FALSE(canStraighten({{kPage[0], kPage[1], {0.4, 0.3}, kPage[3]}}, size)); // dented
    EXPECT_FALSE(canStraighten({{kPage[0], kPage[0], kPage[2], kPage[3]}}, size));
    EXPECT_FALSE(canStraighten({{{0.1, 0.1}, {0.11, 0.1}, {0.11, 0.9}, {0.1, 0.9}}}, size));
}

TEST(Treatment, AStraightenedPageHasItsLongerSides)
{
    const Corners corners{{{0.1, 0.1}, {0.9, 0.1}, {0.8, 0.9}, {0.2, 0.9}}};
    const SizePx page = straightenedSize(corners, {1000, 500});
    EXPECT_EQ(page.width, 800);
    EXPECT_EQ(page.height, int(std::lround(std::hypot(100, 400))));
}

} // namespace
} // namespace wainscot
