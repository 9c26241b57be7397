// What leaves a book as a baked picture: nothing but the visible pixels, upright, small enough.
#include "core/media/bake.h"
#include "core/media/intake.h"
#include "core/media/jpeg_segments.h"
#include "core/media/proxies.h"
#include "tests/support/media_compare.h"
#include "tests/support/media_pictures.h"

#include <gtest/gtest.h>

#include <QColorSpace>
#include <QTemporaryDir>

namespace wainscot {
namespace {

const QByteArray kSecret = "SECRET";

// Secrets in every place a JPEG has for them, a second picture behind the first included.
QByteArray telltaleJpeg(const QImage& image, int orientation)
{
    test::Tags tags;
    tags.orientation = orientation;
    tags.maker = "SECRETCAMERA";
    tags.taken = "2026:03:14 09:26:53";
    QByteArray jpeg = test::withExif(test::jpegOf(image, 92), test::exifTree(tags));
    jpeg = test::withSegment(jpeg, 0xfe, "SECRETCOMMENT");
    jpeg = test::withSegment(jpeg, 0xed, "Photoshop 3.0 SECRETPLACE");
    jpeg = test::withSegment(
        jpeg, 0xe1, QByteArray("http://ns.adobe.com/xap/1.0/\0", 29) + "SECRETFACES");
    jpeg = test::withSegment(jpeg, 0xe0, QByteArray("JFXX\0\x13", 6) + "SECRETTHUMBNAIL");
    return jpeg + test::withSegment(test::jpegOf(image), 0xfe, "SECRETSECONDPICTURE");
}

class Bake : public ::testing::Test {
protected:
    [[nodiscard]] QString path(const char* name) const
    {
        return m_folder.filePath(QLatin1String(name));
    }
    PictureRecipe recipeOf(const char* name, const QByteArray& bytes)
    {
        const QString file = test::writeFile(path(name), bytes);
        const auto facts = inspectPicture(file);
        EXPECT_TRUE(facts.ok()) << (facts ? "" : qPrintable(facts.error().detail));
        return facts ? wholePicture(file, *facts) : PictureRecipe();
    }

private:
    QTemporaryDir m_folder;
};

TEST_F(Bake, PassesAnUprightSmallJpegThroughWithoutItsTales)
{
    const QImage photo = test::noisePhoto(320, 240, 1);
    const PictureRecipe recipe = recipeOf("p.jpg", telltaleJpeg(photo, 1));
    const auto baked = bakeJpeg(recipe, {400, 400});
    ASSERT_TRUE(baked.ok());
    EXPECT_TRUE(baked->passedThrough);
    EXPECT_FALSE(baked->bytes.contains(kSecret));
    EXPECT_EQ(QImage::fromData(baked->bytes), QImage(recipe.path)); // every pixel as it was
    const QString out = test::writeFile(path("out.jpg"), baked->bytes);
    const QByteArray told = test::outputOf(
        QStringLiteral("exiftool"), {QStringLiteral("-G0"), QStringLiteral("-s"), out});
    EXPECT_TRUE(told.contains("JFIF"));
    for (const char* group : {"[EXIF]", "[XMP]", "[IPTC]", "[Photoshop]", "[ICC_Profile]", "GPS"})
        EXPECT_FALSE(told.contains(group)) << group;
}

TEST_F(Bake, TellsNothingWhenItEncodesAnew)
{
    const QImage photo = test::noisePhoto(320, 240, 1);
    for (const int orientation : {1, 2, 6}) {
        const PictureRecipe recipe = recipeOf("p.jpg", telltaleJpeg(photo, orientation));
        const auto baked = bakeJpeg(recipe, {200, 200});
        ASSERT_TRUE(baked.ok());
        EXPECT_FALSE(baked->passedThrough);
        EXPECT_FALSE(baked->bytes.contains(kSecret));
        EXPECT_EQ(std::max(baked->size.width, baked->size.height), 200);
    }
    QImage png = photo;
    png.setText(QStringLiteral("Comment"), QStringLiteral("SECRETTEXT"));
    const PictureRecipe recipe = recipeOf("p.png", test::pngOf(png));
    EXPECT_FALSE(bakeJpeg(recipe, {400, 400})->bytes.contains(kSecret));
    EXPECT_TRUE(bakeImage(recipe, {400, 400})->textKeys().isEmpty());
}

TEST_F(Bake, LeavesNothingToldInThumbnailsAndProxies)
{
    const PictureRecipe recipe = recipeOf("p.jpg", telltaleJpeg(test::noisePhoto(320, 240, 1), 6));
    const Proxies proxies(path("cache"));
    ASSERT_TRUE(proxies.make(QStringLiteral("ab12"), recipe).ok());
    for (const ProxySize size : {ProxySize::Thumbnail, ProxySize::Screen}) {
        const QByteArray bytes =
            test::readFile(proxies.pathOf(QStringLiteral("ab12"), recipe, size));
        EXPECT_FALSE(bytes.isEmpty());
        EXPECT_FALSE(bytes.contains(kSecret));
    }
}

TEST_F(Bake, PassesThroughOnlyWhenNothingMustChange)
{
    const QImage photo = test::noisePhoto(320, 240, 2);
    const auto passes = [](const PictureRecipe& recipe, SizePx largest) {
        const auto baked = bakeJpeg(recipe, largest);
        return baked && baked->passedThrough;
    };
    PictureRecipe recipe = recipeOf("p.jpg", test::jpegOf(photo));
    EXPECT_TRUE(passes(recipe, {320, 240}));
    EXPECT_FALSE(passes(recipe, {319, 240}));
    recipe.visible.width = 0.5;
    EXPECT_FALSE(passes(recipe, {320, 240}));
    recipe.visible.width = 1;
    recipe.orientation = 3;
    EXPECT_FALSE(passes(recipe, {320, 240}));

    const QByteArray adobe = QColorSpace(QColorSpace::AdobeRgb).iccProfile();
    const QByteArray sRgb = QColorSpace(QColorSpace::SRgb).iccProfile();
    EXPECT_FALSE(
        passes(recipeOf("a.jpg", test::withProfile(test::jpegOf(photo), adobe)), {400, 400}));
    EXPECT_TRUE(
        passes(recipeOf("s.jpg", test::withProfile(test::jpegOf(photo), sRgb)), {400, 400}));
    // Cut off before its end: passed on, every reader would have to guess.
    const QByteArray whole = test::jpegOf(photo);
    EXPECT_FALSE(passes(recipeOf("cut.jpg", whole.left(whole.size() - 40)), {400, 400}));
}

TEST_F(Bake, KeepsEveryPixelOutsideTheCropOut)
{
    // Grey to the left, red to the right; the cut lies between blocks, at every scale.
    constexpr int edge = 1013;
    QImage image(1600, 1200, QImage::Format_RGB32);
    image.fill(qRgb(128, 128, 128));
    for (int y = 0; y < image.height(); ++y) {
        for (int x = edge; x < image.width(); ++x)
            image.setPixel(x, y, qRgb(255, 0, 0));
    }
    PictureRecipe jpeg = recipeOf("p.jpg", test::jpegOf(image, 95));
    PictureRecipe png = recipeOf("p.png", test::pngOf(image));
    jpeg.visible = {0.1, 0.1, double(edge) / 1600 - 0.1, 0.8};
    png.visible = jpeg.visible;
    const auto worst = [](const QImage& out, const QImage& expected) {
        int most = 0;
        for (int y = 0; y < out.height(); ++y) {
            for (int x = 0; x < out.width(); ++x) {
                most = std::max(most, test::difference(out.pixel(x, y), expected.pixel(x, y)));
            }
        }
        return most;
    };
    for (const int width : {60, 150, 333, 500, 700}) {
        QImage grey(width, 2000, QImage::Format_RGB32);
        grey.fill(qRgb(128, 128, 128));
        const QImage shrunk = *bakeImage(jpeg, {width, 1});
        EXPECT_EQ(shrunk.width(), width);
        EXPECT_LE(worst(shrunk, grey), 6) << width;
        EXPECT_LE(worst(*bakeImage(png, {width, 1}), grey), 0) << width;
        EXPECT_LE(worst(QImage::fromData(bakeJpeg(jpeg, {width, width})->bytes), grey), 6);
    }
    // At full size the pixels are the original's own, its blurred colour at the edge included.
    const QImage whole = *bakeImage(jpeg, {5000, 5000});
    const QRect part(160, 120, edge - 160, 960);
    EXPECT_EQ(whole.size(), part.size());
    EXPECT_LE(worst(whole, QImage(jpeg.path).copy(part)), 3);
}

TEST_F(Bake, CropsTheRightPlaceInEveryOrientation)
{
    const QImage photo = test::noisePhoto(640, 480, 5);
    for (int orientation = 1; orientation <= 8; ++orientation) {
        test::Tags tags;
        tags.orientation = orientation;
        PictureRecipe recipe =
            recipeOf("p.jpg", test::withExif(test::jpegOf(photo, 95), test::exifTree(tags)));
        recipe.visible = {0.25, 0.125, 0.5, 0.375};
        ASSERT_TRUE(test::run(QStringLiteral("convert-im6.q16"),
            {recipe.path, QStringLiteral("-auto-orient"), path("upright.png")}));
        const QImage upright(path("upright.png"));
        const QRect part(upright.width() / 4,
            upright.height() / 8,
            upright.width() / 2,
            upright.height() * 3 / 8);
        const auto image = bakeImage(recipe, {5000, 5000});
        ASSERT_TRUE(image.ok());
        EXPECT_LT(test::meanDifference(*image, upright.copy(part)), 1.0) << orientation;
        const auto half = bakeImage(recipe, {part.width() / 2, part.height() / 2});
        const QImage halved = upright.copy(part).scaled(
            part.size() / 2, Qt::IgnoreAspectRatio, Qt::SmoothTransformation);
        EXPECT_LT(test::meanDifference(*half, halved), 6.0) << orientation;
    }
}

TEST_F(Bake, NeverEnlargesAndFitsTheBox)
{
    const PictureRecipe recipe = recipeOf("p.png", test::pngOf(test::noisePhoto(301, 203, 4)));
    EXPECT_EQ(bakeJpeg(recipe, {5000, 5000})->size, (SizePx{301, 203}));
    EXPECT_EQ(bakeJpeg(recipe, {150, 5000})->size, (SizePx{150, 101}));
    EXPECT_EQ(bakeImage(recipe, {150, 150})->size(), QSize(222, 150));
    const auto baked = bakeJpeg(recipe, {100, 10});
    EXPECT_EQ(QImage::fromData(baked->bytes).size(), QSize(baked->size.width, baked->size.height));
    EXPECT_EQ(baked->size.height, 10);
}

TEST_F(Bake, GivesTheSameBytesEachTime)
{
    PictureRecipe recipe = recipeOf("p.jpg", test::jpegOf(test::noisePhoto(900, 700, 6)));
    recipe.visible = {0.1, 0.2, 0.7, 0.6};
    recipe.orientation = 8;
    EXPECT_EQ(bakeJpeg(recipe, {300, 300})->bytes, bakeJpeg(recipe, {300, 300})->bytes);
}

TEST_F(Bake, SaysWhatIsWrongWithTheFile)
{
    PictureRecipe recipe;
    recipe.path = path("gone.jpg");
    const auto baked = bakeJpeg(recipe, {10, 10});
    ASSERT_FALSE(baked.ok());
    EXPECT_EQ(baked.error().code, ErrorCode::CannotRead);
    EXPECT_EQ(baked.error().subject, QStringLiteral("gone.jpg"));
    EXPECT_EQ(bakeImage(recipe, {0, 10}).error().code, ErrorCode::WrongUse);
}

} // namespace
} // namespace wainscot
