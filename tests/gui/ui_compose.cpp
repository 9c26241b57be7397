// Compose, by mouse and by keys.
#include <QApplication>
#include <QLabel>
#include <QLineEdit>

#include <gmock/gmock.h>

#include <cmath>

#include "app/ui/session/piece_edits.h"
#include "app/ui/writing/reading_line.h"
#include "support/window_at_work.h"

namespace wainscot::ui {
namespace {

// How far a rectangle is from the grid of the panel, mm.
double offGrid(const Grid& grid, const RectMm& rect)
{
    const RectMm nearest = rectOf(grid, nearestCell(grid, rect));
    return std::abs((nearest.x - rect.x).value()) + std::abs((nearest.y - rect.y).value());
}

TEST(Compose, LeadsFromAnEmptyBookToAFirstPanel)
{
    WindowAtWork at;
    EXPECT_TRUE(at.compose().stage().emptyStage().isVisible());
    EXPECT_EQ(at.window().sill().nextStep(), QStringLiteral("Propose a panel"));
    at.propose();
    EXPECT_FALSE(at.compose().stage().emptyStage().isVisible());
    EXPECT_GE(at.canvas().content().pieces.size(), 4U);
    EXPECT_EQ(at.session().undoLabel(), QStringLiteral("Proposed panel"));
}

TEST(Compose, HangsNothingThatIsNotAllowed)
{
    WindowAtWork at;
    at.propose();
    for (const Piece& piece : at.pieces()) {
        if (const Quote* quote = at.book().quotes.find(piece.quote)) {
            EXPECT_NE(at.book().children.find(quote->child)->name, QStringLiteral("Ines Roth"));
        }
    }
    const Quote* refused = nullptr;
    for (const auto& [id, quote] : at.book().quotes.rows()) {
        if (at.book().children.find(quote.child)->name == QStringLiteral("Ines Roth"))
            refused = &quote;
    }
    ASSERT_NE(refused, nullptr);
    const DrawerItem item{DrawerItem::Kind::Quote, refused->id.number()};
    DrawerEntry* slip = at.compose().drawer().entryFor(item);
    ASSERT_NE(slip, nullptr) << "what may not hang stays to be seen";
    EXPECT_TRUE(slip->isForbidden());
    EXPECT_TRUE(slip->accessibleName().contains(QStringLiteral("not for the hallway")));
    const auto before = at.pieces();
    slip->setFocus();
    at.key(Qt::Key_Return);
    EXPECT_EQ(at.pieces(), before);
}

TEST(Compose, DragsAPieceOntoTheGridAndPinsIt)
{
    WindowAtWork at;
    at.propose();
    const PieceId photo = at.first(PieceKind::Photo);
    const RectMm before = at.piece(photo).cell;
    at.clickOn(photo);
    EXPECT_EQ(at.canvas().inHand(), photo);
    at.drag(at.middleOf(photo), at.middleOf(photo) + QPoint(-137, 41));
    const Piece& after = at.piece(photo);
    EXPECT_NE(after.cell, before);
    EXPECT_TRUE(after.pinned);
    EXPECT_LT(offGrid(at.canvas().content().style.grid, after.cell), 0.001);
    EXPECT_TRUE(at.session().undoLabel().startsWith(QStringLiteral("Moved")))
        << at.session().undoLabel().toStdString();
    at.session().undo();
    at.settle();
    EXPECT_EQ(at.piece(photo).cell, before) << "a drag, with what made room for it, is one step";
    EXPECT_FALSE(at.piece(photo).pinned);
}

TEST(Compose, ResizesByAnEdgeOnTheGrid)
{
    WindowAtWork at;
    at.propose();
    const PieceId photo = at.first(PieceKind::Photo);
    at.clickOn(photo);
    const RectMm before = at.piece(photo).cell;
    const QRectF box = at.canvas().pieceRect(photo);
    const QPoint edge(int(box.right()) - 2, int(box.center().y()));
    const double column = at.canvas().content().style.grid.column.value();
    at.drag(edge, edge - QPoint(int(at.canvas().view().scale() * column * 1.2), 0));
    const RectMm after = at.piece(photo).cell;
    EXPECT_LT(after.width, before.width);
    EXPECT_EQ(after.x, before.x);
    const Grid& grid = at.canvas().content().style.grid;
    EXPECT_NEAR(after.width.value(), grid.width(nearestCell(grid, after).columns).value(), 0.001);
}

TEST(Compose, EscapePutsADraggedPieceBack)
{
    WindowAtWork at;
    at.propose();
    const PieceId quote = at.first(PieceKind::Quote);
    at.clickOn(quote);
    const auto before = at.pieces();
    at.key(Qt::Key_Space);
    EXPECT_TRUE(at.canvas().isLifted());
    at.key(Qt::Key_Down);
    at.key(Qt::Key_Right);
    at.key(Qt::Key_Escape);
    EXPECT_FALSE(at.canvas().isLifted());
    EXPECT_EQ(at.pieces(), before);
}

TEST(Compose, MovesThePictureInsideItsFrame)
{
    WindowAtWork at;
    at.propose();
    const PieceId photo = at.first(PieceKind::Photo);
    at.clickOn(photo);
    at.key(Qt::Key_C);
    ASSERT_TRUE(at.canvas().isCropping());
    for (int i = 0; i < 6; ++i)
        at.key(Qt::Key_Plus);
    EXPECT_GT(at.piece(photo).framing.zoom, 1.2);
    const double focus = at.piece(photo).framing.focus.x;
    at.drag(at.middleOf(photo), at.middleOf(photo) + QPoint(20, 0));
    EXPECT_LT(at.piece(photo).framing.focus.x, focus) << "the picture follows the pointer";
    EXPECT_TRUE(at.canvas().isCropping());
    at.key(Qt::Key_Escape);
    EXPECT_FALSE(at.canvas().isCropping());
    EXPECT_EQ(at.session().undoLabel(), QStringLiteral("Cropped photo"));
}

TEST(Compose, WritesACaptionThatShowsAtEveryKey)
{
    WindowAtWork at;
    at.propose();
    const PieceId photo = at.first(PieceKind::Photo);
    const QString before = at.piece(photo).text;
    at.clickOn(photo);
    at.key(Qt::Key_Return);
    ASSERT_TRUE(at.compose().isWriting());
    at.type(QStringLiteral("Zwei Pfützen, żółw"));
    EXPECT_EQ(at.piece(photo).text, before) << "nothing is kept while it is written";
    at.key(Qt::Key_Return);
    EXPECT_FALSE(at.compose().isWriting());
    EXPECT_EQ(at.piece(photo).text, QStringLiteral("Zwei Pfützen, żółw"));
    EXPECT_EQ(at.session().undoLabel(), QStringLiteral("Caption"));
    at.key(Qt::Key_Return);
    at.type(QStringLiteral("other"));
    at.key(Qt::Key_Escape);
    EXPECT_EQ(at.piece(photo).text, QStringLiteral("Zwei Pfützen, żółw"));
}

TEST(Compose, TellsHowAnAdultsTextReads)
{
    WindowAtWork at;
    at.propose();
    const auto* line = at.compose().findChild<QLabel*>(QStringLiteral("reading"));
    ASSERT_NE(line, nullptr);
    EXPECT_THAT(line->toolTip().toStdString(), ::testing::HasSubstr("Smithsonian"));
    Piece note;
    note.panel = at.session().panel()->id;
    note.kind = PieceKind::Interpretation;
    note.text = QStringLiteral("It rained.");
    note.cell = {Mm(560), Mm(440), Mm(230), Mm(70)};
    PieceId added;
    ASSERT_TRUE(at.session().perform(addPiece(at.book(), note, QStringLiteral("Note"), added)));
    at.canvas().takeInHand(added);
    at.canvas().setFocus();
    at.key(Qt::Key_Return);
    ASSERT_TRUE(at.compose().isWriting());
    at.type(QStringLiteral("The cat sat on the mat"));
    EXPECT_EQ(line->text(), QStringLiteral("6 words, longest sentence 6. Flesch 116, grade -1.4."));
    at.type(QStringLiteral(". It"));
    EXPECT_TRUE(line->text().startsWith(QStringLiteral("7 words, longest sentence 6.")));
    at.key(Qt::Key_Escape);
    // A caption is too short for a formula.
    at.clickOn(at.first(PieceKind::Photo));
    at.key(Qt::Key_Return);
    at.type(QStringLiteral("Ice"));
    EXPECT_EQ(line->text(), QStringLiteral("1 word."));
    at.key(Qt::Key_Escape);
}

TEST(Compose, ReadsOtherLanguagesByLengthOnly)
{
    const QString text = QStringLiteral("El hielo se fue. Nadie lo vio.");
    EXPECT_EQ(readingLine(text, QStringLiteral("es"), true),
        QStringLiteral("7 words, longest sentence 4. No reading formula for this language."));
    EXPECT_TRUE(readingLine(text, QStringLiteral("en-GB"), true).contains(QLatin1String("grade")));
    EXPECT_TRUE(readingLine({}, QStringLiteral("en"), true).isEmpty());
}

TEST(Compose, KeepsAPinWhereItIsWhenArrangingAgain)
{
    WindowAtWork at;
    at.propose();
    const PieceId photo = at.first(PieceKind::Photo);
    at.clickOn(photo);
    at.key(Qt::Key_P);
    ASSERT_TRUE(at.piece(photo).pinned);
    const RectMm pinned = at.piece(photo).cell;
    const auto before = at.pieces();
    at.compose().actions().arrangeAgain->trigger();
    at.settle();
    EXPECT_EQ(at.piece(photo).cell, pinned);
    EXPECT_EQ(at.pieces().size(), before.size()) << "nothing leaves the panel, nothing comes";
    at.key(Qt::Key_P);
    EXPECT_FALSE(at.piece(photo).pinned);
}

TEST(Compose, TakesAPieceOffAndPutsItOnAgain)
{
    WindowAtWork at;
    at.propose();
    const PieceId quote = at.first(PieceKind::Quote);
    const DrawerItem item{DrawerItem::Kind::Quote, at.piece(quote).quote.number()};
    const std::size_t count = at.pieces().size();
    at.clickOn(quote);
    at.key(Qt::Key_Delete);
    EXPECT_EQ(at.pieces().size(), count - 1);
    DrawerEntry* slip = at.compose().drawer().entryFor(item);
    ASSERT_NE(slip, nullptr);
    slip->setFocus();
    at.key(Qt::Key_Return);
    EXPECT_EQ(at.pieces().size(), count);
    const Piece* added = at.book().pieces.find(at.canvas().inHand());
    ASSERT_NE(added, nullptr);
    EXPECT_EQ(added->quote.number(), item.id);
}

TEST(Compose, SwapsTwoPieces)
{
    WindowAtWork at;
    at.propose();
    const PieceId one = at.first(PieceKind::Photo);
    const PieceId other = at.first(PieceKind::Quote);
    const RectMm a = at.piece(one).cell;
    const RectMm b = at.piece(other).cell;
    at.clickOn(one);
    at.key(Qt::Key_S);
    at.clickOn(other);
    EXPECT_EQ(at.piece(one).cell, b);
    EXPECT_EQ(at.piece(other).cell, a);
}

TEST(Compose, UndoesEverythingBackToTheStartAndForthAgain)
{
    WindowAtWork at;
    at.propose();
    const PieceId photo = at.first(PieceKind::Photo);
    at.clickOn(photo);
    at.key(Qt::Key_Minus);
    at.key(Qt::Key_P);
    at.clickOn(at.first(PieceKind::Quote));
    at.key(Qt::Key_Delete);
    const auto after = at.pieces();
    at.undoAll();
    EXPECT_TRUE(at.book().pieces.isEmpty());
    EXPECT_TRUE(at.book().children.isEmpty()) << "gathering is undone like everything else";
    while (at.session().canRedo())
        at.session().redo();
    at.settle();
    at.session().chooseDisplay(at.book().displays.rows().begin()->first);
    EXPECT_EQ(at.pieces(), after);
}

TEST(Compose, IsDrivenByKeysAlone)
{
    WindowAtWork at;
    at.key(Qt::Key_F9); // propose
    ASSERT_NE(at.session().panel(), nullptr);
    at.canvas().setFocus(Qt::TabFocusReason);
    at.key(Qt::Key_Home);
    const PieceId first = at.canvas().inHand();
    at.key(Qt::Key_Down);
    EXPECT_NE(at.canvas().inHand(), first);
    const PieceId moved = at.first(PieceKind::Quote);
    while (at.canvas().inHand() != moved)
        at.key(Qt::Key_Down);
    const RectMm before = at.piece(moved).cell;
    at.key(Qt::Key_Space);
    at.key(Qt::Key_Down);
    at.key(Qt::Key_Down);
    at.key(Qt::Key_Return);
    EXPECT_NE(at.piece(moved).cell, before);
    at.key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(at.piece(moved).cell, before);
    at.key(Qt::Key_F, Qt::ControlModifier);
    EXPECT_TRUE(qobject_cast<QLineEdit*>(QApplication::focusWidget()) != nullptr);
    at.key(Qt::Key_4, Qt::ControlModifier);
    EXPECT_EQ(at.window().place(), Place::Hang);
    at.key(Qt::Key_3, Qt::ControlModifier);
    EXPECT_EQ(at.window().place(), Place::Compose);
}

TEST(Compose, ZoomsAboutThePieceInHandAndFitsAgain)
{
    WindowAtWork at;
    at.propose();
    at.clickOn(at.first(PieceKind::Photo));
    const double whole = at.canvas().view().scale();
    const QPoint middle = at.middleOf(at.canvas().inHand());
    at.compose().actions().nearer->trigger();
    EXPECT_NEAR(at.canvas().view().scale(), whole * 1.25, 1e-9);
    EXPECT_LE((at.middleOf(at.canvas().inHand()) - middle).manhattanLength(), 2);
    at.compose().actions().whole->trigger();
    EXPECT_NEAR(at.canvas().view().scale(), whole, 1e-9);
}

TEST(Compose, AMoveRepaintsOnlyWhatChanged)
{
    WindowAtWork at;
    at.propose();
    const PieceId quote = at.first(PieceKind::Quote);
    at.clickOn(quote);
    const QPoint from = at.middleOf(quote);
    QTest::mousePress(&at.canvas(), Qt::LeftButton, {}, from);
    QTest::mouseMove(&at.canvas(), from + QPoint(8, 0));
    at.settle();
    (void)at.canvas().takeWork();
    QTest::mouseMove(&at.canvas(), from + QPoint(9, 1));
    at.settle();
    const Canvas::Work work = at.canvas().takeWork();
    QTest::mouseRelease(&at.canvas(), Qt::LeftButton, {}, from + QPoint(9, 1));
    EXPECT_EQ(work.staticLayers, 0);
    EXPECT_GT(work.pixels, 0);
    const qint64 all = qint64(at.canvas().width()) * at.canvas().height();
    EXPECT_LT(work.pixels, all / 4);
}

} // namespace
} // namespace wainscot::ui
