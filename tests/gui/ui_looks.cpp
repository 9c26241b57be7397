// Kinds of panel, colours and letters: chosen from live pictures, for the display or one piece.
#include <QScrollArea>
#include <QScrollBar>

#include <gmock/gmock.h>

#include "support/window_at_work.h"

namespace wainscot::ui {
namespace {

// The way of that name in what is shown to choose from.
QAbstractButton* way(WindowAtWork& at, const QString& name)
{
    PanelChoice& choice = at.compose().stage().choice();
    for (int i = 0; i < choice.count(); ++i) {
        if (choice.way(i)->text() == name)
            return choice.way(i);
    }
    return nullptr;
}

void choose(WindowAtWork& at, const QString& name)
{
    at.settle();
    QAbstractButton* one = way(at, name);
    ASSERT_NE(one, nullptr) << name.toStdString();
    QTest::mouseClick(one, Qt::LeftButton);
    at.settle();
}

TEST(Looks, ColoursAreChosenForTheDisplayAndUndone)
{
    WindowAtWork at;
    at.propose();
    const QString before = at.session().display()->palette;
    const std::vector<Piece> pieces = at.pieces();
    at.compose().actions().colours->trigger();
    EXPECT_EQ(at.compose().stage().choice().count(), int(palettes().size()));
    choose(at, QStringLiteral("Damson"));
    EXPECT_EQ(at.session().display()->palette, QStringLiteral("Damson"));
    EXPECT_EQ(at.pieces(), pieces) << "colours move nothing";
    EXPECT_EQ(at.session().undoLabel(), QStringLiteral("Colours: Damson"));
    at.session().undo();
    EXPECT_EQ(at.session().display()->palette, before);
}

TEST(Looks, LettersArrangeThePanelForTheirWidthsInOneStep)
{
    WindowAtWork at;
    at.propose();
    const Display before = *at.session().display();
    const std::vector<Piece> pieces = at.pieces();
    at.compose().actions().letters->trigger();
    choose(at, QStringLiteral("Reading Room"));
    EXPECT_EQ(at.session().display()->pairing, QStringLiteral("Reading Room"));
    at.session().undo();
    EXPECT_EQ(*at.session().display(), before);
    EXPECT_EQ(at.pieces(), pieces);
}

TEST(Looks, OnePieceHasColoursAndLettersOfItsOwn)
{
    WindowAtWork at;
    at.propose();
    const PieceId quote = at.first(PieceKind::Quote);
    EXPECT_FALSE(at.compose().actions().pieceColours->isEnabled()) << "nothing is in hand";
    at.clickOn(quote);
    at.compose().actions().pieceColours->trigger();
    choose(at, QStringLiteral("Rowan"));
    EXPECT_EQ(at.piece(quote).palette, QStringLiteral("Rowan"));
    EXPECT_NE(at.session().display()->palette, QStringLiteral("Rowan"));
    at.clickOn(quote);
    at.compose().actions().pieceColours->trigger();
    choose(at, at.session().display()->palette);
    EXPECT_EQ(at.piece(quote).palette, QString()) << "the display's own is none of its own";
    at.clickOn(quote);
    at.compose().actions().pieceLetters->trigger();
    choose(at, QStringLiteral("Fieldbook"));
    EXPECT_EQ(at.piece(quote).pairing, QStringLiteral("Fieldbook"));
}

TEST(Looks, KindsOfPanelAreTriedOnWhatThereIs)
{
    WindowAtWork at;
    at.propose();
    const std::vector<Piece> pieces = at.pieces();
    at.compose().actions().kinds->trigger();
    choose(at, QStringLiteral("One question, many voices"));
    EXPECT_EQ(at.session().display()->plan, QStringLiteral("voices"));
    EXPECT_EQ(at.session().undoLabel(), QStringLiteral("Kind of panel: One question, many voices"));
    at.session().undo();
    EXPECT_EQ(at.pieces(), pieces);
}

TEST(Looks, APanelBecomesAKindOfOnesOwn)
{
    WindowAtWork at;
    at.propose();
    at.compose().desk().keepAsTemplate(QStringLiteral(" Our  corner "));
    ASSERT_EQ(at.book().templates.size(), 1U);
    EXPECT_EQ(at.book().templates.rows().begin()->second.name, QStringLiteral("Our corner"));
    at.compose().desk().keepAsTemplate(QStringLiteral("days"));
    EXPECT_EQ(at.book().templates.size(), 1U) << "the name of one of the program's own";
    at.compose().actions().kinds->trigger();
    choose(at, QStringLiteral("Our corner"));
    EXPECT_EQ(at.session().display()->plan, QStringLiteral("Our corner"));
}

TEST(Looks, EscapeLeavesEverythingAsItIs)
{
    WindowAtWork at;
    at.propose();
    const Display before = *at.session().display();
    at.compose().actions().colours->trigger();
    at.settle();
    at.key(Qt::Key_Right);
    at.key(Qt::Key_Escape);
    EXPECT_FALSE(at.compose().stage().choice().isVisible());
    EXPECT_EQ(*at.session().display(), before);
}

// Signs of wishes are on the canvas and not in what is printed.
TEST(Looks, WhatIsKeptTogetherHangsFromStrandsThatAreNotPrinted)
{
    WindowAtWork at;
    at.propose();
    const std::vector<PieceId> quotes = at.all(PieceKind::Quote);
    ASSERT_GE(quotes.size(), 2U);
    at.canvas().takeInHand({});
    at.settle();
    const QImage before = at.canvas().grab().toImage();
    const PieceIds two(quotes.begin(), quotes.begin() + 2);
    at.compose().desk().setTogether(two, true);
    at.settle();
    at.canvas().takeInHand({});
    at.settle();
    const QImage after = at.canvas().grab().toImage();
    for (const PieceId quote : two) {
        const QPoint strand =
            at.canvas().pieceRect(quote).topLeft().toPoint() - QPoint(0, scaled(5));
        EXPECT_NE(after.pixelColor(strand), QColor(Qt::white)) << "a nail at its start";
        EXPECT_TRUE(at.canvas().find(quote)->name.contains(QStringLiteral("Kept together")));
    }
    for (const Mark& mark : at.canvas().content().list.marks) {
        const auto* fill = std::get_if<Fill>(&mark.shape);
        EXPECT_TRUE(fill == nullptr || fill->colour != lightTokens().accent.rgba());
    }
    EXPECT_NE(before, after);
}

TEST(Looks, ALockedPanelIsNailedAtItsCorners)
{
    WindowAtWork at;
    at.propose();
    const auto corner = [&at] {
        const QPointF paper = at.canvas().panelRect().topLeft();
        return at.canvas().grab().toImage().pixelColor(
            (paper + QPointF(scaled(9), scaled(9))).toPoint());
    };
    EXPECT_EQ(corner(), QColor(Qt::white));
    at.compose().desk().setLocked(true);
    at.settle();
    EXPECT_EQ(corner(), lightTokens().accent);
    at.session().undo();
    at.settle();
    EXPECT_EQ(corner(), QColor(Qt::white));
}

TEST(Looks, AdviceIsTakenByItsButtonInOneStep)
{
    WindowAtWork at;
    at.propose();
    at.compose().desk().setPanelSize({Mm(1189), Mm(841)});
    at.settle();
    at.compose().desk().propose();
    at.settle();
    ASSERT_FALSE(at.compose().desk().advice().empty()) << "little material on a large panel";
    at.canvas().takeInHand({});
    at.settle();
    Note& note = at.compose().stage().note();
    ASSERT_TRUE(note.isVisible());
    ASSERT_TRUE(note.showsAdvice());
    const Advice advice = at.compose().desk().advice().front();
    const Display before = *at.session().display();
    const std::vector<Piece> pieces = at.pieces();
    auto* take = qobject_cast<QAbstractButton*>(note.firstStop());
    ASSERT_NE(take, nullptr);
    QTest::mouseClick(take, Qt::LeftButton);
    at.settle();
    const Display after = *at.session().display();
    EXPECT_NE(after, before);
    if (advice.kind == AdviceKind::SmallerPanel) {
        EXPECT_EQ(after.panelSize, advice.panelSize);
    }
    if (advice.kind == AdviceKind::LargerWords) {
        EXPECT_EQ(after.voiceStep, advice.voiceStep);
    }
    at.session().undo();
    at.settle();
    EXPECT_EQ(*at.session().display(), before);
    EXPECT_EQ(at.pieces(), pieces);
    EXPECT_TRUE(at.compose().desk().advice().empty()) << "what it spoke of is gone";
}

TEST(Note, ShowsItsLastLineWhole)
{
    WindowAtWork at;
    at.propose();
    at.window().resize(1366, 900);
    for (const PieceKind kind : {PieceKind::Title, PieceKind::Quote, PieceKind::Photo}) {
        at.clickOn(at.first(kind));
        at.settle();
        Note& note = at.compose().stage().note();
        ASSERT_TRUE(note.isVisible());
        const auto* area = note.findChild<QScrollArea*>();
        const QList<Label*> lines = note.findChildren<Label*>();
        ASSERT_NE(area, nullptr);
        ASSERT_FALSE(lines.isEmpty());
        EXPECT_FALSE(area->verticalScrollBar()->isVisible()) << int(kind);
        EXPECT_LE(area->widget()->height(), area->viewport()->height()) << int(kind);
        const Label* last = lines.back();
        EXPECT_LE(last->mapTo(&note, QPoint(0, last->height())).y(), note.height() - air(2))
            << last->text().toStdString();
    }
}

} // namespace
} // namespace wainscot::ui
