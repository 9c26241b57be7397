#include "core/permit/cleared.h"
#include "tests/support/class_book.h"

#include <gtest/gtest.h>

namespace wainscot {

namespace {

const Audience kHall = Audience::Building;

PermissionRules rulesFor(const ClassBook& made, DisplayId display)
{
    return PermissionRules(made.book, made.at(display), kTestDay);
}

TEST(Refusal, OfAQuoteNamesTheChildAndTheAudience)
{
    ClassBook made;
    const ChildId ines = made.child("Ines Moreau", {});
    const DisplayId hall = made.display(kHall);
    const QuoteId quote = made.quote(ines, QStringLiteral("cold"));
    EXPECT_EQ(rulesFor(made, hall).refusal(*made.book.quotes.find(quote)),
        QStringLiteral("Ines Moreau has no permission to be quoted in the building."));
}

TEST(Refusal, OfAPictureNamesTheFileAndEverybody)
{
    ClassBook made;
    const ChildId ines = made.child("Ines", {});
    const ChildId ada = made.child("Ada", only(kHall, {Permission::Photo}));
    const ChildId tomas = made.child("Tomas", {});
    const DisplayId hall = made.display(kHall);
    const PictureId photo =
        made.picture(PictureKind::Photo, {true, {ines, ada, tomas}}, "IMG_12.jpg");
    EXPECT_EQ(rulesFor(made, hall).refusal(*made.book.pictures.find(photo)),
        QStringLiteral(
            "IMG_12.jpg: Ines and Tomas have no permission to be seen in the building."));
}

TEST(Refusal, OfAPictureNobodyHasLookedAtHoldsForEveryAudience)
{
    ClassBook made;
    made.child("Ines", Permissions::all());
    const PictureId photo = made.picture(PictureKind::Photo, {}, "IMG_3.jpg");
    for (const Audience audience : kAudiences) {
        const DisplayId display = made.display(audience);
        EXPECT_EQ(rulesFor(made, display).refusal(*made.book.pictures.find(photo)),
            QStringLiteral("IMG_3.jpg: nobody has said yet who is in it."));
    }
}

TEST(Refusal, OfAPictureWithSomeoneUnknown)
{
    ClassBook made;
    const PictureId photo = made.picture(PictureKind::Photo, {true, {ChildId(9)}});
    const DisplayId hall = made.display(kHall);
    EXPECT_TRUE(rulesFor(made, hall).refusal(*made.book.pictures.find(photo)).has_value());
}

TEST(Naming, GivesWayToAPhotoOnAnotherPanelOfTheDisplay)
{
    ClassBook made;
    const ChildId ines =
        made.child("Ines", only(kHall, {Permission::Photo, Permission::FirstName}));
    const DisplayId hall = made.display(kHall);
    made.hang(hall, PieceKind::Title, QStringLiteral("Ice"));
    EXPECT_EQ(rulesFor(made, hall).shownName(made.at(ines)), QStringLiteral("Ines"));
    const Panel second{made.book.panels.newId(), hall, 2};
    made.book.panels.put(second);
    Piece piece;
    piece.id = made.book.pieces.newId();
    piece.panel = second.id;
    piece.kind = PieceKind::Photo;
    piece.picture = made.picture(PictureKind::Photo, {true, {ines}});
    made.book.pieces.put(piece);
    EXPECT_EQ(rulesFor(made, hall).shownName(made.at(ines)), QStringLiteral("a child"));
}

TEST(Naming, DoesNotGiveWayToAPhotoThatMayNotHang)
{
    ClassBook made;
    const ChildId ines =
        made.child("Ines", only(kHall, {Permission::Photo, Permission::FirstName}));
    const ChildId tomas = made.child("Tomas", {});
    const DisplayId hall = made.display(kHall);
    made.hang(hall, made.picture(PictureKind::Photo, {true, {ines, tomas}}));
    EXPECT_EQ(rulesFor(made, hall).shownName(made.at(ines)), QStringLiteral("Ines"));
}

TEST(Naming, OnAnEmptyDisplayReckonsWithEveryPhotoThatMayCome)
{
    ClassBook made;
    const ChildId ines =
        made.child("Ines", only(kHall, {Permission::Photo, Permission::FirstName}));
    const DisplayId hall = made.display(kHall);
    const PictureId photo = made.picture(PictureKind::Photo, {true, {ines}});
    EXPECT_EQ(rulesFor(made, hall).shownName(made.at(ines)), QStringLiteral("a child"));
    made.hang(hall, PieceKind::Title, QStringLiteral("Ice"));
    EXPECT_EQ(rulesFor(made, hall).shownName(made.at(ines)), QStringLiteral("Ines"));
    const PermissionRules reckoning(made.book, made.at(hall), kTestDay, {photo});
    EXPECT_EQ(reckoning.shownName(made.at(ines)), QStringLiteral("a child"));
}

TEST(Age, StandsInWholeYearsBesideAName)
{
    ClassBook made;
    const ChildId mei = made.child("Mei", only(kHall, {Permission::FirstName}), "2020-11-07");
    const ChildId ada = made.child("Ada", only(kHall, {Permission::FirstName}), "2020-11-08");
    const DisplayId hall = made.display(kHall);
    EXPECT_EQ(rulesFor(made, hall).shownName(made.at(mei)), QStringLiteral("Mei, 5"));
    EXPECT_EQ(rulesFor(made, hall).shownName(made.at(ada)), QStringLiteral("Ada, 4"));
}

TEST(Age, OfAChildNotNamedIsABandThatTwoShare)
{
    ClassBook made;
    const ChildId mei = made.child("Mei", {}, "2020-06");
    const DisplayId hall = made.display(kHall);
    EXPECT_EQ(rulesFor(made, hall).shownName(made.at(mei)), QStringLiteral("a child"));
    made.child("Ada", {}, "2021-06");
    EXPECT_EQ(rulesFor(made, hall).shownName(made.at(mei)), QStringLiteral("a child, 4 to 5"));
}

TEST(Age, IsABandOutsideTheBuildingForWhoIsSeenAndNamed)
{
    ClassBook made;
    const ChildId mei = made.child("Mei", Permissions::all(), "2020-06");
    made.child("Ada", {}, "2021-06");
    const DisplayId out = made.display(Audience::Public);
    made.hang(out, PieceKind::Title, QStringLiteral("Ice"));
    EXPECT_EQ(rulesFor(made, out).shownName(made.at(mei)), QStringLiteral("Mei, 5"));
    made.hang(out, made.picture(PictureKind::Photo, {true, {mei}}));
    EXPECT_EQ(rulesFor(made, out).shownName(made.at(mei)), QStringLiteral("Mei, 4 to 5"));
}

} // namespace

} // namespace wainscot
