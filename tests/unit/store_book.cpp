#include "core/store/book_store.h"
#include "tests/support/book_equality.h"

#include <QDir>
#include <QFile>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace wainscot {

namespace {

class StoredBook : public ::testing::Test {
protected:
    std::unique_ptr<BookStore> made()
    {
        auto store = BookStore::create(folder(), {QStringLiteral("Robins"), QStringLiteral("en")});
        EXPECT_TRUE(store.ok());
        return store.ok() ? std::move(*store) : nullptr;
    }
    std::unique_ptr<BookStore> reopened()
    {
        auto store = BookStore::open(folder());
        EXPECT_TRUE(store.ok()) << store.error().detail.toStdString();
        return store.ok() ? std::move(*store) : nullptr;
    }
    [[nodiscard]] QString folder() const { return m_place.filePath(QStringLiteral("book")); }

    static ChildId addChild(BookStore& store, const QString& name)
    {
        EditBuilder edit(store.book(), QStringLiteral("New child"));
        Child child;
        child.id = edit.newId<Child>();
        child.name = name;
        edit.put(child);
        EXPECT_TRUE(store.history().perform(edit.take()).ok());
        return child.id;
    }

    QTemporaryDir m_place;
};

TEST_F(StoredBook, StartsWithTheDefaultPromptsAndItsTitle)
{
    const auto store = made();
    EXPECT_EQ(store->book().info.title, QStringLiteral("Robins"));
    ASSERT_EQ(store->book().promptSets.size(), 1U);
    EXPECT_EQ(store->book().promptSets.rows().begin()->second.prompts, defaultPromptSet().prompts);
    EXPECT_TRUE(QFile::exists(folder() + QStringLiteral("/book.wainscot")));
    EXPECT_TRUE(QDir(store->picturesFolder()).exists());
}

TEST_F(StoredBook, OpensByItsFolderAndByItsFile)
{
    made();
    EXPECT_TRUE(BookStore::open(folder()).ok());
    EXPECT_TRUE(BookStore::open(folder() + QStringLiteral("/book.wainscot")).ok());
}

TEST_F(StoredBook, KeepsAnEditWithoutBeingTold)
{
    addChild(*made(), QStringLiteral("Zoë \u5c0f\u96e8"));
    const auto store = reopened();
    ASSERT_EQ(store->book().children.size(), 1U);
    EXPECT_EQ(
        store->book().children.rows().begin()->second.name, QStringLiteral("Zoë \u5c0f\u96e8"));
}

TEST_F(StoredBook, NeverHandsOutANumberTwice)
{
    ChildId gone;
    {
        const auto store = made();
        addChild(*store, QStringLiteral("Ada"));
        gone = addChild(*store, QStringLiteral("Ben"));
        EditBuilder edit(store->book(), QStringLiteral("Remove"));
        edit.remove<Child>(gone);
        ASSERT_TRUE(store->history().perform(edit.take()).ok());
    }
    const auto store = reopened();
    EXPECT_GT(addChild(*store, QStringLiteral("Cem")), gone);
}

TEST_F(StoredBook, RefusesAnEditThatPointsAtNothingAndStaysAsItWas)
{
    const auto store = made();
    const Book before = store->book();
    EditBuilder edit(store->book(), QStringLiteral("New quote"));
    Quote quote;
    quote.id = edit.newId<Quote>();
    quote.experience = ExperienceId(99);
    quote.child = ChildId(99);
    edit.put(quote);
    const auto done = store->history().perform(edit.take());
    ASSERT_FALSE(done.ok());
    EXPECT_EQ(done.error().code, ErrorCode::WrongUse);
    EXPECT_TRUE(sameBook(store->book(), before));
    EXPECT_FALSE(store->history().canUndo());
    addChild(*store, QStringLiteral("Ada")); // the connection is still of use
}

TEST_F(StoredBook, RemovesWhatBelongsTogetherInAnyOrder)
{
    const auto store = made();
    EditBuilder adding(store->book(), QStringLiteral("New display"));
    Display display;
    display.id = adding.newId<Display>();
    const Panel panel{adding.newId<Panel>(), display.id, 1};
    adding.put(panel); // before what it points at
    adding.put(display);
    ASSERT_TRUE(store->history().perform(adding.take()).ok());
    EditBuilder removing(store->book(), QStringLiteral("Remove display"));
    removing.remove<Display>(display.id);
    removing.remove<Panel>(panel.id);
    ASSERT_TRUE(store->history().perform(removing.take()).ok());
    ASSERT_TRUE(store->history().undo().ok());
    EXPECT_TRUE(store->book().panels.contains(panel.id));
}

TEST_F(StoredBook, IsNotMadeOverOtherFiles)
{
    ASSERT_TRUE(QDir().mkpath(folder()));
    QFile other(folder() + QStringLiteral("/notes.txt"));
    ASSERT_TRUE(other.open(QIODevice::WriteOnly));
    other.write("keep me");
    other.close();
    const auto store = BookStore::create(folder(), {QStringLiteral("Robins"), {}});
    ASSERT_FALSE(store.ok());
    EXPECT_EQ(store.error().code, ErrorCode::WrongUse);
    EXPECT_EQ(QDir(folder()).entryList(QDir::AllEntries | QDir::NoDotAndDotDot).size(), 1);
}

} // namespace

} // namespace wainscot
