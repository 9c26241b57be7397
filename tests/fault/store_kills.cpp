// Three hundred seeded kills (SIGKILL) of a program at work on a book. What it acknowledged is
// there, the book opens and is whole, and no half file stands under a final name.
#include "tests/support/book_equality.h"
#include "tests/support/random_edits.h"
#include "tests/support/worked_book.h"

namespace wainscot {

namespace {

class Kill : public WorkedBook {
protected:
    void TearDown() override
    {
        RecordProperty("kills", m_kills);
        RecordProperty("losses", HasFailure() ? 1 : 0);
        EXPECT_GT(m_kills, 0);
    }

    // Kills it at a random moment of the time it takes; true when it was still at work.
    bool strike(const QStringList& words, unsigned takes)
    {
        const auto moment = unsigned(m_random() % (takes + 1));
        const WorkerEnd end = m_worker.runAndKill(words, 0, moment);
        EXPECT_TRUE(end.exit == -1 || end.exit == 0);
        m_kills += 1;
        return end.exit == -1;
    }

    int m_kills = 0;
};

TEST_F(Kill, LosesNoEditThatWasAcknowledged)
{
    again();
    Book before = m_before;
    for (unsigned seed = 1; seed <= 90; ++seed) {
        SCOPED_TRACE(seed);
        const WorkerEnd end =
            m_worker.runAndKill({QStringLiteral("edit"), at("book"), QString::number(seed)},
                1 + int(seed % 4),
                unsigned(m_random() % 8000));
        ASSERT_EQ(end.exit, -1);
        m_kills += 1;
        // The same edits in memory: the file holds those acknowledged, or one more.
        RandomEdits edits(seed);
        Book expected = before;
        for (int i = 0; i < end.acknowledged; ++i)
            apply(edits.next(expected), expected);
        Book oneMore = expected;
        apply(edits.next(oneMore), oneMore);
        before = opened(at("book"), false); // random pictures never existed
        ASSERT_TRUE(sameBook(before, expected) || sameBook(before, oneMore));
        if (seed % 15 == 0) {
            again();
            before = m_before;
        }
    }
}

TEST_F(Kill, LosesNoPictureThatWasGathered)
{
    for (int i = 0; i < 80; ++i) {
        SCOPED_TRACE(i);
        again();
        const WorkerEnd end =
            m_worker.runAndKill({QStringLiteral("gather"), at("book"), at("sources")},
                i % 5,
                unsigned(m_random() % 12'000));
        m_kills += 1;
        const Book book = opened(at("book"));
        const int gathered = int(book.pictures.size()) - 3;
        EXPECT_GE(gathered, end.acknowledged);
        EXPECT_LE(gathered, end.acknowledged + 1);
    }
}

TEST_F(Kill, LeavesNoHalfPack)
{
    again();
    const QStringList words{QStringLiteral("pack"), at("book"), at("book.zip")};
    const unsigned takes = m_worker.duration(words);
    int struck = 0;
    for (int i = 0; i < 40; ++i) {
        SCOPED_TRACE(i);
        QFile::remove(at("book.zip"));
        struck += int(strike(words, takes));
        expectWholePackOrNone(at("book.zip"));
    }
    EXPECT_GT(struck, 0);
    EXPECT_TRUE(sameBook(opened(at("book")), m_before));
}

TEST_F(Kill, LeavesNoHalfBookWhenUnpacking)
{
    again();
    ASSERT_EQ(m_worker.run({QStringLiteral("pack"), at("book"), at("book.zip")}).exit, 0);
    const QStringList words{QStringLiteral("unpack"), at("book.zip"), at("again")};
    const unsigned takes = m_worker.duration(words);
    for (int i = 0; i < 30; ++i) {
        SCOPED_TRACE(i);
        QDir(at("again")).removeRecursively();
        strike(words, takes);
        if (QFile::exists(at("again"))) {
            EXPECT_TRUE(sameBook(opened(at("again")), m_before));
        }
    }
}

TEST_F(Kill, LeavesAnOlderBookOldOrUpToDate)
{
    makeOldBook(at("old"));
    copyFolder(at("old"), at("book"));
    const QStringList words{QStringLiteral("open"), at("book")};
    const unsigned takes = m_worker.duration(words);
    const Book expected = opened(at("book"), false);
    ASSERT_GT(expected.children.size(), 400U);
    for (int i = 0; i < 40; ++i) {
        SCOPED_TRACE(i);
        copyFolder(at("old"), at("book"));
        strike(words, takes);
        EXPECT_TRUE(sameBook(opened(at("book"), false), expected));
    }
}

TEST_F(Kill, LeavesNothingHalfErased)
{
    again();
    const QStringList words{QStringLiteral("erase"), at("book")};
    const QString gone = m_before.pictures.rows().begin()->second.sha256;
    const unsigned takes = m_worker.duration(words);
    for (int i = 0; i < 40; ++i) {
        SCOPED_TRACE(i);
        again();
        strike(words, takes);
        const Book book = opened(at("book")); // finishes what was begun
        const bool erased = book.pictures.size() == 2;
        EXPECT_TRUE(erased || sameBook(book, m_before));
        EXPECT_EQ(
            QFile::exists(at("book/pictures/") + gone.left(2) + QLatin1Char('/') + gone), !erased);
        if (erased) {
            EXPECT_TRUE(QDir(at("book/earlier")).isEmpty());
        }
    }
}

} // namespace

} // namespace wainscot
