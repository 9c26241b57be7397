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
        {{0.1, 1.0 / 3, 0.2, 0.3}, Cover::Mosaic}, {{0, 0, 0.5, 0.5}, Cover::Flat, true}};
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

// A camera with square pixels looks at a page in space; its axis goes through the picture's middle.
struct Camera {
    double focus = 0.6; // of the picture's diagonal
    double turned = 0; // about its axis, radians
    double leaning = 0; // up or down
    double aside = 0;
    [[nodiscard]] PointFraction sees(double x, double y, SizePx picture) const
    {
        double z = y * std::sin(leaning);
        y *= std::cos(leaning);
        const double depth = z * std::cos(aside) - x * std::sin(aside);
        x = x * std::cos(aside) + z * std::sin(aside);
        z = 3 + depth;
        const double f = focus * std::hypot(picture.width, picture.height);
        const double u = f * (x * std::cos(turned) - y * std::sin(turned)) / z;
        const double v = f * (x * std::sin(turned) + y * std::cos(turned)) / z;
        return {0.5 + u / picture.width, 0.5 + v / picture.height};
    }
    [[nodiscard]] Corners pageOf(double shape, SizePx picture) const
    {
        const double w = 0.3 * std::sqrt(shape);
        const double h = 0.3 / std::sqrt(shape);
        return {
            sees(-w, -h, picture), sees(w, -h, picture), sees(w, h, picture), sees(-w, h, picture)};
    }
};

TEST(Treatment, AStraightenedPageHasTheShapeOfThePage)
{
    const SizePx picture{4000, 3000};
    for (const double shape : {0.5, 210.0 / 297, 1.0, 297.0 / 210}) {
        for (const Camera& camera : {Camera{0.6, 0.1, 0.5, 0.3},
                 Camera{0.8, -0.2, -0.4, 0.5},
                 Camera{1.4, 0.3, 0.6, -0.4},
                 Camera{0.6, 0.1, 0.5, 0}, // leaning alone tells no focal length: 0.6 is assumed
                 Camera{0.6, 0, 0, 0}}) {
            const Corners corners = camera.pageOf(shape, picture);
            ASSERT_TRUE(canStraighten(corners, picture)) << shape;
            const SizePx page = straightenedSize(corners, picture);
            EXPECT_NEAR(page.aspect() / shape, 1, 0.002) << shape << " " << camera.leaning;
        }
    }
}

TEST(Treatment, AWrongFocalLengthBendsAPageByAFewPercent)
{
    const SizePx picture{4000, 3000};
    for (const double focus : {0.5, 0.75}) { // the wider and longer lenses of telephones
        const Corners corners = Camera{focus, 0, 0.5, 0}.pageOf(1, picture);
        EXPECT_NEAR(straightenedSize(corners, picture).aspect(), 1, 0.12) << focus;
    }
}

TEST(Treatment, AStraightenedPageLosesNoPixels)
{
    const Corners corners{{{0.1, 0.1}, {0.9, 0.1}, {0.8, 0.9}, {0.2, 0.9}}};
    const SizePx page = straightenedSize(corners, {1000, 500});
    EXPECT_GE(page.width, 800);
    EXPECT_GE(page.height, int(std::lround(std::hypot(100, 400))));
}

} // namespace
} // namespace wainscot
