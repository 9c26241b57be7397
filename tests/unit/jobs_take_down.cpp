// A withdrawn permission shows at once what is on which wall.
#include "app/jobs/take_down.h"
#include "tests/support/class_book.h"

#include <gmock/gmock.h>

namespace wainscot {
namespace {

class TakenDown : public ::testing::Test {
protected:
    TakenDown()
    {
        ada = m_class.child("Ada Marsh", Permissions::all());
        ben = m_class.child("Ben Oak", Permissions::all());
        said = m_class.quote(ada, QStringLiteral("it gos drip"));
        photo = m_class.picture(PictureKind::Photo, {true, {ada, ben}});
        for (const Audience audience : {Audience::Classroom, Audience::Public}) {
            const DisplayId id = m_class.display(audience);
            Display named = m_class.at(id);
            named.name = nameOf(audience);
            m_class.book.displays.put(named);
            m_class.hang(id, said);
            m_class.hang(id, photo);
        }
    }

    void withdraw(ChildId who, Permission what, Audience audience)
    {
        Child child = m_class.at(who);
        child.permissions.set(what, audience, false);
        m_class.book.children.put(child);
    }

    [[nodiscard]] QStringList list(const QString& child = {}) const
    {
        const auto all = TakeDownJob{child}.run(m_class.book, {});
        EXPECT_TRUE(all.ok());
        QStringList lines;
        for (const TakeDown& one : *all) {
            EXPECT_TRUE(one.why.endsWith(QLatin1Char('.')));
            lines << one.display + QLatin1Char(' ') + one.what;
        }
        return lines;
    }

    ClassBook m_class;
    ChildId ada;
    ChildId ben;
    QuoteId said;
    PictureId photo;
};

TEST_F(TakenDown, IsNothingWhileAllIsAllowed)
{
    EXPECT_EQ(list(), QStringList());
}

TEST_F(TakenDown, IsAPhotoOnTheWallsOfOneAudience)
{
    withdraw(ben, Permission::Photo, Audience::Public);
    EXPECT_EQ(list(), QStringList{QStringLiteral("public photo")});
    EXPECT_EQ(list(QStringLiteral("ben oak")), QStringList{QStringLiteral("public photo")});
    EXPECT_EQ(list(QStringLiteral("Ada Marsh")), QStringList{QStringLiteral("public photo")});
}

TEST_F(TakenDown, AreWordsAndANameOfTheChildWhoSaidThem)
{
    withdraw(ada, Permission::Words, Audience::Classroom);
    withdraw(ada, Permission::FirstName, Audience::Public);
    EXPECT_EQ(
        list(), QStringList({QStringLiteral("classroom quote"), QStringLiteral("public name")}));
    EXPECT_EQ(list(QStringLiteral("Ben Oak")), QStringList());
}

TEST_F(TakenDown, IsAPhotoOfTheWallTheyAreOn)
{
    const PictureId id = m_class.picture(PictureKind::Photo, {true, {}}, "wall.jpg");
    Picture wall = *m_class.book.pictures.find(id);
    wall.display = displayByName(m_class.book, QStringLiteral("public"))->id;
    m_class.book.pictures.put(wall);
    EXPECT_EQ(list(), QStringList());
    withdraw(ada, Permission::Words, Audience::Public);
    const auto all = TakeDownJob{QStringLiteral("Ada Marsh")}.run(m_class.book, {});
    ASSERT_TRUE(all.ok());
    ASSERT_EQ(all->size(), 2U);
    EXPECT_EQ(all->front().what, QStringLiteral("quote"));
    EXPECT_EQ(all->back().what, QStringLiteral("photo"));
    EXPECT_EQ(all->back().panel, 0) << "it stands on no panel";
    EXPECT_TRUE(all->back().why.startsWith(QStringLiteral("wall.jpg")));
}

TEST_F(TakenDown, IsAskedForSomebodyWhoIsThere)
{
    EXPECT_EQ(TakeDownJob{QStringLiteral("Nobody")}.run(m_class.book, {}).error().code,
        ErrorCode::NotFound);
}

} // namespace
} // namespace wainscot
