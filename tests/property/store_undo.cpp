// Undo and redo lead back to exactly the same book, in memory and on disk.
#include "core/store/book_store.h"
#include "tests/support/book_equality.h"
#include "tests/support/random_edits.h"

#include <QDir>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace wainscot {

namespace {

// Keeps nothing: for the sequences that only look at memory.
class Nowhere final : public EditSink {
public:
    Result<> save(const Edit& /*edit*/) override { return Done{}; }
    Result<> saveReverted(const Edit& /*edit*/) override { return Done{}; }
};

// Hundreds of books are quicker where nothing has to reach a real disk.
QString memoryDisk()
{
    const QString memory = QStringLiteral("/dev/shm");
    return (QDir(memory).exists() ? memory : QDir::tempPath()) + QStringLiteral("/book-XXXXXX");
}

void undoAll(History& history)
{
    while (history.canUndo())
        ASSERT_TRUE(history.undo().ok());
}

void redoAll(History& history)
{
    while (history.canRedo())
        ASSERT_TRUE(history.redo().ok());
}

TEST(UndoInMemory, LeadsBackToTheStartAndRedoToTheEnd)
{
    for (unsigned seed = 1; seed <= 500; ++seed) {
        SCOPED_TRACE(seed);
        Nowhere sink;
        Book book;
        History history(book, sink);
        RandomEdits edits(seed);
        const Book start = book;
        for (int i = 0; i < 12; ++i) {
            ASSERT_TRUE(history.perform(edits.next(book)).ok());
            const bool back = edits.number(0, 4) == 0;
            ASSERT_TRUE(!back || history.undo().ok());
        }
        redoAll(history);
        const Book end = book;
        ASSERT_FALSE(sameBook(end, start));
        undoAll(history);
        ASSERT_TRUE(sameBook(book, start));
        redoAll(history);
        ASSERT_TRUE(sameBook(book, end));
    }
}

TEST(UndoOnDisk, IsTheSameAfterReopening)
{
    for (unsigned seed = 1; seed <= 500; ++seed) {
        SCOPED_TRACE(seed);
        const QTemporaryDir place(memoryDisk());
        const QString folder = place.filePath(QStringLiteral("book"));
        Book start;
        Book end;
        RandomEdits edits(seed);
        {
            auto store = BookStore::create(folder, {QStringLiteral("Tide pool"), {}});
            ASSERT_TRUE(store.ok()) << store.error().detail.toStdString();
            start = (*store)->book();
            for (int i = 0; i < 4; ++i) {
                const auto done = (*store)->history().perform(edits.next((*store)->book()));
                ASSERT_TRUE(done.ok()) << done.error().detail.toStdString();
            }
            end = (*store)->book();
        }
        {
            auto store = BookStore::open(folder, Access::ReadOnly);
            ASSERT_TRUE(store.ok()) << store.error().detail.toStdString();
            ASSERT_TRUE(sameBook((*store)->book(), end));
        }
        auto store = BookStore::open(folder);
        ASSERT_TRUE(store.ok());
        const Book before = (*store)->book();
        for (int i = 0; i < 3; ++i)
            ASSERT_TRUE((*store)->history().perform(edits.next((*store)->book())).ok());
        undoAll((*store)->history());
        ASSERT_TRUE(sameBook((*store)->book(), before));
        store = BookStore::open(folder, Access::ReadOnly);
        ASSERT_TRUE(store.ok());
        ASSERT_TRUE(sameBook((*store)->book(), before));
    }
}

} // namespace

} // namespace wainscot
