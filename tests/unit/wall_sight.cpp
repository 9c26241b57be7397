// Angles, acuity and blur against published figures and against letters of known size.
#include "layout/wall/sight.h"

#include <cmath>
#include <numbers>

#include <gmock/gmock.h>

#include "layout/screen/blur.h"
#include "layout/wall/eyes.h"

namespace wainscot::wall {
namespace {

constexpr SizeMm kPanel{Mm(800), Mm(600)};
constexpr PointMm kMiddle{Mm(400), Mm(300)};

Standing straight(double metres)
{
    return {Mm(metres * 1000), Mm(1200), Mm(1200), 1};
}

TEST(Sight, MeasuresAnglesAsThePublishedTables)
{
    // H = 2 D tan(a / 2) (NUREG-0700 rev. 2, 1.3.1-4), figures computed from it.
    EXPECT_NEAR(arcminutesOf(Mm(5.82), kMiddle, kPanel, straight(1)), 20, 0.02);
    EXPECT_NEAR(arcminutesOf(Mm(13.53), kMiddle, kPanel, straight(1.5)), 31, 0.02);
    // The letter of five arcminutes: 1.45 mm for each metre, 7.25 mm at 5 m.
    EXPECT_NEAR(arcminutesOf(Mm(7.25), kMiddle, kPanel, straight(5)), 5, 0.02);
    // D / 200 is seen at 17.2 arcminutes.
    EXPECT_NEAR(arcminutesOf(Mm(10), kMiddle, kPanel, straight(2)), 17.2, 0.02);
}

TEST(Sight, SeesLessBesideAndAboveTheLineOfSight)
{
    const double middle = arcminutesOf(Mm(10), kMiddle, kPanel, straight(1));
    const double beside = arcminutesOf(Mm(10), {Mm(0), Mm(300)}, kPanel, straight(1));
    EXPECT_NEAR(beside / middle, 1 / std::hypot(1, 0.4), 1e-4);
    Standing child = straight(1);
    child.eyes = Mm(200); // a metre below
    const double above = arcminutesOf(Mm(10), kMiddle, kPanel, child);
    EXPECT_NEAR(above / middle, 0.5, 1e-3) << "sqrt 2 as far, and seen at 45 degrees";
}

TEST(Sight, LosesLettersAtTheSizeAcuityIsMeasuredWith)
{
    EXPECT_EQ(legibilityOf(4.9, 1), Legibility::Gone);
    EXPECT_EQ(legibilityOf(5.1, 1), Legibility::Effort);
    EXPECT_EQ(legibilityOf(15.9, 1), Legibility::Effort);
    EXPECT_EQ(legibilityOf(16, 1), Legibility::Easy);
    EXPECT_EQ(legibilityOf(9.9, 0.5), Legibility::Gone);
    EXPECT_EQ(legibilityOf(16, 0.7), Legibility::Easy);
    // DIN 1450:2013-04: type x 1.4 for acuity 0.5, x 1.75 for 0.4
    EXPECT_NEAR(easyFrom(0.5), 16 * 1.4, 1e-9);
    EXPECT_NEAR(easyFrom(0.4), 16 * 1.75, 1e-9);
}

// A letter E of five strokes as the eye gets it, eight pixels to the arcminute: how much lighter
// its gaps are than its strokes, of the whole contrast.
double contrastOfE(double letterArcminutes, double acuity)
{
    constexpr double kPerArcminute = 8;
    const int stroke = int(std::lround(letterArcminutes / 5 * kPerArcminute));
    QImage image(stroke * 15, stroke * 15, QImage::Format_RGB32);
    image.fill(Qt::white);
    for (int y = 5 * stroke; y < 10 * stroke; ++y)
        for (int x = 5 * stroke; x < 10 * stroke; ++x) {
            const int row = y / stroke - 5;
            if (row % 2 == 0 || x < 6 * stroke)
                image.setPixel(x, y, qRgb(0, 0, 0));
        }
    const QImage seen = blurredLight(image, blurArcminutes(acuity) * kPerArcminute);
    const auto light = [&](int row) {
        const int grey = qRed(seen.pixel(8 * stroke + stroke / 2, (5 + row) * stroke + stroke / 2));
        return std::pow((grey / 255.0 + 0.055) / 1.055, 2.4);
    };
    return (light(1) + light(3)) / 2 - light(2);
}

TEST(Sight, BlursTheLimitingLetterToTheLimitAndNoFurther)
{
    // The strokes repeat at 30 cycles per degree: a tenth of the first harmonic, 4/pi high, stays.
    for (const double acuity : {1.0, 0.5, 0.4}) {
        const double limit = contrastOfE(5 / acuity, acuity);
        EXPECT_NEAR(limit, 0.127, 0.03) << acuity;
        EXPECT_GT(contrastOfE(10 / acuity, acuity), 0.65) << "twice as large is clear";
        EXPECT_LT(contrastOfE(2.5 / acuity, acuity), 0.02) << "half as large is lost";
    }
}

TEST(Sight, AddsOnlyTheBlurTheReaderDoesNotBring)
{
    EXPECT_EQ(addedBlurArcminutes(1, 1), 0);
    EXPECT_NEAR(
        std::hypot(addedBlurArcminutes(0.5, 1), blurArcminutes(1)), blurArcminutes(0.5), 1e-9);
    EXPECT_NEAR(
        std::hypot(addedBlurArcminutes(1, 3), blurArcminutes(1)), 3 * blurArcminutes(1), 1e-9);
    EXPECT_EQ(addedBlurArcminutes(1, 0.5), 0);
}

TEST(Sight, SeesAPanelStraightAheadAsItIs)
{
    const auto corners = cornersOf(kPanel, straight(2));
    EXPECT_NEAR(corners[0].x, -0.2, 1e-12);
    EXPECT_NEAR(corners[0].y, -0.15, 1e-12);
    EXPECT_NEAR(corners[2].x, 0.2, 1e-12);
    EXPECT_NEAR(corners[2].y, 0.15, 1e-12);
}

TEST(Sight, LooksUpAtAPanelThatHangsHigh)
{
    Standing child = straight(1);
    child.eyes = Mm(700);
    const auto corners = cornersOf(kPanel, child);
    const double top = corners[1].x - corners[0].x;
    const double foot = corners[2].x - corners[3].x;
    EXPECT_LT(top, foot) << "what is farther is smaller";
    const Tangent middle = seen(Mm(0), child.middle, child);
    EXPECT_NEAR(middle.x, 0, 1e-12);
    EXPECT_NEAR(middle.y, 0, 1e-12);
    // By hand: the eye 0.5 m below the middle, 1 m away; the upper edge 0.8 m above the eye.
    const double lean = std::atan2(0.5, 1.0);
    EXPECT_NEAR(corners[0].y, -std::tan(std::atan2(0.8, 1.0) - lean), 1e-12);
    EXPECT_NEAR(corners[3].y, std::tan(lean - std::atan2(0.2, 1.0)), 1e-12);
}

TEST(Eyes, StandBetweenThePublishedHeights)
{
    // CDC 2000, both sexes, 5th and 95th percentile of stature at the age, by 0.91 and 0.93.
    struct Age {
        int preset;
        double lowest;
        double highest;
    };
    for (const Age& age : {Age{0, 878, 1019}, Age{1, 1004, 1168}, Age{2, 1185, 1379}}) {
        EXPECT_GT(eyesPresets()[std::size_t(age.preset)].height.value(), age.lowest * 0.91);
        EXPECT_LT(eyesPresets()[std::size_t(age.preset)].height.value(), age.highest * 0.93);
    }
    for (const EyesPreset& preset : eyesPresets())
        EXPECT_STRNE(preset.source, "");
}

} // namespace
} // namespace wainscot::wall
