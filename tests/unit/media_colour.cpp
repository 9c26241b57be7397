// Colours of every kind of file against engines that are not ours: Qt's and ImageMagick's.
#include "core/media/bake.h"
#include "core/media/colour.h"
#include "core/media/decode.h"
#include "core/media/intake.h"
#include "tests/support/media_compare.h"
#include "tests/support/media_pictures.h"

#include <gtest/gtest.h>

#include <QColorSpace>
#include <QTemporaryDir>

namespace wainscot {
namespace {

class Colour : public ::testing::Test {
protected:
    [[nodiscard]] QString path(const char* name) const
    {
        return m_folder.filePath(QLatin1String(name));
    }
    QImage decoded(const QString& file, ColourKind kind)
    {
        const auto facts = inspectPicture(file);
        EXPECT_TRUE(facts.ok());
        if (!facts)
            return {};
        EXPECT_EQ(facts->colour, kind);
        const auto image = decodeUpright(wholePicture(file, *facts), facts->size);
        return image ? *image : QImage();
    }

private:
    QTemporaryDir m_folder;
};

TEST_F(Colour, OfDisplayP3MatchesQtsConversion)
{
    const QColorSpace p3(QColorSpace::DisplayP3);
    QImage expected = test::fourQuarters();
    expected.setColorSpace(p3);
    expected.convertToColorSpace(QColorSpace(QColorSpace::SRgb));
    EXPECT_GT(test::worstQuarterDifference(expected, test::fourQuarters()), 15); // so it matters

    const QString jpeg = test::writeFile(
        path("p3.jpg"), test::withProfile(test::jpegOf(test::fourQuarters(), 97), p3.iccProfile()));
    EXPECT_LE(test::worstQuarterDifference(decoded(jpeg, ColourKind::OtherRgb), expected), 4);

    QImage tagged = test::fourQuarters();
    tagged.setColorSpace(p3);
    const QString png = test::writeFile(path("p3.png"), test::pngOf(tagged));
    EXPECT_LE(test::worstQuarterDifference(decoded(png, ColourKind::OtherRgb), expected), 2);
}

TEST_F(Colour, OfP3HeicMatchesQtsConversion)
{
    const QColorSpace p3(QColorSpace::DisplayP3);
    QImage image = test::fourQuarters();
    image.setColorSpace(p3);
    test::writeFile(path("p3.png"), test::pngOf(image));
    ASSERT_TRUE(test::run(QStringLiteral("heif-enc"),
        {QStringLiteral("-q"),
            QStringLiteral("95"),
            path("p3.png"),
            QStringLiteral("-o"),
            path("p3.heic")}));
    image.convertToColorSpace(QColorSpace(QColorSpace::SRgb));
    EXPECT_LE(
        test::worstQuarterDifference(decoded(path("p3.heic"), ColourKind::OtherRgb), image), 12);
}

TEST_F(Colour, OfOwnP3ProfileIsDisplayP3)
{
    const QColorSpace own = QColorSpace::fromIccProfile(displayP3Profile());
    ASSERT_TRUE(own.isValid());
    QImage ours = test::fourQuarters();
    QImage qts = ours;
    ours.setColorSpace(own);
    qts.setColorSpace(QColorSpace(QColorSpace::DisplayP3));
    ours.convertToColorSpace(QColorSpace(QColorSpace::SRgb));
    qts.convertToColorSpace(QColorSpace(QColorSpace::SRgb));
    EXPECT_LE(test::worstQuarterDifference(ours, qts), 1);
}

TEST_F(Colour, OfSRgbProfileIsLeftAlone)
{
    const QByteArray icc = QColorSpace(QColorSpace::SRgb).iccProfile();
    EXPECT_TRUE(isAlreadySRgb(icc, PixelForm::Rgb));
    EXPECT_TRUE(isAlreadySRgb({}, PixelForm::Rgb));
    EXPECT_TRUE(isAlreadySRgb("no profile at all", PixelForm::Rgb));
    EXPECT_FALSE(isAlreadySRgb(QColorSpace(QColorSpace::AdobeRgb).iccProfile(), PixelForm::Rgb));
    const QString jpeg = test::writeFile(
        path("srgb.jpg"), test::withProfile(test::jpegOf(test::fourQuarters(), 97), icc));
    EXPECT_LE(
        test::worstQuarterDifference(decoded(jpeg, ColourKind::SRgb), test::fourQuarters()), 4);
}

TEST_F(Colour, OfCmykJpegMatchesImageMagick)
{
    // Profiles of Debian's libgs-common.
    const QString icc = QStringLiteral("/usr/share/color/icc/ghostscript/");
    // Muted first: colours that print can hold, so that no clipping rule is compared.
    test::writeFile(path("rgb.png"), test::pngOf(test::fourQuarters()));
    ASSERT_TRUE(test::run(QStringLiteral("convert-im6.q16"),
        {path("rgb.png"),
            QStringLiteral("+level"),
            QStringLiteral("25%,75%"),
            QStringLiteral("-profile"),
            icc + QStringLiteral("srgb.icc"),
            QStringLiteral("-profile"),
            icc + QStringLiteral("default_cmyk.icc"),
            QStringLiteral("-quality"),
            QStringLiteral("97"),
            path("cmyk.jpg")}));
    ASSERT_TRUE(test::run(QStringLiteral("convert-im6.q16"),
        {path("cmyk.jpg"),
            QStringLiteral("-intent"),
            QStringLiteral("Relative"),
            QStringLiteral("-black-point-compensation"),
            QStringLiteral("-profile"),
            icc + QStringLiteral("srgb.icc"),
            path("expected.png")}));
    const QImage ours = decoded(path("cmyk.jpg"), ColourKind::Cmyk);
    EXPECT_LE(test::worstQuarterDifference(ours, QImage(path("expected.png"))), 4);
}

TEST_F(Colour, OfCmykWithoutProfileIsTheProductOfInksAndSaysSo)
{
    ASSERT_TRUE(test::run(QStringLiteral("convert-im6.q16"),
        {QStringLiteral("-size"),
            QStringLiteral("64x64"),
            QStringLiteral("xc:cmyk(0,255,255,0)"),
            QStringLiteral("-quality"),
            QStringLiteral("97"),
            path("red.jpg")}));
    const auto facts = inspectPicture(path("red.jpg"));
    ASSERT_TRUE(facts.ok());
    ASSERT_EQ(facts->notes.size(), 1);
    EXPECT_TRUE(facts->notes.first().contains(QStringLiteral("CMYK")));
    const QImage image = decoded(path("red.jpg"), ColourKind::Cmyk);
    EXPECT_LE(test::difference(image.pixel(32, 32), qRgb(255, 0, 0)), 4);
}

TEST_F(Colour, OfGreyStaysGreyAndOneComponent)
{
    const QImage grey = test::noisePhoto(200, 160, 3).convertToFormat(QImage::Format_Grayscale8);
    const QString jpeg = test::writeFile(path("grey.jpg"), test::jpegOf(grey));
    EXPECT_EQ(decoded(jpeg, ColourKind::Grey).format(), QImage::Format_Grayscale8);
    PictureRecipe recipe;
    recipe.path = jpeg;
    const auto baked = bakeJpeg(recipe, {100, 100});
    ASSERT_TRUE(baked.ok());
    EXPECT_EQ(baked->components, 1);
    EXPECT_EQ(QImage::fromData(baked->bytes).format(), QImage::Format_Grayscale8);
}

TEST_F(Colour, OfSixteenBitPngComesOutInEightBits)
{
    QImage deep(60, 40, QImage::Format_Grayscale16);
    for (int y = 0; y < 40; ++y) {
        auto* line = reinterpret_cast<quint16*>(deep.scanLine(y));
        std::fill_n(line, 60, quint16(0x8040));
    }
    const QString png = test::writeFile(path("deep.png"), test::pngOf(deep));
    const QImage image = decoded(png, ColourKind::Grey);
    EXPECT_LE(test::difference(image.pixel(30, 20), qRgb(128, 128, 128)), 1);
}

TEST_F(Colour, OfTransparentPartsIsWhite)
{
    QImage image(40, 40, QImage::Format_ARGB32);
    image.fill(qRgba(255, 0, 0, 0));
    const QString png = test::writeFile(path("clear.png"), test::pngOf(image));
    EXPECT_EQ(decoded(png, ColourKind::Untagged).pixel(20, 20), qRgb(255, 255, 255));
    ASSERT_TRUE(image.save(path("clear.webp"), "WEBP", 100));
    EXPECT_EQ(decoded(path("clear.webp"), ColourKind::Untagged).pixel(20, 20), qRgb(255, 255, 255));
}

TEST_F(Colour, OfInterlacedAndPalettePngIsTheSame)
{
    test::writeFile(path("p.png"), test::pngOf(test::fourQuarters()));
    ASSERT_TRUE(test::run(QStringLiteral("convert-im6.q16"),
        {path("p.png"),
            QStringLiteral("-interlace"),
            QStringLiteral("PNG"),
            QStringLiteral("-type"),
            QStringLiteral("Palette"),
            path("woven.png")}));
    const QImage image = decoded(path("woven.png"), ColourKind::Untagged);
    EXPECT_EQ(test::meanDifference(image, test::fourQuarters()), 0);
}

} // namespace
} // namespace wainscot
