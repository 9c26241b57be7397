// The disk fills up at every possible moment of an edit.
#include "core/store/book_store.h"
#include "tests/support/book_equality.h"
#include "tests/support/database_problems.h"
#include "tests/support/random_edits.h"

#include <QFile>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace wainscot {

namespace {

constexpr qint64 kPage = 4096; // SQLite's default page

// A class's worth of words, several pages long.
Edit manyQuotes(const Book& book)
{
    EditBuilder edit(book, QStringLiteral("Gather words"));
    Experience experience;
    experience.id = edit.newId<Experience>();
    edit.put(experience);
    Child child;
    child.id = edit.newId<Child>();
    edit.put(child);
    for (int i = 0; i < 60; ++i) {
        Quote quote;
        quote.id = edit.newId<Quote>();
        quote.experience = experience.id;
        quote.child = child.id;
        quote.words = QStringLiteral("the ice gos crak ").repeated(20) + QString::number(i);
        edit.put(quote);
    }
    return edit.take();
}

struct Disk {
    QTemporaryDir place;
    QString folder = place.filePath(QStringLiteral("book"));
    [[nodiscard]] qint64 used() const
    {
        return QFile(folder + QStringLiteral("/book.wainscot")).size();
    }
};

// Gives one page more at a time until the step goes through; answers how often it failed.
template <class Step, class Check>
int fillUntilDone(BookStore& store, qint64 from, Step step, Check unchanged)
{
    for (int failures = 0; failures < 500; ++failures) {
        EXPECT_TRUE(store.limitSize(from + failures * kPage).ok());
        const Result<> done = step();
        if (done.ok())
            return failures;
        EXPECT_EQ(done.error().code, ErrorCode::CannotWrite);
        unchanged();
    }
    ADD_FAILURE() << "it never went through";
    return -1;
}

TEST(FullDisk, LeavesTheBookAsItWasAtEveryPage)
{
    const Disk disk;
    auto store = BookStore::create(disk.folder, {QStringLiteral("Robins"), {}});
    ASSERT_TRUE(store.ok());
    const Book before = (*store)->book();
    const Edit edit = manyQuotes(before);
    const auto unchanged = [&] {
        EXPECT_TRUE(sameBook((*store)->book(), before));
        EXPECT_FALSE((*store)->history().canUndo());
        EXPECT_TRUE((*store)->verify()->ok());
        auto reader = BookStore::open(disk.folder, Access::ReadOnly);
        ASSERT_TRUE(reader.ok());
        EXPECT_TRUE(sameBook((*reader)->book(), before));
    };
    const int failures = fillUntilDone(
        **store, disk.used(), [&] { return (*store)->history().perform(edit); }, unchanged);
    EXPECT_GT(failures, 5); // it did take several pages
    Book after = before;
    apply(edit, after);
    store = BookStore::open(disk.folder, Access::ReadOnly);
    ASSERT_TRUE(store.ok());
    EXPECT_TRUE(sameBook((*store)->book(), after));
}

TEST(FullDisk, LeavesAnUndoneRemovalUndoneOnly)
{
    const Disk disk;
    auto store = BookStore::create(disk.folder, {QStringLiteral("Robins"), {}});
    ASSERT_TRUE(store.ok());
    ASSERT_TRUE((*store)->history().perform(manyQuotes((*store)->book())).ok());
    const Book full = (*store)->book();
    ASSERT_TRUE((*store)->history().undo().ok());
    const Book empty = (*store)->book();
    // Freed pages are used again, so the redo goes through without room to grow.
    ASSERT_TRUE((*store)->limitSize(disk.used()).ok());
    ASSERT_TRUE((*store)->history().redo().ok());
    EXPECT_TRUE(sameBook((*store)->book(), full));
    ASSERT_TRUE((*store)->history().undo().ok());
    EXPECT_TRUE(sameBook((*store)->book(), empty));
}

TEST(FullDisk, LeavesRandomEditsWholeOrUndone)
{
    for (unsigned seed = 1; seed <= 3; ++seed) {
        SCOPED_TRACE(seed);
        const Disk disk;
        auto store = BookStore::create(disk.folder, {QStringLiteral("Robins"), {}});
        ASSERT_TRUE(store.ok());
        RandomEdits edits(seed);
        int refused = 0;
        for (int i = 0; i < 200; ++i) {
            ASSERT_TRUE((*store)->limitSize(disk.used()).ok()); // no page more
            const Book before = (*store)->book();
            if (!(*store)->history().perform(edits.next(before)).ok()) {
                ++refused;
                ASSERT_TRUE(sameBook((*store)->book(), before));
            }
        }
        EXPECT_GT(refused, 0);
        auto reader = BookStore::open(disk.folder, Access::ReadOnly);
        ASSERT_TRUE(reader.ok());
        EXPECT_TRUE(sameBook((*reader)->book(), (*store)->book()));
        EXPECT_EQ(databaseProblems(**reader), QStringList());
    }
}

} // namespace

} // namespace wainscot
