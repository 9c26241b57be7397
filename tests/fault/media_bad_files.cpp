// Files that are damaged, misnamed, too large or made to harm: each gets one plain verdict, early.
#include "core/media/decode.h"
#include "core/media/intake.h"
#include "core/media/jpeg_writer.h"
#include "core/media/proxies.h"
#include "core/media/rows.h"
#include "core/media/sniff.h"
#include "tests/support/media_pictures.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QTemporaryDir>
#include <QtEndian>

#include <random>

#include <zlib.h>

namespace wainscot {
namespace {

class BadFile : public ::testing::Test {
protected:
    [[nodiscard]] QString path(const char* name) const
    {
        return m_folder.filePath(QLatin1String(name));
    }
    Result<PictureFacts> look(const char* name, const QByteArray& bytes)
    {
        return inspectPicture(test::writeFile(path(name), bytes));
    }
    void expectRefused(const char* name, const QByteArray& bytes, ErrorCode code, const char* words)
    {
        const auto facts = look(name, bytes);
        ASSERT_FALSE(facts.ok()) << name;
        EXPECT_EQ(facts.error().code, code) << name;
        EXPECT_EQ(facts.error().subject, QLatin1String(name));
        EXPECT_TRUE(facts.error().detail.contains(QLatin1String(words)))
            << name << ": " << qPrintable(facts.error().detail);
    }

private:
    QTemporaryDir m_folder;
};

QByteArray bytes32(quint32 value)
{
    QByteArray out(4, '\0');
    qToBigEndian(value, out.data());
    return out;
}

// A PNG of zeros, of a few hundred KB however large it claims to be.
QByteArray plainPng(quint32 side, char bits, char colourType, int channels)
{
    const std::size_t line =
        (std::size_t(side) * std::size_t(bits) * std::size_t(channels) + 7) / 8;
    std::vector<Bytef> zeros(line + 1, 0);
    z_stream stream{};
    deflateInit(&stream, 9);
    QByteArray packed;
    std::array<Bytef, 65536> out{};
    for (quint32 y = 0; y <= side; ++y) {
        stream.next_in = zeros.data();
        stream.avail_in = y < side ? uInt(zeros.size()) : 0;
        do {
            stream.next_out = out.data();
            stream.avail_out = uInt(out.size());
            deflate(&stream, y < side ? Z_NO_FLUSH : Z_FINISH);
            packed.append(reinterpret_cast<const char*>(out.data()),
                qsizetype(out.size() - stream.avail_out));
        } while (stream.avail_out == 0);
    }
    deflateEnd(&stream);
    const QByteArray header =
        bytes32(side) + bytes32(side) + bits + colourType + QByteArray(3, '\0');
    return QByteArray("\x89PNG\r\n\x1a\n", 8) + test::pngChunk("IHDR", header)
        + test::pngChunk("IDAT", packed) + test::pngChunk("IEND", {});
}

// Cheap rows with some structure, for pictures that are larger than a test wants to hold.
class StripedRows final : public RowSource {
public:
    explicit StripedRows(SizePx size)
        : RowSource(size, PixelForm::Grey)
    {
    }
    bool next(std::uint8_t* row) override
    {
        ++m_y;
        for (int x = 0; x < size().width; ++x)
            row[x] = std::uint8_t((x / 9 * 37 + m_y / 7 * 11) & 0xff);
        return true;
    }

private:
    int m_y = 0;
};

TEST_F(BadFile, ThatIsNoPictureIsRefusedInPlainWords)
{
    expectRefused("empty.jpg", {}, ErrorCode::Refused, "is empty");
    expectRefused("page.jpg", "<!DOCTYPE html><html></html>", ErrorCode::Refused, "web page");
    expectRefused("draw.svg",
        "<svg xmlns='http://www.w3.org/2000/svg' width='100000' height='100000'/>",
        ErrorCode::Refused,
        "SVG");
    expectRefused("moving.gif", "GIF89a\1\0\1\0", ErrorCode::Refused, "GIF");
    expectRefused("paper.jpg", "%PDF-1.7 ...", ErrorCode::Refused, "PDF");
    expectRefused("list.jpg", "Mina, Oskar, Lin\n", ErrorCode::Refused, "text");
    expectRefused("bytes.jpg", QByteArray("\1\2\3\0\xff", 5), ErrorCode::Refused, "no picture");
    const QByteArray film = QByteArray("\0\0\0\x18", 4) + "ftypisom" + QByteArray(40, '\0');
    expectRefused("film.heic", film, ErrorCode::Refused, "film");
}

TEST_F(BadFile, ThatIsMissingOrAFolderCannotBeRead)
{
    EXPECT_EQ(inspectPicture(path("gone.jpg")).error().code, ErrorCode::CannotRead);
    QDir().mkdir(path("folder.jpg"));
    EXPECT_EQ(inspectPicture(path("folder.jpg")).error().code, ErrorCode::CannotRead);
}

TEST_F(BadFile, ThatIsATruncatedJpegIsTakenWithANote)
{
    const QByteArray whole = test::jpegOf(test::noisePhoto(1200, 900, 1));
    ASSERT_TRUE(look("whole.jpg", whole)->notes.isEmpty());
    for (const int percent : {5, 50, 95}) {
        const QByteArray cut = whole.left(whole.size() * percent / 100);
        const auto facts = look("cut.jpg", cut);
        ASSERT_TRUE(facts.ok()) << percent;
        ASSERT_EQ(facts->notes.size(), 1) << percent;
        EXPECT_TRUE(facts->notes.first().contains(QStringLiteral("damaged"))) << percent;
        // The one decode that makes the proxies notices it too.
        const Proxies proxies(path("cache"));
        EXPECT_EQ(inspectPicture(path("cut.jpg"), &proxies)->notes, facts->notes);
        EXPECT_FALSE(
            proxies.cached(facts->sha256, wholePicture(path("cut.jpg"), *facts), ProxySize::Screen)
                .isNull());
    }
    expectRefused("head.jpg", whole.left(300), ErrorCode::Damaged, "breaks off");
}

TEST_F(BadFile, ThatIsAScrambledJpegIsTakenWithANote)
{
    QByteArray bytes = test::jpegOf(test::noisePhoto(1200, 900, 2));
    std::mt19937 random(5);
    for (int i = 0; i < 40; ++i) {
        const auto at = bytes.size() / 4 + qsizetype(random() % quint32(bytes.size() / 2));
        bytes[at] = char(random());
    }
    const auto facts = look("scrambled.jpg", bytes);
    ASSERT_TRUE(facts.ok());
    EXPECT_EQ(facts->notes.size(), 1);
}

TEST_F(BadFile, ThatIsTruncatedInAnotherFormatIsRefused)
{
    const QImage photo = test::noisePhoto(400, 300, 3);
    test::writeFile(path("p.png"), test::pngOf(photo));
    ASSERT_TRUE(photo.save(path("p.tif"), "TIFF"));
    ASSERT_TRUE(photo.save(path("p.webp"), "WEBP", 80));
    ASSERT_TRUE(test::run(
        QStringLiteral("heif-enc"), {path("p.png"), QStringLiteral("-o"), path("p.heic")}));
    for (const char* name : {"p.png", "p.tif", "p.webp", "p.heic"}) {
        const QByteArray whole = test::readFile(path(name));
        ASSERT_TRUE(inspectPicture(path(name)).ok()) << name;
        for (const int percent : {20, 60, 95})
            expectRefused(name, whole.left(whole.size() * percent / 100), ErrorCode::Damaged, "");
    }
}

TEST_F(BadFile, ThatIsAChangedPngIsRefused)
{
    QByteArray bytes = test::pngOf(test::noisePhoto(300, 200, 4));
    bytes[bytes.size() / 2] = char(bytes[bytes.size() / 2] ^ 0x10);
    expectRefused("changed.png", bytes, ErrorCode::Damaged, "damaged");
}

TEST_F(BadFile, ThatIsABombIsRefusedBeforeAPixelIsDecoded)
{
    const std::uint64_t before = decodedBytes();
    expectRefused("rgb.png", plainPng(20'000, 8, 2, 3), ErrorCode::Refused, "million pixels");
    expectRefused("bits.png", plainPng(30'000, 1, 0, 1), ErrorCode::Refused, "million pixels");
    // Under the cap of pixels, yet of a few KB.
    expectRefused("small.png", plainPng(12'000, 1, 0, 1), ErrorCode::Refused, "far more pixels");
    // The header of an honest JPEG made to claim 65,000 x 65,000.
    QByteArray jpeg = test::jpegOf(test::fourQuarters());
    const qsizetype frame = jpeg.indexOf("\xff\xc0");
    ASSERT_GT(frame, 0);
    jpeg.replace(frame + 5, 4, QByteArray("\xfd\xe8\xfd\xe8", 4));
    expectRefused("claims.jpg", jpeg, ErrorCode::Refused, "million pixels");
    EXPECT_EQ(decodedBytes(), before);
    // Whoever skips the look is refused as well.
    PictureRecipe recipe;
    recipe.path = path("rgb.png");
    EXPECT_EQ(decodeUpright(recipe, {320, 320}).error().code, ErrorCode::Refused);
    EXPECT_EQ(decodedBytes(), before);
}

TEST_F(BadFile, NoneIsAPhotoOf93MegapixelsWhichIsReadInPart)
{
    StripedRows rows({11'648, 8'000});
    const auto bytes = writeJpeg(rows, {});
    ASSERT_TRUE(bytes.ok());
    const std::uint64_t before = decodedBytes();
    const auto facts = look("large.jpg", *bytes);
    ASSERT_TRUE(facts.ok()) << qPrintable(facts.error().detail);
    EXPECT_TRUE(facts->notes.isEmpty());
    EXPECT_EQ(facts->size, (SizePx{11'648, 8'000}));
    EXPECT_LE(decodedBytes() - before, std::uint64_t(11'648) * 8'000 / 64);
}

TEST_F(BadFile, NeverStopsTheOthers)
{
    const QString folder = path("folder");
    QDir().mkdir(folder);
    const auto write = [&](const char* name, const QByteArray& bytes) {
        test::writeFile(folder + QLatin1Char('/') + QLatin1String(name), bytes);
    };
    const QByteArray good = test::jpegOf(test::noisePhoto(300, 200, 1));
    write("1 good.jpg", good);
    write("2 empty.jpg", {});
    write("3 page.jpg", "<html>");
    write("4 cut.jpg", good.left(good.size() / 2));
    write("5 bomb.png", plainPng(12'000, 1, 0, 1));
    write("6 good.png", test::pngOf(test::fourQuarters()));
    write(".hidden.jpg", good);
    write("Thumbs.db", "x");
    const auto result = inspectFolder(folder);
    ASSERT_TRUE(result.ok());
    ASSERT_EQ(result->files.size(), 6U);
    const std::vector<Verdict> expected{Verdict::Accepted,
        Verdict::Refused,
        Verdict::Refused,
        Verdict::AcceptedWithNote,
        Verdict::Refused,
        Verdict::Accepted};
    for (std::size_t i = 0; i < expected.size(); ++i) {
        EXPECT_EQ(result->files[i].verdict, expected[i]) << qPrintable(result->files[i].name);
        EXPECT_EQ(result->files[i].says.isEmpty(), expected[i] == Verdict::Accepted);
    }
    EXPECT_EQ(result->files[1].says, QStringLiteral("2 empty.jpg is empty."));
    EXPECT_EQ(result->files[2].says, QStringLiteral("3 page.jpg is a web page, not a picture."));
}

TEST_F(BadFile, DoesNotKeepAPictureOutWhenTheCacheCannotBeWritten)
{
    const QString file =
        test::writeFile(path("p.jpg"), test::jpegOf(test::noisePhoto(300, 200, 1)));
    test::writeFile(path("cache"), "a file where the folder should be");
    const Proxies proxies(path("cache"));
    const auto facts = inspectPicture(file, &proxies);
    ASSERT_TRUE(facts.ok());
    EXPECT_EQ(proxies.make(facts->sha256, wholePicture(file, *facts)).error().code,
        ErrorCode::CannotWrite);
}

} // namespace
} // namespace wainscot
