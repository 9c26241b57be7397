// Kinds of panel, colours and letters: chosen from live pictures, for the display or one piece.
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

} // namespace
} // namespace wainscot::ui
