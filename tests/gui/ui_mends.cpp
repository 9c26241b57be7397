// Every finding that the program can mend is mended by one press, which is one step of undo.
#include <QApplication>
#include <QLineEdit>

#include <functional>

#include <gmock/gmock.h>

#include "app/ui/session/piece_edits.h"
#include "support/window_at_work.h"

namespace wainscot::ui {
namespace {

class Mends : public ::testing::Test {
protected:
    Mends() { at.propose(); }

    Desk& desk() { return at.compose().desk(); }
    void put(const Piece& piece)
    {
        ASSERT_TRUE(
            at.session().perform(replacePiece(at.book(), piece, QStringLiteral("made worse"))));
    }
    Piece copyOf(PieceKind kind) { return at.piece(at.first(kind)); }
    // The findings of the panel as it is now. The check runs when the hand has rested.
    const std::vector<Finding>& found()
    {
        bool fresh = false;
        const auto stop = QObject::connect(&desk(), &Desk::drawnAgain, [&fresh] { fresh = true; });
        EXPECT_TRUE(QTest::qWaitFor([&fresh] { return fresh; }, 20000));
        QObject::disconnect(stop);
        at.settle();
        return desk().findings();
    }
    const Finding* find(const std::vector<Finding>& all, const QString& rule, PieceId piece)
    {
        for (const Finding& one : all) {
            if (one.rule == rule && (!piece.isValid() || one.piece == piece.number()))
                return &one;
        }
        return nullptr;
    }
    // Presses the button of Hang's Check and looks whether the finding has gone.
    void expectMended(const char* rule, PieceId piece, const QString& step)
    {
        const QString name = QString::fromLatin1(rule);
        const Finding* known = find(found(), name, piece);
        ASSERT_NE(known, nullptr) << rule << " was not found";
        const Finding finding = *known;
        const std::size_t steps = at.session().stepsDone().size();
        const auto before = at.book().pieces.rows();
        at.window().go(Place::Hang);
        at.window().hang().setTask(HangPlace::Task::Check);
        at.settle();
        Button* button = nullptr;
        for (Button* one : at.window().hang().check().findChildren<Button*>()) {
            if (one->accessibleName()
                == QStringLiteral("%1: %2").arg(desk().mendOf(finding).does, finding.says))
                button = one;
        }
        ASSERT_NE(button, nullptr) << "no button for " << rule;
        QTest::mouseClick(button, Qt::LeftButton);
        at.settle();
        const Finding* left = find(found(), name, PieceId(finding.piece));
        EXPECT_TRUE(left == nullptr || left->child != finding.child) << left->says.toStdString();
        EXPECT_EQ(at.session().stepsDone().size(), steps + 1) << "one step of undo";
        EXPECT_EQ(at.session().undoLabel(), step);
        ASSERT_TRUE(at.session().undo());
        EXPECT_EQ(at.book().pieces.rows(), before);
    }

    WindowAtWork at;
};

TEST_F(Mends, WhatGoesOverTheEdgeComesBackOntoThePaper)
{
    Piece quote = copyOf(PieceKind::Quote);
    quote.cell.x = Mm(-30);
    put(quote);
    expectMended("place.outside", quote.id, QStringLiteral("Move it onto the paper"));
}

TEST_F(Mends, TextAtTheTrimMovesAwayFromIt)
{
    Piece title = copyOf(PieceKind::Title);
    title.cell.x = Mm(2);
    put(title);
    expectMended("place.edge", title.id, QStringLiteral("Move it away from the edge"));
}

TEST_F(Mends, APieceOffTheGridGoesOntoIt)
{
    Piece credits = copyOf(PieceKind::Quote);
    credits.cell.y += Mm(4);
    put(credits);
    expectMended("place.grid", credits.id, QStringLiteral("Put it on the grid"));
}

TEST_F(Mends, WordsThatRunOutOfTheirPlaceGetRoom)
{
    Piece quote = copyOf(PieceKind::Quote);
    quote.cell.height = Mm(4);
    put(quote);
    expectMended("place.past_cell", quote.id, QStringLiteral("Give its words room"));
}

TEST_F(Mends, WhatFollowsTheTitleTooCloselyMovesDown)
{
    Piece title = copyOf(PieceKind::Title);
    Piece quote = copyOf(PieceKind::Quote);
    quote.cell.x = title.cell.x;
    quote.cell.y = title.cell.bottom() - Mm(2);
    put(quote);
    expectMended("entry.clear", quote.id, QStringLiteral("Move it down from the title"));
}

TEST_F(Mends, APictureIsMadeAsSmallAsItsPixelsAllow)
{
    Piece photo = copyOf(PieceKind::Photo);
    const Grid& grid = desk().drawnPanel()->style.grid;
    photo.framing.zoom = 3.5;
    photo = desk().placedAt(photo, grid.cell(0, 2, 6, grid.rows / 2));
    put(photo);
    expectMended("picture.sharpness", photo.id, QStringLiteral("Smaller, so it is sharp"));
}

TEST_F(Mends, TheMarkedPartIsShownAgain)
{
    Piece photo = copyOf(PieceKind::Photo);
    desk().markMustStay(photo.picture, RectFraction{0.1, 0.3, 0.3, 0.3}, 0);
    photo = at.piece(photo.id);
    photo.framing = {{0.9, 0.9}, 2};
    put(photo);
    expectMended("picture.must_stay", photo.id, QStringLiteral("Show the marked part"));
}

TEST_F(Mends, WhatLiesOverAnotherPinnedPieceMakesRoom)
{
    const std::vector<PieceId> quotes = at.all(PieceKind::Quote);
    ASSERT_GE(quotes.size(), 2U);
    Piece under = at.piece(quotes[0]);
    under.pinned = true;
    Piece over = at.piece(quotes[1]);
    over.cell = under.cell;
    over.pinned = true;
    put(under);
    put(over);
    expectMended("place.overlap", {}, QStringLiteral("Make room for it"));
}

TEST_F(Mends, TitleCreditsAndDayComeBack)
{
    desk().takeOff({at.first(PieceKind::Title)});
    expectMended("entry.missing", {}, QStringLiteral("Add the title"));
    at.session().undo();
    desk().takeOff(at.all(PieceKind::Credits));
    expectMended("credits.missing", {}, QStringLiteral("Add the credits"));
}

TEST_F(Mends, TheDayGoesIntoTheCredits)
{
    Experience dated = *at.session().experience();
    dated.on = QDate(2026, 11, 3);
    EditBuilder edit(at.book(), QStringLiteral("dated"));
    edit.put(dated);
    ASSERT_TRUE(at.session().perform(edit.take()));
    Piece credits = copyOf(PieceKind::Credits);
    credits.text = QStringLiteral("Words taken down as spoken.");
    for (const PieceId id : at.all(PieceKind::Label))
        desk().takeOff({id});
    put(credits);
    expectMended("credits.date", {}, QStringLiteral("Add the day"));
}

TEST_F(Mends, AChildWhoWasHeardGetsAPlace)
{
    for (const PieceId id : at.all(PieceKind::Quote)) {
        if (at.book().quotes.find(at.piece(id).quote)->child
            == childByName(at.book(), QStringLiteral("Kofi Lind"))->id)
            desk().takeOff({id});
    }
    expectMended("voices.child", {}, QStringLiteral("Find a place for Kofi"));
}

TEST_F(Mends, WhatMayNotHangIsTakenOff)
{
    const Piece photo = copyOf(PieceKind::Photo);
    desk().setPeople(
        photo.picture, {true, {childByName(at.book(), QStringLiteral("Ines Roth"))->id}});
    expectMended("permission.piece", photo.id, QStringLiteral("Taken off: Photo"));
}

TEST_F(Mends, AShorteningThatIsNoLongerTheChildsGivesWayToAllTheWords)
{
    Piece quote = copyOf(PieceKind::Quote);
    quote.shownWords = QStringLiteral("Nobody ever said this.");
    put(quote);
    expectMended("quote.verbatim", quote.id, QStringLiteral("Show all the words"));
}

TEST_F(Mends, APanelFarAboveTheEyesComesDownToThem)
{
    Wall wall;
    wall.id = WallId(1);
    wall.name = QStringLiteral("By the door");
    wall.size = {Mm(6000), Mm(4000)};
    wall.viewers = Viewers::Children;
    wall.panels = {{at.session().panel()->id, {Mm(500), Mm(0)}}};
    EditBuilder edit(at.book(), QStringLiteral("hung high"));
    edit.put(wall);
    ASSERT_TRUE(at.session().perform(edit.take()));
    expectMended("type.mounted", {}, QStringLiteral("Hang it at their eyes"));
    EXPECT_EQ(at.book().walls.find(wall.id)->panels.front().corner.y, Mm(0)) << "undone";
}

TEST_F(Mends, WhatHasToBeWrittenIsOpenedWithTheCaretInIt)
{
    Piece photo = copyOf(PieceKind::Photo);
    photo.text.clear();
    photo.group = 0;
    put(photo);
    const Finding* known = find(found(), QStringLiteral("caption.missing"), photo.id);
    ASSERT_NE(known, nullptr);
    at.window().go(Place::Hang);
    at.window().hang().setTask(HangPlace::Task::Check);
    Q_EMIT at.window().hang().check().mendAsked(*known);
    EXPECT_EQ(at.window().place(), Place::Compose);
    ASSERT_TRUE(at.compose().isWriting());
    EXPECT_EQ(at.canvas().inHand(), photo.id);
    QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("The chalk line"));
    at.compose().endWriting(true);
    EXPECT_EQ(at.piece(photo.id).text, QStringLiteral("The chalk line"));
}

TEST_F(Mends, TheKeyMendsInTheNoteAndInCheck)
{
    Piece quote = copyOf(PieceKind::Quote);
    quote.cell.x = Mm(-30);
    put(quote);
    ASSERT_NE(find(found(), QStringLiteral("place.outside"), quote.id), nullptr);
    at.window().go(Place::Compose);
    at.canvas().takeInHand(quote.id);
    at.canvas().setFocus();
    at.key(Qt::Key_M, Qt::ControlModifier);
    at.settle();
    EXPECT_GE(at.piece(quote.id).cell.x, Mm(0));
    at.session().undo();
    ASSERT_NE(find(found(), QStringLiteral("place.outside"), quote.id), nullptr);
    at.window().go(Place::Hang);
    at.window().hang().setTask(HangPlace::Task::Check);
    at.settle();
    QTest::keyClick(&at.window(), Qt::Key_F7);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_M, Qt::ControlModifier);
    at.settle();
    EXPECT_GE(at.piece(quote.id).cell.x, Mm(0)) << "the gravest finding comes first";
}

} // namespace
} // namespace wainscot::ui
