// The program is killed in the middle of a write.
#include "core/store/book_store.h"
#include "core/store/database.h"
#include "core/store/edit_writer.h"
#include "tests/support/book_equality.h"
#include "tests/support/database_problems.h"
#include "tests/support/random_edits.h"

#include <QFile>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <csignal>
#include <sys/wait.h>
#include <unistd.h>

namespace wainscot {

namespace {

// Runs `work` in a process of its own that ends at once when it returns, as if struck.
template <class Work> void inDyingProcess(Work work)
{
    const pid_t child = ::fork();
    if (child == 0) {
        work();
        ::_exit(7);
    }
    int status = 0;
    ::waitpid(child, &status, 0);
    ASSERT_TRUE(WIFEXITED(status));
    ASSERT_EQ(WEXITSTATUS(status), 7); // it died where it was meant to
}

Edit manyChildren(const Book& book)
{
    EditBuilder edit(book, QStringLiteral("Class list"));
    for (int i = 0; i < 400; ++i) {
        Child child;
        child.id = edit.newId<Child>();
        child.name = QStringLiteral("Child %1 ").arg(i).repeated(20);
        edit.put(child);
    }
    return edit.take();
}

class KilledWriter : public ::testing::Test {
protected:
    void SetUp() override
    {
        auto store = BookStore::create(folder(), {QStringLiteral("Robins"), {}});
        ASSERT_TRUE(store.ok());
        m_before = (*store)->book();
    }
    [[nodiscard]] QString folder() const { return m_place.filePath(QStringLiteral("book")); }
    [[nodiscard]] QString file() const { return folder() + QStringLiteral("/book.wainscot"); }

    // Dies with changed pages already in the file and the journal that takes them back beside it.
    void dieHalfWritten() const
    {
        inDyingProcess([&] {
            auto database = Database::open(file(), Database::Mode::ReadWrite);
            const bool spills = (*database)->run(QStringLiteral("PRAGMA cache_size = 1")).ok()
                && (*database)->run(QStringLiteral("PRAGMA cache_spill = 1")).ok()
                && (*database)->run(QStringLiteral("BEGIN IMMEDIATE")).ok();
            const bool written =
                writeEdit(**database, manyChildren(m_before), EditSide::After).ok();
            ::_exit(spills && written ? 7 : 1);
        });
        ASSERT_TRUE(QFile::exists(file() + QStringLiteral("-journal")));
    }

    QTemporaryDir m_place;
    Book m_before;
};

TEST_F(KilledWriter, IsTakenBackByTheNextWriter)
{
    dieHalfWritten();
    auto store = BookStore::open(folder());
    ASSERT_TRUE(store.ok()) << store.error().detail.toStdString();
    EXPECT_TRUE(sameBook((*store)->book(), m_before));
    EXPECT_TRUE((*store)->verify()->ok());
    EXPECT_FALSE(QFile::exists(file() + QStringLiteral("-journal")));
}

TEST_F(KilledWriter, IsTakenBackByTheNextReader)
{
    dieHalfWritten();
    auto store = BookStore::open(folder(), Access::ReadOnly);
    ASSERT_TRUE(store.ok()) << store.error().detail.toStdString();
    EXPECT_TRUE((*store)->isReadOnly());
    EXPECT_TRUE(sameBook((*store)->book(), m_before));
}

TEST_F(KilledWriter, LeavesNoLockBehind)
{
    inDyingProcess([&] {
        auto store = BookStore::open(folder());
        ::_exit(store.ok() ? 7 : 1); // without any farewell
    });
    ASSERT_TRUE(QFile::exists(folder() + QStringLiteral("/book.wainscot.lock")));
    EXPECT_TRUE(BookStore::open(folder()).ok());
}

TEST_F(KilledWriter, AtAnyMomentLosesNoEditThatWasDone)
{
    for (unsigned seed = 1; seed <= 20; ++seed) {
        SCOPED_TRACE(seed);
        int pipe[2] = {0, 0};
        ASSERT_EQ(::pipe(pipe), 0);
        const pid_t writer = ::fork();
        if (writer == 0) {
            auto store = BookStore::open(folder());
            if (!store.ok())
                ::_exit(1);
            RandomEdits edits(seed);
            while ((*store)->history().perform(edits.next((*store)->book())).ok()) {
                const char done = '.';
                if (::write(pipe[1], &done, 1) != 1)
                    ::_exit(2);
            }
            ::_exit(3);
        }
        // Counts a few finished edits and strikes while the next is on its way.
        ::close(pipe[1]);
        const int wanted = 1 + int(seed % 4);
        int done = 0;
        char dot = 0;
        while (done < wanted && ::read(pipe[0], &dot, 1) == 1)
            ++done;
        ::usleep(seed * 700);
        ASSERT_EQ(::kill(writer, SIGKILL), 0);
        ::waitpid(writer, nullptr, 0);
        while (::read(pipe[0], &dot, 1) == 1)
            ++done;
        ::close(pipe[0]);
        ASSERT_GE(done, wanted);

        // The same edits again, in memory: the file holds those done, or one more.
        RandomEdits again(seed);
        Book expected = m_before;
        for (int i = 0; i < done; ++i)
            apply(again.next(expected), expected);
        Book oneMore = expected;
        apply(again.next(oneMore), oneMore);
        auto store = BookStore::open(folder());
        ASSERT_TRUE(store.ok()) << store.error().detail.toStdString();
        EXPECT_TRUE(sameBook((*store)->book(), expected) || sameBook((*store)->book(), oneMore));
        EXPECT_EQ(databaseProblems(**store), QStringList());
        m_before = (*store)->book();
    }
}

} // namespace

} // namespace wainscot
