// Turning and treating pictures: what is marked in them and what shows them follows.
#include "app/ui/session/picture_edits.h"

#include <gtest/gtest.h>

#include "tests/support/class_book.h"

namespace wainscot::ui {
namespace {

constexpr Corners kPage{{{0.1, 0.05}, {0.9, 0.12}, {0.95, 0.9}, {0.05, 0.85}}};

Picture marked()
{
    Picture picture;
    picture.size = {4000, 3000};
    picture.mustStay = RectFraction{0.2, 0.3, 0.4, 0.25};
    picture.treatment.covered = {{{0.5, 0.5, 0.1, 0.2}, Cover::Blur}};
    return picture;
}

void expectNear(const RectFraction& a, const RectFraction& b, double within)
{
    EXPECT_NEAR(a.x, b.x, within);
    EXPECT_NEAR(a.y, b.y, within);
    EXPECT_NEAR(a.width, b.width, within);
    EXPECT_NEAR(a.height, b.height, within);
}

Treatment straight(const Picture& picture, const Corners& corners)
{
    Treatment treatment = picture.treatment;
    treatment.straightening = Straightening{corners, uprightSize(picture)};
    return treatment;
}

TEST(PictureEdits, FourQuarterTurnsAreNone)
{
    Picture turned = treatedAs(marked(), straight(marked(), kPage));
    const Picture before = turned;
    for (int i = 0; i < 4; ++i)
        turned = quarterTurned(turned);
    EXPECT_EQ(turned.orientation, before.orientation);
    EXPECT_EQ(turned.size, before.size);
    expectNear(*turned.mustStay, *before.mustStay, 1e-9);
}

// Turned and then straightened is straightened and then turned.
TEST(PictureEdits, TurningAndStraighteningCommute)
{
    const Picture picture = marked();
    const Picture one = quarterTurned(treatedAs(picture, straight(picture, kPage)));
    const Picture turned = quarterTurned(picture);
    Corners corners;
    for (std::size_t i = 0; i < 4; ++i)
        corners.at(i) = wainscot::quarterTurned(kPage.at((i + 3) % 4));
    const Picture other = treatedAs(turned, straight(turned, corners));
    EXPECT_EQ(one.size, other.size);
    EXPECT_EQ(one.treatment, other.treatment);
    expectNear(*one.mustStay, *other.mustStay, 1e-9);
}

TEST(PictureEdits, WhatMustStayIsFoundAgainWhenThePageLiesAsBefore)
{
    const Picture picture = marked();
    const Picture page = treatedAs(picture, straight(picture, kPage));
    EXPECT_NE(page.size, picture.size);
    Treatment without = page.treatment;
    without.straightening.reset();
    const Picture back = treatedAs(page, without);
    EXPECT_EQ(back.size, picture.size);
    // The rectangle round a leaning one, twice: larger, never smaller.
    EXPECT_LE(back.mustStay->x, picture.mustStay->x + 1e-9);
    EXPECT_LE(back.mustStay->y, picture.mustStay->y + 1e-9);
    expectNear(*back.mustStay, *picture.mustStay, 0.12);
}

TEST(PictureEdits, EveryPieceOnEveryDisplayFollows)
{
    ClassBook at;
    const PictureId id = at.picture(PictureKind::Work, {true, {}});
    std::vector<PieceId> works;
    for (const Audience audience : {Audience::Classroom, Audience::Building}) {
        works.push_back(at.hang(at.display(audience), id));
        Piece work = *at.book.pieces.find(works.back());
        work.kind = PieceKind::Work;
        work.cell = {Mm(100), Mm(50), Mm(220), Mm(200)};
        work.picturePlace = {Mm(110), Mm(60), Mm(200), Mm(150)};
        at.book.pieces.put(work);
    }
    const PieceId photo = at.hang(at.display(Audience::Public), id);
    Piece shown = *at.book.pieces.find(photo);
    shown.framing = {{0.25, 0.6}, 2};
    at.book.pieces.put(shown);

    Book book = at.book;
    const Picture turned = quarterTurned(*book.pictures.find(id));
    apply(changePicture(book, turned, QStringLiteral("Turned")), book);
    EXPECT_EQ(book.pictures.find(id)->orientation, 6);
    for (const PieceId work : works) {
        const RectMm place = book.pieces.find(work)->picturePlace;
        EXPECT_NEAR(place.width / place.height, 0.75, 1e-9);
        EXPECT_NEAR(place.bottom().value(), 210, 1e-9); // on its line
        EXPECT_GE(place.y.value(), 60 - 1e-9); // and on its mat
    }
    EXPECT_EQ(book.pieces.find(photo)->framing.focus, (PointFraction{0.4, 0.25}));
    EXPECT_EQ(book.pieces.find(photo)->framing.zoom, 2);
}

} // namespace
} // namespace wainscot::ui
