// A book on a disk far away: slow, in pieces, interrupted. That alone spoils nothing. Where calls
// break off as well, reading ones too, each task ends with a whole book and a sentence.
#include "tests/support/book_equality.h"
#include "tests/support/worked_book.h"

#include <gmock/gmock.h>

namespace wainscot {

namespace {

constexpr unsigned kSlowRuns = 8;
constexpr unsigned kBrokenRuns = 24;

class FarAway : public WorkedBook {
protected:
    void SetUp() override
    {
        WorkedBook::SetUp();
        for (int i = 2; i < 5; ++i)
            QFile::remove(at("sources/rain-") + QString::number(i));
        again();
        ASSERT_EQ(run({QStringLiteral("pack"), at("book"), at("first.zip")}, {}).exit, 0);
    }

    void TearDown() override
    {
        RecordProperty("far_runs", m_runs);
        RecordProperty("far_breaks", m_broken);
        RecordProperty("losses", HasFailure() ? 1 : 0);
    }

    WorkerEnd run(const QStringList& words, FarDisk disk)
    {
        const WorkerEnd end = m_worker.runFarAway(words, disk);
        m_runs += 1;
        if (end.exit != 0) {
            m_broken += 1;
            EXPECT_EQ(end.exit, 3);
            EXPECT_FALSE(end.said.isEmpty());
            EXPECT_GT(disk.breaks, 0) << end.said.toStdString();
        }
        return end;
    }

    // At first slow, then breaking off too, from seldom to often.
    template <class Prepare, class Check>
    void everyWay(const QStringList& words, Prepare prepare, Check check)
    {
        for (unsigned seed = 1; seed <= kSlowRuns + kBrokenRuns; ++seed) {
            SCOPED_TRACE(::testing::Message() << words.first().toStdString() << ", seed " << seed);
            prepare();
            const int breaks = seed <= kSlowRuns ? 0 : 1 << (seed % 6);
            check(run(words, {seed, breaks}));
            if (HasFailure())
                return;
        }
        EXPECT_GE(m_broken, 4);
    }

    int m_runs = 0;
    int m_broken = 0;
};

TEST_F(FarAway, ANewBookIsWholeOrIsNot)
{
    everyWay(
        {QStringLiteral("new"), at("fresh")},
        [&] { QDir(at("fresh")).removeRecursively(); },
        [&](const WorkerEnd& end) {
            if (end.exit == 0 || QFile::exists(at("fresh/book.wainscot"))) {
                EXPECT_EQ(opened(at("fresh")).promptSets.size(), 1U);
            }
        });
}

TEST_F(FarAway, GatheringLosesNothingAcknowledged)
{
    everyWay(
        {QStringLiteral("gather"), at("book"), at("sources")},
        [&] { again(); },
        [&](const WorkerEnd& end) {
            const int gathered = int(opened(at("book")).pictures.size()) - 3;
            // An answer may be lost on its way back; what is acknowledged never is.
            EXPECT_GE(gathered, end.exit == 0 ? 2 : end.acknowledged);
        });
}

TEST_F(FarAway, PackingLeavesAWholePackOrNone)
{
    everyWay(
        {QStringLiteral("pack"), at("book"), at("book.zip")},
        [&] { QFile::remove(at("book.zip")); },
        [&](const WorkerEnd& end) {
            EXPECT_TRUE(end.exit == 3 || QFile::exists(at("book.zip")));
            expectWholePackOrNone(at("book.zip"));
        });
    EXPECT_TRUE(sameBook(opened(at("book")), m_before));
}

TEST_F(FarAway, UnpackingLeavesAWholeBookOrNone)
{
    everyWay(
        {QStringLiteral("unpack"), at("first.zip"), at("again")},
        [&] { QDir(at("again")).removeRecursively(); },
        [&](const WorkerEnd& end) {
            if (end.exit == 0 || QFile::exists(at("again/book.wainscot"))) {
                EXPECT_TRUE(sameBook(opened(at("again")), m_before));
            }
        });
}

TEST_F(FarAway, BringingUpToDateLeavesTheBookOldOrNew)
{
    makeOldBook(at("old"));
    copyFolder(at("old"), at("book"));
    const Book expected = opened(at("book"), false);
    everyWay(
        {QStringLiteral("open"), at("book")},
        [&] { copyFolder(at("old"), at("book")); },
        [&](const WorkerEnd& /*end*/) {
            EXPECT_TRUE(sameBook(opened(at("book"), false), expected));
        });
}

TEST_F(FarAway, ErasingIsFinishedLater)
{
    everyWay(
        {QStringLiteral("erase"), at("book")},
        [&] { again(); },
        [&](const WorkerEnd& end) {
            const Book book = opened(at("book"));
            EXPECT_TRUE(book.pictures.size() == 2 || (end.exit == 3 && sameBook(book, m_before)));
        });
}

TEST_F(FarAway, RepairingLeavesAWholeBookOrNone)
{
    everyWay(
        {QStringLiteral("repair"), at("book"), at("repaired")},
        [&] { QDir(at("repaired")).removeRecursively(); },
        [&](const WorkerEnd& end) {
            if (end.exit == 0) {
                EXPECT_EQ(opened(at("repaired")).pictures.size(), 3U);
            }
            EXPECT_TRUE(sameBook(opened(at("book")), m_before));
        });
}

TEST_F(FarAway, WithoutLocksABookIsWrittenWholeOrSaysWhy)
{
    const WorkerEnd end =
        m_worker.runFarAway({QStringLiteral("gather"), at("book"), at("sources")}, {1, 0, false});
    m_runs += 1;
    ASSERT_TRUE(end.exit == 0 || end.exit == 3) << end.exit;
    const int gathered = int(opened(at("book")).pictures.size()) - 3;
    EXPECT_EQ(gathered, end.exit == 0 ? 2 : end.acknowledged);
    EXPECT_EQ(end.exit == 3, !end.said.isEmpty());
}

} // namespace

} // namespace wainscot
