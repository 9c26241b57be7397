// Going back to an earlier day gives the work back, and takes no protection from a child.
#include "app/jobs/go_back.h"
#include "tests/support/book_equality.h"
#include "tests/support/class_book.h"

#include <gtest/gtest.h>

namespace wainscot {
namespace {

class GoingBack : public ::testing::Test {
protected:
    GoingBack()
    {
        ada = m_then.child("Ada Marsh", Permissions::all());
        ben = m_then.child("Ben Oak", Permissions::all());
        said = m_then.quote(ada, QStringLiteral("it gos drip"));
        photo = m_then.picture(PictureKind::Photo, {true, {ada}});
        const DisplayId hall = m_then.display(Audience::Building);
        m_then.hang(hall, said);
        m_then.hang(hall, photo);
        m_now = m_then.book;
    }

    [[nodiscard]] Book back() const
    {
        Book book = m_now;
        const Edit edit = editBackTo(m_now, m_then.book, QStringLiteral("Go back"));
        EXPECT_TRUE(fits(edit, book));
        apply(edit, book);
        Book undone = book;
        revert(edit, undone);
        EXPECT_TRUE(sameBook(undone, m_now));
        return book;
    }

    ClassBook m_then;
    Book m_now;
    ChildId ada;
    ChildId ben;
    QuoteId said;
    PictureId photo;
};

TEST_F(GoingBack, GivesBackWhatWasThereAndTakesAwayWhatCameLater)
{
    m_now.pieces = {};
    m_now.panels = {};
    m_now.displays = {};
    m_now.info.title = QStringLiteral("Spoiled");
    Quote changed = *m_now.quotes.find(said);
    changed.words = QStringLiteral("overwritten");
    m_now.quotes.put(changed);
    Quote later = changed;
    later.id = m_now.quotes.newId();
    m_now.quotes.put(later);
    EXPECT_TRUE(sameBook(back(), m_then.book));
}

TEST_F(GoingBack, LeavesAWithdrawnPermissionWithdrawn)
{
    Child withdrawn = *m_now.children.find(ada);
    withdrawn.permissions = {};
    m_now.children.put(withdrawn);
    EXPECT_EQ(back().children.find(ada)->permissions, Permissions());
    EXPECT_EQ(back().children.find(ben)->permissions, Permissions::all());
}

TEST_F(GoingBack, KeepsWhatFamiliesHaveSaidSince)
{
    PermissionRecord old;
    old.id = m_then.book.permissionRecords.newId();
    old.child = ada;
    old.by = QStringLiteral("her mother");
    m_then.book.permissionRecords.put(old);
    PermissionRecord since = old;
    since.by = QStringLiteral("her father");
    m_now.permissionRecords.put(since);
    PermissionRecord more = since;
    more.id = m_now.permissionRecords.newId();
    more.answers[0] = FamilyAnswer::Withdrawn;
    m_now.permissionRecords.put(more);
    EXPECT_TRUE(back().permissionRecords.rows() == m_now.permissionRecords.rows());
    m_now.children.remove(ada);
    m_now.permissionRecords = {};
    m_now.quotes = {};
    m_now.pictures = {};
    m_now.pieces = {};
    EXPECT_TRUE(back().permissionRecords.rows() == m_then.book.permissionRecords.rows());
}

TEST_F(GoingBack, LeavesWhoIsInAPictureAndWhatOfItIsCovered)
{
    Picture seen = *m_now.pictures.find(photo);
    seen.people.children = {ada, ben};
    seen.caption = QStringLiteral("At the sill.");
    seen.treatment.covered.push_back({});
    m_now.pictures.put(seen);
    const Picture after = *back().pictures.find(photo);
    EXPECT_EQ(after.people, seen.people);
    EXPECT_EQ(after.treatment, seen.treatment);
    EXPECT_EQ(after.caption, m_then.book.pictures.find(photo)->caption);
}

TEST_F(GoingBack, KeepsAChildWhoCameLaterAndIsSeenInAnEarlierPicture)
{
    Child cem;
    cem.id = m_now.children.newId();
    m_now.children.put(cem);
    Child dot;
    dot.id = m_now.children.newId();
    m_now.children.put(dot);
    Picture seen = *m_now.pictures.find(photo);
    seen.people.children = {cem.id};
    m_now.pictures.put(seen);
    EXPECT_TRUE(back().children.contains(cem.id));
    EXPECT_FALSE(back().children.contains(dot.id));
}

} // namespace
} // namespace wainscot
