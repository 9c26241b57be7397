// A file system that is full: each task gets a page more at a time until it goes through. Each time
// there is an answer, the book is whole, and nothing is half done.
#include "tests/support/book_equality.h"
#include "tests/support/small_disk.h"
#include "tests/support/worked_book.h"

namespace wainscot {

namespace {

constexpr qint64 kPage = 4096; // of memory, which is what this file system counts
constexpr qint64 kAmple = 64 * 1024 * 1024;

class FullDisk : public WorkedBook {
protected:
    void SetUp() override
    {
        if (!SmallDisk::canBeHad())
            GTEST_SKIP() << "this machine lets no program mount a disk of its own";
        WorkedBook::SetUp();
        for (int i = 1; i < 5; ++i)
            QFile::remove(at("sources/rain-") + QString::number(i));
        again();
        ASSERT_EQ(m_worker.run({QStringLiteral("pack"), at("book"), at("first.zip")}).exit, 0);
    }

    void TearDown() override
    {
        RecordProperty("full_disks", m_full);
        RecordProperty("losses", HasFailure() ? 1 : 0);
    }

    // `prepare` fills the disk before each run, `check` looks at it afterwards; checking may write.
    template <class Prepare, class Check>
    void untilThereIsRoom(const QStringList& words, int pages, Prepare prepare, Check check)
    {
        int failures = 0;
        for (qint64 more = 0;; more += pages * kPage) {
            SCOPED_TRACE(::testing::Message() << more / kPage << " pages free");
            ASSERT_LT(more, kAmple / 2);
            const SmallDisk disk(at("disk"), kAmple);
            prepare();
            disk.resize(std::max(disk.used() + more, kPage)); // none at all would mean no limit
            const WorkerEnd end = m_worker.run(words);
            ASSERT_TRUE(end.exit == 0 || end.exit == 3) << end.exit << end.said.toStdString();
            EXPECT_EQ(end.exit == 3, !end.said.isEmpty());
            disk.resize(kAmple);
            check(end);
            if (HasFailure() || end.exit == 0)
                break;
            ++failures;
        }
        m_full += failures;
        EXPECT_GT(failures, 3);
    }

    void bookOnDisk() { copyFolder(at("whole"), at("disk/book")); }

    int m_full = 0;
};

TEST_F(FullDisk, HoldsAWholeNewBookOrNone)
{
    untilThereIsRoom(
        {QStringLiteral("new"), at("disk/book")},
        1,
        [] {},
        [&](const WorkerEnd& end) {
            if (end.exit == 0 || QFile::exists(at("disk/book/book.wainscot"))) {
                EXPECT_EQ(opened(at("disk/book")).promptSets.size(), 1U);
            }
        });
}

TEST_F(FullDisk, LosesNothingAcknowledgedWhileGathering)
{
    untilThereIsRoom(
        {QStringLiteral("gather"), at("disk/book"), at("sources")},
        2,
        [&] { bookOnDisk(); },
        [&](const WorkerEnd& end) {
            const int gathered = int(opened(at("disk/book")).pictures.size()) - 3;
            EXPECT_EQ(gathered, end.exit == 0 ? 1 : end.acknowledged);
        });
}

TEST_F(FullDisk, HoldsAWholePackOrNone)
{
    untilThereIsRoom(
        {QStringLiteral("pack"), at("book"), at("disk/book.zip")},
        3,
        [&] {},
        [&](const WorkerEnd& end) {
            EXPECT_EQ(end.exit == 0, QFile::exists(at("disk/book.zip")));
            expectWholePackOrNone(at("disk/book.zip"));
        });
}

TEST_F(FullDisk, HoldsAWholeUnpackedBookOrNone)
{
    untilThereIsRoom(
        {QStringLiteral("unpack"), at("first.zip"), at("disk/book")},
        3,
        [&] {},
        [&](const WorkerEnd& end) {
            if (end.exit == 0 || QFile::exists(at("disk/book/book.wainscot"))) {
                EXPECT_TRUE(sameBook(opened(at("disk/book")), m_before));
            }
        });
}

TEST_F(FullDisk, LeavesAnOldBookOldOrBringsItUpToDate)
{
    makeOldBook(at("old"));
    copyFolder(at("old"), at("book"));
    const Book expected = opened(at("book"), false);
    untilThereIsRoom(
        {QStringLiteral("open"), at("disk/book")},
        1,
        [&] { copyFolder(at("old"), at("disk/book")); },
        [&](const WorkerEnd& /*end*/) {
            EXPECT_TRUE(sameBook(opened(at("disk/book"), false), expected));
        });
}

TEST_F(FullDisk, ErasesAPictureOrLeavesTheBookAsItWas)
{
    untilThereIsRoom(
        {QStringLiteral("erase"), at("disk/book")},
        1,
        [&] { bookOnDisk(); },
        [&](const WorkerEnd& end) {
            const Book book = opened(at("disk/book"));
            EXPECT_TRUE(book.pictures.size() == 2 || (end.exit == 3 && sameBook(book, m_before)));
        });
}

TEST_F(FullDisk, HoldsAWholeRepairedBookOrNone)
{
    untilThereIsRoom(
        {QStringLiteral("repair"), at("book"), at("disk/repaired")},
        3,
        [&] {},
        [&](const WorkerEnd& end) {
            if (end.exit == 0) {
                EXPECT_EQ(opened(at("disk/repaired")).pictures.size(), 3U);
            }
        });
    EXPECT_TRUE(sameBook(opened(at("book")), m_before));
}

} // namespace

} // namespace wainscot
