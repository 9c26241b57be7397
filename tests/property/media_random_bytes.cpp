// Whatever the bytes are, looking at them ends in facts or in a reason.
#include "core/media/decode.h"
#include "core/media/exif.h"
#include "core/media/intake.h"
#include "core/media/jpeg_segments.h"
#include "core/media/picture_header.h"
#include "core/media/sniff.h"
#include "tests/support/media_pictures.h"

#include <gtest/gtest.h>

#include <QTemporaryDir>

#include <random>

namespace wainscot {
namespace {

QByteArray randomBytes(std::mt19937& random, qsizetype count)
{
    QByteArray bytes(count, '\0');
    for (char& byte : bytes)
        byte = char(random());
    return bytes;
}

TEST(RandomBytes, AreSniffedAsAtMostOneFormatAndExplainedOtherwise)
{
    std::mt19937 random(1);
    const QList<QByteArray> starts{"",
        "\xff\xd8\xff",
        QByteArray("\x89PNG\r\n\x1a\n", 8),
        "RIFF....WEBP",
        QByteArray("II*\0", 4),
        "....ftypheic",
        "<html",
        "GIF8"};
    for (int i = 0; i < 20'000; ++i) {
        const QByteArray bytes = starts[i % starts.size()] + randomBytes(random, i % 40);
        const QString format = pictureFormat(bytes);
        EXPECT_FALSE(whyNotAPicture(bytes).isEmpty());
        if (!format.isEmpty()) {
            const auto header = readPictureHeader(format, bytes);
            EXPECT_TRUE(!header || !header->stored.isEmpty());
        }
    }
}

TEST(RandomBytes, InATreeOfTagsNeverCrashAndNeverTurnOddly)
{
    std::mt19937 random(2);
    test::Tags tags;
    tags.orientation = 6;
    tags.taken = "2026:03:14 09:26:53";
    tags.offset = "+01:00";
    tags.maker = "A maker of cameras";
    const QByteArray good = test::exifTree(tags);
    ASSERT_EQ(readExif(good).orientation, 6);
    for (int i = 0; i < 20'000; ++i) {
        QByteArray bytes = good.left(qsizetype(random() % quint32(good.size() + 1)));
        for (int change = 0; change < i % 5 && !bytes.isEmpty(); ++change)
            bytes[qsizetype(random() % quint32(bytes.size()))] = char(random());
        const ExifFacts facts = readExif(bytes);
        EXPECT_GE(facts.orientation, 1);
        EXPECT_LE(facts.orientation, 8);
        const auto tiff = readTiffHeader(bytes);
        EXPECT_TRUE(!tiff || !tiff->size.isEmpty());
    }
}

TEST(RandomBytes, InAJpegLeaveNoMetadataBehind)
{
    std::mt19937 random(3);
    const QByteArray good = test::withSegment(
        test::withExif(test::jpegOf(test::fourQuarters()), test::exifTree({})), 0xfe, "SECRET");
    int survived = 0;
    for (int i = 0; i < 5'000; ++i) {
        QByteArray bytes = good;
        // Everything but the comment itself may change.
        for (int change = 0; change <= i % 4; ++change) {
            const auto at = 20 + qsizetype(random() % quint32(bytes.size() - 20));
            bytes[at] = char(random());
        }
        QByteArray bare = bytes;
        if (stripMetadata(bare)) {
            ++survived;
            EXPECT_FALSE(bare.contains("SECRET"));
            EXPECT_LE(bare.size(), bytes.size());
            EXPECT_TRUE(bare.startsWith("\xff\xd8"));
            EXPECT_TRUE(bare.endsWith("\xff\xd9"));
        } else {
            EXPECT_EQ(bare, bytes) << "and nothing was done";
        }
    }
    EXPECT_GT(survived, 1'000); // so the check above was not idle
}

TEST(RandomBytes, InAnyFormatEndInFactsOrAReason)
{
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("p"));
    std::mt19937 random(4);
    const QImage picture = test::noisePhoto(64, 48, 1);
    ASSERT_TRUE(picture.save(path + QStringLiteral(".webp"), "WEBP", 80));
    ASSERT_TRUE(picture.save(path + QStringLiteral(".tif"), "TIFF"));
    test::writeFile(path + QStringLiteral(".png"), test::pngOf(picture));
    ASSERT_TRUE(test::run(QStringLiteral("heif-enc"),
        {path + QStringLiteral(".png"), QStringLiteral("-o"), path + QStringLiteral(".heic")}));
    test::writeFile(path + QStringLiteral(".jpg"), test::jpegOf(picture));
    for (const char* ending : {".jpg", ".png", ".webp", ".tif", ".heic"}) {
        const QByteArray good = test::readFile(path + QLatin1String(ending));
        int refused = 0;
        for (int i = 0; i < 150; ++i) {
            QByteArray bytes = good;
            for (int change = 0; change < 1 + i % 12; ++change)
                bytes[qsizetype(random() % quint32(bytes.size()))] = char(random());
            const QString file = test::writeFile(path, bytes);
            const auto facts = inspectPicture(file);
            if (!facts) {
                EXPECT_FALSE(facts.error().detail.isEmpty());
                ++refused;
                continue;
            }
            EXPECT_FALSE(facts->size.isEmpty());
            const auto image = decodeUpright(wholePicture(file, *facts), {40, 40});
            if (image) {
                EXPECT_LE(image->width(), 40);
                EXPECT_LE(image->height(), 40);
            }
        }
        // A PNG's checksums notice every change; the others must let some through.
        if (qstrcmp(ending, ".png") == 0)
            EXPECT_EQ(refused, 150);
        else
            EXPECT_LT(refused, 150) << ending;
    }
}

} // namespace
} // namespace wainscot
