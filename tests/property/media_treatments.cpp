// Whatever a treatment says, a picture comes out whole or is refused with a reason.
#include "core/media/bake.h"
#include "core/media/decode.h"
#include "core/media/intake.h"
#include "tests/support/media_pictures.h"

#include <gtest/gtest.h>

#include <QTemporaryDir>

#include <random>

namespace wainscot {
namespace {

class Dice {
public:
    explicit Dice(unsigned seed)
        : m_random(seed)
    {
    }
    double number(double from, double to)
    {
        return std::uniform_real_distribution<double>(from, to)(m_random);
    }
    int whole(int from, int to) { return std::uniform_int_distribution<int>(from, to)(m_random); }

private:
    std::mt19937 m_random;
};

// Regions may stick out of the picture and be of no size; corners may lie anywhere near.
Treatment anyTreatment(Dice& dice, SizePx upright)
{
    Treatment treatment;
    for (int i = dice.whole(0, 3); i > 0; --i) {
        treatment.covered.push_back({{dice.number(-0.3, 1.1),
                                         dice.number(-0.3, 1.1),
                                         dice.whole(0, 4) == 0 ? 0 : dice.number(0, 1.4),
                                         dice.number(0, 1.4)},
            Cover(dice.whole(0, 2)),
            dice.whole(0, 1) == 1});
    }
    if (dice.whole(0, 2) > 0) {
        const double far = dice.whole(0, 3) == 0 ? 0.8 : 0.3;
        treatment.straightening =
            Straightening{{{{dice.number(-0.02, far), dice.number(-0.02, far)},
                              {1 - dice.number(-0.02, far), dice.number(-0.02, far)},
                              {1 - dice.number(-0.02, far), 1 - dice.number(-0.02, far)},
                              {dice.number(-0.02, far), 1 - dice.number(-0.02, far)}}},
                upright};
    }
    treatment.evenLight = dice.whole(0, 1) == 1;
    return treatment;
}

TEST(AnyTreatment, MakesAPictureOfTheSizeOrSaysWhyNot)
{
    const QTemporaryDir folder;
    const QString file = test::writeFile(
        folder.filePath(QStringLiteral("p.jpg")), test::jpegOf(test::noisePhoto(157, 101, 3)));
    const auto facts = inspectPicture(file);
    ASSERT_TRUE(facts.ok());
    int refused = 0;
    int straight = 0;
    for (unsigned seed = 1; seed <= 150; ++seed) {
        SCOPED_TRACE(seed);
        Dice dice(seed);
        PictureRecipe recipe = wholePicture(file, *facts);
        recipe.orientation = dice.whole(1, 8);
        const SizePx upright = recipe.orientation < 5 ? SizePx{157, 101} : SizePx{101, 157};
        recipe.treatment = anyTreatment(dice, upright);
        recipe.size = upright;
        const auto& straightening = recipe.treatment.straightening;
        const bool can = !straightening || canStraighten(straightening->corners, upright);
        if (straightening && can) {
            recipe.size = straightenedSize(straightening->corners, upright);
            // Not smaller than what it shows, and not stretched beyond reason.
            EXPECT_LE(recipe.size.width, 4 * (upright.width + upright.height));
            EXPECT_LE(recipe.size.height, 4 * (upright.width + upright.height));
            ++straight;
        }
        const double left = dice.number(0, 0.9);
        const double top = dice.number(0, 0.9);
        recipe.visible = {left, top, dice.number(0.05, 1 - left), dice.number(0.05, 1 - top)};
        const SizePx asked{dice.whole(1, 200), dice.whole(1, 200)};
        const auto image = bakeImage(recipe, asked);
        const auto jpeg = bakeJpeg(recipe, asked);
        const auto whole = decodeUpright(recipe, {64, 64});
        ASSERT_EQ(image.ok(), can);
        ASSERT_EQ(jpeg.ok(), can);
        ASSERT_EQ(whole.ok(), can);
        if (!can) {
            EXPECT_EQ(image.error().code, ErrorCode::Refused);
            ++refused;
            continue;
        }
        EXPECT_FALSE(image->isNull());
        EXPECT_LE(jpeg->size.width, asked.width);
        EXPECT_LE(jpeg->size.height, asked.height);
        EXPECT_FALSE(jpeg->passedThrough && !recipe.treatment.isNothing());
        EXPECT_LE(std::max(whole->width(), whole->height()), 64);
        EXPECT_EQ(treatmentFromText(textOf(recipe.treatment)), recipe.treatment);
    }
    EXPECT_GT(refused, 8);
    EXPECT_GT(straight, 40);
}

} // namespace
} // namespace wainscot
