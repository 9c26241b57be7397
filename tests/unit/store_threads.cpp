// One book from several threads, as the window and its work use it: edits go on while files made
// are remembered and the book is read. Also run under the thread sanitizer (.ci/races).
#include "core/store/book_store.h"
#include "core/store/made_files.h"

#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <atomic>
#include <thread>

namespace wainscot {
namespace {

constexpr int kEdits = 30;
constexpr int kFiles = 15; // of each of two threads

class InThreads : public ::testing::Test {
protected:
    void SetUp() override
    {
        ASSERT_TRUE(BookStore::create(m_folder, {QStringLiteral("Robins"), {}}).ok());
    }

    // A database belongs to the thread that opened it.
    void edit()
    {
        auto store = BookStore::open(m_folder);
        ASSERT_TRUE(store.ok()) << store.error().detail.toStdString();
        for (int i = 0; i < kEdits; ++i) {
            EditBuilder edit((*store)->book(), QStringLiteral("Add"));
            Child child;
            child.id = edit.newId<Child>();
            child.name = QStringLiteral("Child %1").arg(i);
            edit.put(child);
            ASSERT_TRUE((*store)->history().perform(edit.take()).ok());
        }
        ASSERT_TRUE((*store)->verify().ok());
    }

    void remember(const QString& whose) const
    {
        for (int i = 0; i < kFiles; ++i) {
            MadeFile made;
            made.kind = MadeFileKind::PackedBook;
            made.name = QStringLiteral("%1 %2.zip").arg(whose).arg(i);
            made.on = QDate(2026, 12, 18);
            EXPECT_TRUE(rememberMadeFile(m_folder, made).ok());
            EXPECT_TRUE(madeFilesOf(m_folder).ok());
        }
    }

    // What is read is what stood there after some edit, never less than before.
    void read(const std::atomic<bool>& over) const
    {
        std::size_t most = 0;
        do {
            const auto store = BookStore::open(m_folder, Access::ReadOnly);
            ASSERT_TRUE(store.ok()) << store.error().detail.toStdString();
            EXPECT_GE((*store)->book().children.size(), most);
            most = (*store)->book().children.size();
        } while (!over);
    }

    QTemporaryDir m_place;
    QString m_folder = m_place.filePath(QStringLiteral("book"));
};

TEST_F(InThreads, NothingIsLostAndWhatIsReadIsWhole)
{
    std::atomic<bool> over = false;
    std::thread reader([&] { read(over); });
    std::thread one([&] { remember(QStringLiteral("one")); });
    std::thread other([&] { remember(QStringLiteral("other")); });
    std::thread editor([&] { edit(); });
    for (std::thread* thread : {&editor, &one, &other})
        thread->join();
    over = true;
    reader.join();
    const auto store = BookStore::open(m_folder);
    ASSERT_TRUE(store.ok());
    EXPECT_EQ((*store)->book().children.size(), std::size_t(kEdits));
    EXPECT_EQ(madeFilesOf(m_folder)->size(), std::size_t(2 * kFiles));
    EXPECT_TRUE((*store)->verify()->ok());
}

} // namespace
} // namespace wainscot
