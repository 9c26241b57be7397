// Every write, sync, rename, truncation, removal and new file of a task fails once, N = 1, 2, 3 ...
// until the task goes through; and once more with everything after it failing too, as on a disk
// that stays full. Each time there is an answer, the book is whole, and nothing is half done.
#include "tests/support/book_equality.h"
#include "tests/support/worked_book.h"

#include <gmock/gmock.h>

namespace wainscot {

namespace {

class FailingAt : public WorkedBook {
protected:
    void TearDown() override
    {
        RecordProperty("failed_writes", m_failures);
        RecordProperty("losses", HasFailure() ? 1 : 0);
        EXPECT_GT(m_failures, 10);
    }

    // `prepare` before and `check` after each run, until nothing was left to fail.
    template <class Prepare, class Check>
    void every(const QStringList& words, Prepare prepare, Check check)
    {
        for (const bool from : {false, true}) {
            for (int at = 1;; ++at) {
                SCOPED_TRACE(::testing::Message() << "change " << at << (from ? " and on" : ""));
                ASSERT_LT(at, 3000);
                prepare();
                const WorkerEnd end = m_worker.run(words, {at, from});
                ASSERT_TRUE(end.exit == 0 || end.exit == 3) << end.exit << end.said.toStdString();
                if (end.exit == 3) {
                    EXPECT_FALSE(end.said.isEmpty());
                }
                check(end);
                if (HasFailure())
                    return;
                if (!end.failed) {
                    EXPECT_EQ(end.exit, 0) << end.said.toStdString();
                    break;
                }
                m_failures += 1;
            }
        }
    }

    int m_failures = 0;
};

TEST_F(FailingAt, AnyStepOfANewBookLeavesAWholeOneOrNone)
{
    every(
        {QStringLiteral("new"), at("fresh")},
        [&] { QDir(at("fresh")).removeRecursively(); },
        [&](const WorkerEnd& end) {
            if (end.exit == 0 || QFile::exists(at("fresh/book.wainscot"))) {
                EXPECT_EQ(opened(at("fresh")).promptSets.size(), 1U);
            }
        });
}

TEST_F(FailingAt, AnyStepOfGatheringLosesNothingAcknowledged)
{
    for (int i = 2; i < 5; ++i)
        QFile::remove(at("sources/rain-") + QString::number(i));
    every(
        {QStringLiteral("gather"), at("book"), at("sources")},
        [&] { again(); },
        [&](const WorkerEnd& end) {
            const int gathered = int(opened(at("book")).pictures.size()) - 3;
            EXPECT_EQ(gathered, end.exit == 0 ? 2 : end.acknowledged);
        });
}

TEST_F(FailingAt, AnyStepOfPackingLeavesAWholePackOrNone)
{
    again();
    every(
        {QStringLiteral("pack"), at("book"), at("book.zip")},
        [&] { QFile::remove(at("book.zip")); },
        [&](const WorkerEnd& end) {
            EXPECT_TRUE(end.exit == 3 || QFile::exists(at("book.zip")));
            expectWholePackOrNone(at("book.zip"));
        });
    EXPECT_TRUE(sameBook(opened(at("book")), m_before));
}

TEST_F(FailingAt, AnyStepOfPackingAgainLeavesTheEarlierPack)
{
    again();
    ASSERT_EQ(m_worker.run({QStringLiteral("pack"), at("book"), at("first.zip")}).exit, 0);
    every(
        {QStringLiteral("pack"), at("book"), at("book.zip")},
        [&] {
            QFile::remove(at("book.zip"));
            ASSERT_TRUE(QFile::copy(at("first.zip"), at("book.zip")));
        },
        [&](const WorkerEnd& /*end*/) {
            ASSERT_TRUE(QFile::exists(at("book.zip")));
            expectWholePackOrNone(at("book.zip"));
        });
}

TEST_F(FailingAt, AnyStepOfUnpackingLeavesAWholeBookOrNone)
{
    again();
    ASSERT_EQ(m_worker.run({QStringLiteral("pack"), at("book"), at("book.zip")}).exit, 0);
    every(
        {QStringLiteral("unpack"), at("book.zip"), at("again")},
        [&] { QDir(at("again")).removeRecursively(); },
        [&](const WorkerEnd& end) {
            if (end.exit == 0 || QFile::exists(at("again/book.wainscot"))) {
                EXPECT_TRUE(sameBook(opened(at("again")), m_before));
            }
        });
}

TEST_F(FailingAt, AnyStepOfBringingUpToDateLeavesTheBookOldOrNew)
{
    makeOldBook(at("old"));
    copyFolder(at("old"), at("book"));
    const Book expected = opened(at("book"), false);
    every(
        {QStringLiteral("open"), at("book")},
        [&] { copyFolder(at("old"), at("book")); },
        [&](const WorkerEnd& /*end*/) {
            EXPECT_TRUE(sameBook(opened(at("book"), false), expected));
        });
}

TEST_F(FailingAt, AnyStepOfErasingIsFinishedLater)
{
    const QString gone = m_before.pictures.rows().begin()->second.sha256;
    every(
        {QStringLiteral("erase"), at("book")},
        [&] { again(); },
        [&](const WorkerEnd& end) {
            const Book book = opened(at("book"));
            const bool erased = book.pictures.size() == 2;
            EXPECT_TRUE(erased || (end.exit == 3 && sameBook(book, m_before)));
            const QString file = at("book/pictures/") + gone.left(2) + QLatin1Char('/') + gone;
            EXPECT_EQ(QFile::exists(file), !erased);
        });
}

TEST_F(FailingAt, AnyStepOfRepairingLeavesAWholeBookOrNone)
{
    again();
    every(
        {QStringLiteral("repair"), at("book"), at("repaired")},
        [&] { QDir(at("repaired")).removeRecursively(); },
        [&](const WorkerEnd& end) {
            if (end.exit == 0) {
                EXPECT_EQ(opened(at("repaired")).pictures.size(), 3U);
            }
            EXPECT_TRUE(sameBook(opened(at("book")), m_before));
        });
}

} // namespace

} // namespace wainscot
