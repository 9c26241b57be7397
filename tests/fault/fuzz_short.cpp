// A short run of every fuzzing target: all seeds as they are, then seeded changes to them.
#include "core/media/decode.h"
#include "core/media/intake.h"
#include "core/store/book_store.h"
#include "core/store/pack.h"
#include "tests/fuzz/mutator.h"
#include "tests/fuzz/targets.h"
#include "tests/support/places.h"

#include <QFile>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace wainscot::fuzz {

namespace {

class ShortRun : public ::testing::TestWithParam<Named> { };

TEST_P(ShortRun, EndsInAnAnswerOrAReason)
{
    const Named& one = GetParam();
    const std::vector<QByteArray> seeds = allSeedsOf(one.name);
    ASSERT_GE(seeds.size(), 3U);
    const auto run = [&](const QByteArray& bytes) {
        one.target(
            reinterpret_cast<const std::uint8_t*>(bytes.constData()), std::size_t(bytes.size()));
    };
    for (const QByteArray& seed : seeds)
        run(seed);
    Mutator mutator(seeds, 2026);
    for (int i = 0; i < one.quickRuns; ++i)
        run(mutator.next());
    RecordProperty("fuzz_executions", one.quickRuns + int(seeds.size()));
}

// Otherwise the changed ones would only ever knock at the door.
TEST(Seeds, HoldABookAndAPackThatOpen)
{
    const QTemporaryDir place;
    const auto put = [&](const char* from, const QString& to) {
        return QFile::copy(testData("fuzz/") + QString::fromLatin1(from), to);
    };
    const QString file = place.filePath(QStringLiteral("book.wainscot"));
    for (const char* seed : {"book/first.wainscot", "book/now.wainscot"}) {
        ASSERT_TRUE(put(seed, file));
        QFile::setPermissions(file, QFile::ReadOwner | QFile::WriteOwner);
        EXPECT_TRUE(BookStore::open(file).ok()) << seed;
        QFile::remove(file);
    }
    ASSERT_TRUE(put("pack/book.zip", place.filePath(QStringLiteral("book.zip"))));
    const auto unpacked = unpackBook(
        place.filePath(QStringLiteral("book.zip")), place.filePath(QStringLiteral("unpacked")));
    EXPECT_TRUE(unpacked.ok()) << unpacked.error().detail.toStdString();
}

TEST(Seeds, HoldPicturesThatCanBeShown)
{
    int shown = 0;
    for (const QByteArray& seed : seedsOf("picture")) {
        const QTemporaryDir place;
        const QString path = place.filePath(QStringLiteral("picture"));
        QFile file(path);
        ASSERT_TRUE(file.open(QIODevice::WriteOnly) && file.write(seed) == seed.size());
        file.close();
        const auto facts = inspectPicture(path);
        shown += int(facts && decodeUpright(wholePicture(path, *facts), {40, 40}).ok());
    }
    EXPECT_GE(shown, 6) << "one of each format that is taken, and more";
}

INSTANTIATE_TEST_SUITE_P(Targets, ShortRun, ::testing::ValuesIn(targets()), [](const auto& one) {
    return std::string(one.param.name);
});

} // namespace

} // namespace wainscot::fuzz
