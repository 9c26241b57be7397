#include "core/edit/edit.h"

#include <gtest/gtest.h>

namespace wainscot {

namespace {

class Building : public ::testing::Test {
protected:
    Building()
    {
        m_mei.id = m_book.children.newId();
        m_mei.name = QStringLiteral("Mei");
        m_book.children.put(m_mei);
    }
    [[nodiscard]] EditBuilder edit() const { return EditBuilder(m_book, QStringLiteral("Step")); }

    Book m_book;
    Child m_mei;
};

TEST_F(Building, DoesNotTouchTheBook)
{
    EditBuilder building = edit();
    building.remove<Child>(m_mei.id);
    EXPECT_FALSE(building.take().isEmpty());
    EXPECT_TRUE(m_book.children.contains(m_mei.id));
}

TEST_F(Building, LeavesOutWhatChangesNothing)
{
    EditBuilder building = edit();
    building.put(m_mei);
    building.setInfo(m_book.info);
    building.remove<Quote>(QuoteId(5)); // was never there
    EXPECT_TRUE(building.take().isEmpty());
}

TEST_F(Building, KeepsTheFirstBeforeAndTheLastAfter)
{
    EditBuilder building = edit();
    Child renamed = m_mei;
    renamed.name = QStringLiteral("Mai");
    building.put(renamed);
    renamed.name = QStringLiteral("May");
    building.put(renamed);
    const Edit done = building.take();
    ASSERT_EQ(done.changes.size(), 1U);
    const auto& change = std::get<ValueChange<Child>>(done.changes.front());
    EXPECT_EQ(change.before->name, QStringLiteral("Mei"));
    EXPECT_EQ(change.after->name, QStringLiteral("May"));
}

TEST_F(Building, ForgetsWhatWasAddedAndRemovedAgain)
{
    EditBuilder building = edit();
    Child ada;
    ada.id = building.newId<Child>();
    building.put(ada);
    building.remove<Child>(ada.id);
    EXPECT_TRUE(building.take().isEmpty());
}

TEST_F(Building, GivesEachNewThingItsOwnNumber)
{
    EditBuilder building = edit();
    const ChildId first = building.newId<Child>();
    EXPECT_GT(first, m_mei.id);
    EXPECT_GT(building.newId<Child>(), first);
    EXPECT_EQ(building.newId<Quote>(), QuoteId(1)); // kinds count apart
    Child far;
    far.id = ChildId(50);
    building.put(far);
    EXPECT_EQ(building.newId<Child>(), ChildId(51));
}

TEST_F(Building, AnEditAppliedAndRevertedLeavesTheBookAsItWas)
{
    EditBuilder building = edit();
    Child renamed = m_mei;
    renamed.name = QStringLiteral("Mai");
    building.put(renamed);
    Child ada;
    ada.id = building.newId<Child>();
    building.put(ada);
    building.setInfo({QStringLiteral("New title"), QStringLiteral("de")});
    const Edit done = building.take();
    const Book before = m_book;
    ASSERT_TRUE(fits(done, m_book));
    apply(done, m_book);
    EXPECT_EQ(m_book.info.title, QStringLiteral("New title"));
    EXPECT_EQ(m_book.children.find(m_mei.id)->name, QStringLiteral("Mai"));
    EXPECT_EQ(m_book.children.size(), 2U);
    EXPECT_FALSE(fits(done, m_book));
    revert(done, m_book);
    EXPECT_EQ(m_book.info, before.info);
    EXPECT_EQ(m_book.children.rows(), before.children.rows());
}

} // namespace

} // namespace wainscot
