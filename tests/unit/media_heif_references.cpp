// A HEIC whose pictures are made of themselves is refused before the library follows it.
#include "core/media/decode.h"
#include "core/media/heif_references.h"
#include "core/media/intake.h"
#include "core/media/picture_header.h"
#include "tests/support/places.h"

#include <QFile>
#include <gtest/gtest.h>

namespace wainscot {
namespace {

QByteArray number(std::uint32_t value, int bytes)
{
    QByteArray all;
    for (int i = bytes; i-- > 0;)
        all.append(char(value >> (8 * i)));
    return all;
}

QByteArray box(const char* type, const QByteArray& content)
{
    return number(std::uint32_t(8 + content.size()), 4) + type + content;
}

QByteArray reference(
    const char* type, std::uint32_t from, const std::vector<std::uint32_t>& to, int width = 2)
{
    QByteArray content = number(from, width) + number(std::uint32_t(to.size()), 2);
    for (const std::uint32_t one : to)
        content += number(one, width);
    return box(type, content);
}

QByteArray fileOf(const QByteArray& references, int version = 0)
{
    const QByteArray flags = number(std::uint32_t(version) << 24, 4);
    return box("ftyp", "heic") + box("meta", number(0, 4) + box("iref", flags + references));
}

bool isSound(const QByteArray& file)
{
    const Result<> checked = checkHeifReferences(file);
    if (!checked) {
        EXPECT_EQ(checked.error().code, ErrorCode::Damaged);
        EXPECT_FALSE(checked.error().detail.isEmpty());
    }
    return checked.ok();
}

TEST(HeifReferences, OfAGridWithTransparencyAndAThumbnailAreSound)
{
    EXPECT_TRUE(isSound(fileOf(reference("dimg", 1, {2, 3, 4, 5}) + reference("thmb", 6, {1})
        + reference("auxl", 7, {1}) + reference("prem", 1, {7}) + reference("cdsc", 8, {1}))));
    EXPECT_TRUE(isSound(fileOf(reference("dimg", 70'000, {2, 3}, 4), 1)));
    EXPECT_TRUE(isSound(box("ftyp", "heic")));
    EXPECT_TRUE(isSound({}));
}

TEST(HeifReferences, OfAFullGridAreSound)
{
    std::vector<std::uint32_t> tiles(0xffff, 2);
    EXPECT_TRUE(isSound(fileOf(reference("dimg", 1, tiles))));
}

TEST(HeifReferences, OfAPictureMadeOfItselfAreNot)
{
    EXPECT_FALSE(isSound(fileOf(reference("dimg", 2, {2}))));
    EXPECT_FALSE(isSound(fileOf(reference("dimg", 2, {3}) + reference("dimg", 3, {4, 2}))));
    EXPECT_FALSE(isSound(fileOf(reference("auxl", 2, {3}) + reference("auxl", 3, {2}))));
    EXPECT_FALSE(isSound(fileOf(reference("dimg", 70'000, {70'000}, 4), 1)));
    // In the second list of a file that has two.
    const QByteArray twice = box("meta",
        number(0, 4) + box("iref", number(0, 4) + reference("dimg", 1, {2}))
            + box("iref", number(0, 4) + reference("dimg", 2, {2})));
    EXPECT_FALSE(isSound(twice));
}

// Each of 20 pictures shows the next one a thousand times: 10^60 pictures to decode.
TEST(HeifReferences, ThatMultiplyWithoutEndAreNot)
{
    QByteArray all;
    for (std::uint32_t i = 1; i < 5; ++i)
        all += reference("dimg", i, std::vector<std::uint32_t>(1000, i + 1));
    EXPECT_FALSE(isSound(fileOf(all)));
}

TEST(HeifReferences, ThatCannotBeReadAreNot)
{
    QByteArray odd = reference("dimg", 1, {2, 3});
    odd[3] = char(odd[3] + 2); // it says that it is longer
    EXPECT_FALSE(isSound(fileOf(odd)));
    EXPECT_FALSE(isSound(fileOf(reference("dimg", 1, {2}) + "dim")));
    const QByteArray whole = fileOf(reference("dimg", 1, {2, 3}));
    for (int cut = 21; cut < whole.size(); ++cut) // from inside the meta box on
        EXPECT_FALSE(isSound(whole.left(cut))) << cut;
}

// Found by the fuzzer: its grid names itself as its tile, and libheif began 31,000 threads.
TEST(HeifReferences, ThatEndedTheProgramAreRefusedAtTheDoor)
{
    QFile file(testData("fuzz/picture/itself.heic"));
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const QByteArray bytes = file.readAll();
    EXPECT_FALSE(isSound(bytes));
    const Result<PictureHeader> header = readPictureHeader(QStringLiteral("heic"), bytes);
    ASSERT_FALSE(header.ok());
    EXPECT_TRUE(header.error().detail.contains(QStringLiteral("made of itself")));
    EXPECT_FALSE(
        decodeUpright({file.fileName(), QStringLiteral("heic"), 1, {64, 64}, {}, {}}, {64, 64})
            .ok());
}

// Its list says 16 x 8,327,168 pixels and its picture is smaller: what lies behind it in memory was
// read as its rows.
TEST(HeicPictures, ThatContradictThemselvesAboutTheirSizeAreRefused)
{
    const QString path = testData("fuzz/picture/two_sizes.heic");
    const Result<PictureFacts> facts = inspectPicture(path);
    ASSERT_FALSE(facts.ok());
    EXPECT_TRUE(facts.error().detail.contains(QStringLiteral("its size")))
        << qPrintable(facts.error().detail);
}

} // namespace
} // namespace wainscot
