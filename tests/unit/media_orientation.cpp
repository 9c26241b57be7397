// Every way a camera can be held, in every format, against an independent decoder (ImageMagick).
#include "core/media/decode.h"
#include "core/media/intake.h"
#include "core/media/orientation.h"
#include "tests/support/media_compare.h"
#include "tests/support/media_pictures.h"

#include <gtest/gtest.h>

#include <QTemporaryDir>

namespace wainscot {
namespace {

class Orientation : public ::testing::TestWithParam<int> {
protected:
    [[nodiscard]] QString path(const char* name) const
    {
        return m_folder.filePath(QLatin1String(name));
    }

    // The upright picture as ImageMagick sees it in a JPEG with this tag.
    QImage expected()
    {
        const QString source = test::writeFile(
            path("reference.jpg"), test::withExif(test::jpegOf(test::fourQuarters(), 95), tree()));
        EXPECT_TRUE(test::run(QStringLiteral("convert-im6.q16"),
            {source, QStringLiteral("-auto-orient"), path("reference.png")}));
        return QImage(path("reference.png"));
    }
    static QByteArray tree()
    {
        test::Tags tags;
        tags.orientation = GetParam();
        return test::exifTree(tags);
    }
    void expectUpright(const QString& file, const char* format)
    {
        const QImage reference = expected();
        ASSERT_FALSE(reference.isNull());
        const auto facts = inspectPicture(file);
        ASSERT_TRUE(facts.ok()) << qPrintable(facts.error().detail);
        EXPECT_EQ(facts->format, QLatin1String(format));
        EXPECT_EQ(facts->orientation, GetParam());
        EXPECT_EQ(facts->storedSize, (SizePx{128, 64}));
        EXPECT_EQ(facts->size, (SizePx{reference.width(), reference.height()}));
        const auto image = decodeUpright(wholePicture(file, *facts), facts->size);
        ASSERT_TRUE(image.ok());
        EXPECT_LT(test::worstQuarterDifference(*image, reference), 8);
        // Shrinking takes another way through the decoder.
        const auto small = decodeUpright(
            wholePicture(file, *facts), {facts->size.width / 4, facts->size.height / 4});
        ASSERT_TRUE(small.ok());
        EXPECT_LT(test::worstQuarterDifference(*small, reference), 8);
    }

private:
    QTemporaryDir m_folder;
};

TEST_P(Orientation, OfJpegIsApplied)
{
    const QByteArray jpeg = test::withExif(test::jpegOf(test::fourQuarters(), 95), tree());
    expectUpright(test::writeFile(path("p.jpg"), jpeg), "jpeg");
}

TEST_P(Orientation, OfPngExifChunkIsApplied)
{
    const QByteArray png = test::withChunk(test::pngOf(test::fourQuarters()), "eXIf", tree());
    expectUpright(test::writeFile(path("p.png"), png), "png");
}

TEST_P(Orientation, OfTiffIsApplied)
{
    ASSERT_TRUE(test::fourQuarters().save(path("p.tif"), "TIFF"));
    ASSERT_TRUE(test::run(QStringLiteral("exiftool"),
        {QStringLiteral("-overwrite_original"),
            QStringLiteral("-Orientation#=%1").arg(GetParam()),
            path("p.tif")}));
    expectUpright(path("p.tif"), "tiff");
}

TEST_P(Orientation, OfWebpExifChunkIsApplied)
{
    test::writeFile(path("p.png"), test::pngOf(test::fourQuarters()));
    test::writeFile(path("p.exif"), tree());
    ASSERT_TRUE(test::run(QStringLiteral("cwebp"),
        {QStringLiteral("-quiet"),
            QStringLiteral("-q"),
            QStringLiteral("95"),
            path("p.png"),
            QStringLiteral("-o"),
            path("bare.webp")}));
    ASSERT_TRUE(test::run(QStringLiteral("webpmux"),
        {QStringLiteral("-set"),
            QStringLiteral("exif"),
            path("p.exif"),
            path("bare.webp"),
            QStringLiteral("-o"),
            path("p.webp")}));
    expectUpright(path("p.webp"), "webp");
}

INSTANTIATE_TEST_SUITE_P(AllEight, Orientation, ::testing::Range(1, 9));

TEST(OrientationOfHeic, IsNeverTakenFromExif)
{
    const QTemporaryDir folder;
    test::Tags tags;
    tags.orientation = 6;
    tags.taken = "2026:03:14 09:26:53";
    const QString jpeg = test::writeFile(folder.filePath(QStringLiteral("p.jpg")),
        test::withExif(test::jpegOf(test::fourQuarters(), 95), test::exifTree(tags)));
    const QString heic = folder.filePath(QStringLiteral("p.heic"));
    ASSERT_TRUE(test::run(QStringLiteral("heif-enc"),
        {QStringLiteral("-q"), QStringLiteral("90"), jpeg, QStringLiteral("-o"), heic}));

    const auto facts = inspectPicture(heic);
    ASSERT_TRUE(facts.ok()) << qPrintable(facts.error().detail);
    EXPECT_EQ(facts->format, QStringLiteral("heic"));
    EXPECT_EQ(facts->orientation, 1);
    ASSERT_TRUE(facts->captured.has_value()); // so the EXIF with its "6" was there and was read
    EXPECT_EQ(facts->size, (SizePx{128, 64}));
    const auto image = decodeUpright(wholePicture(heic, *facts), facts->size);
    ASSERT_TRUE(image.ok());
    EXPECT_LT(test::worstQuarterDifference(*image, test::fourQuarters()), 12);
}

TEST(OrientationOfHeic, IsTurnedOnceByItsOwnProperty)
{
    const QTemporaryDir folder;
    const QString png = test::writeFile(
        folder.filePath(QStringLiteral("p.png")), test::pngOf(test::fourQuarters()));
    const QString heic = folder.filePath(QStringLiteral("p.heic"));
    ASSERT_TRUE(test::run(QStringLiteral("heif-enc"),
        {QStringLiteral("-q"), QStringLiteral("90"), png, QStringLiteral("-o"), heic}));
    // The property "pixi" (bit depth) is overwritten by "irot" (ISO/IEC 23008-12, 6.5.10): the
    // lowest two bits of its first byte are quarter turns against the clock.
    QByteArray bytes = test::readFile(heic);
    const qsizetype at = bytes.indexOf("pixi");
    ASSERT_GT(at, 0);
    bytes.replace(at, 5, QByteArray("irot\1", 5));
    test::writeFile(heic, bytes);

    const auto facts = inspectPicture(heic);
    ASSERT_TRUE(facts.ok()) << qPrintable(facts.error().detail);
    EXPECT_EQ(facts->orientation, 1);
    EXPECT_EQ(facts->size, (SizePx{64, 128}));
    const auto image = decodeUpright(wholePicture(heic, *facts), facts->size);
    ASSERT_TRUE(image.ok());
    QTransform quarterTurn;
    quarterTurn.rotate(-90);
    EXPECT_LT(
        test::worstQuarterDifference(*image, test::fourQuarters().transformed(quarterTurn)), 12);
}

TEST(Turning, FindsTheStoredPlaceOfAnUprightCorner)
{
    // 40 x 30 stored; its upright top left corner pixel, from the table of EXIF 2.32, tag 274.
    struct Case {
        int orientation;
        int x;
        int y;
    };
    for (const Case& c : {Case{1, 0, 0},
             Case{2, 39, 0},
             Case{3, 39, 29},
             Case{4, 0, 29},
             Case{5, 0, 0},
             Case{6, 0, 29},
             Case{7, 39, 29},
             Case{8, 39, 0}}) {
        const RectPx stored = Turning(c.orientation).stored(RectPx{0, 0, 1, 1}, {40, 30});
        EXPECT_EQ(stored.x, c.x) << c.orientation;
        EXPECT_EQ(stored.y, c.y) << c.orientation;
    }
}

} // namespace
} // namespace wainscot
