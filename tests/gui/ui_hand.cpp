// Several pieces in the hand, trading places, nudging, and the page around the hand.
#include <QApplication>

#include <gmock/gmock.h>

#include <cmath>

#include "support/window_at_work.h"

namespace wainscot::ui {
namespace {

using ::testing::SizeIs;

double millimetresBetween(const RectMm& a, const RectMm& b)
{
    return std::abs((a.x - b.x).value()) + std::abs((a.y - b.y).value());
}

TEST(Hand, ShiftAndAClickTakeSeveralAndLetOneGo)
{
    WindowAtWork at;
    at.propose();
    const auto quotes = at.all(PieceKind::Quote);
    ASSERT_GE(quotes.size(), 2U);
    at.clickOn(quotes[0]);
    QTest::mouseClick(&at.canvas(), Qt::LeftButton, Qt::ShiftModifier, at.middleOf(quotes[1]));
    EXPECT_EQ(at.canvas().held(), (std::vector<PieceId>{quotes[0], quotes[1]}));
    QTest::mouseClick(&at.canvas(), Qt::LeftButton, Qt::ShiftModifier, at.middleOf(quotes[0]));
    EXPECT_EQ(at.canvas().held(), std::vector<PieceId>{quotes[1]});
}

TEST(Hand, ABandTakesWhatItTouchesAndCtrlAAll)
{
    WindowAtWork at;
    at.propose();
    const QRect paper = at.canvas().panelRect().toAlignedRect();
    at.drag(paper.topLeft() - QPoint(6, 6), paper.bottomRight() + QPoint(6, 6));
    EXPECT_THAT(at.canvas().held(), SizeIs(at.canvas().content().pieces.size()));
    QTest::mouseClick(&at.canvas(), Qt::LeftButton, {}, paper.topLeft() - QPoint(6, 6));
    EXPECT_THAT(at.canvas().held(), SizeIs(0));
    at.canvas().setFocus();
    at.key(Qt::Key_A, Qt::ControlModifier);
    EXPECT_THAT(at.canvas().held(), SizeIs(at.canvas().content().pieces.size()));
    at.key(Qt::Key_Escape);
    EXPECT_THAT(at.canvas().held(), SizeIs(0));
}

TEST(Hand, ShiftAndArrowsTakeSeveralByKeys)
{
    WindowAtWork at;
    at.propose();
    at.canvas().setFocus(Qt::TabFocusReason);
    at.key(Qt::Key_Home);
    at.key(Qt::Key_Down, Qt::ShiftModifier);
    at.key(Qt::Key_Down, Qt::ShiftModifier);
    EXPECT_THAT(at.canvas().held(), SizeIs(3));
}

TEST(Hand, DragsSeveralTogether)
{
    WindowAtWork at;
    at.propose();
    const auto quotes = at.all(PieceKind::Quote);
    at.clickOn(quotes[0]);
    QTest::mouseClick(&at.canvas(), Qt::LeftButton, Qt::ShiftModifier, at.middleOf(quotes[1]));
    const RectMm one = at.piece(quotes[0]).cell;
    const RectMm other = at.piece(quotes[1]).cell;
    at.drag(at.middleOf(quotes[0]), at.middleOf(quotes[0]) + QPoint(17, -23));
    const RectMm oneNow = at.piece(quotes[0]).cell;
    const RectMm otherNow = at.piece(quotes[1]).cell;
    EXPECT_GT(millimetresBetween(one, oneNow), 1);
    EXPECT_NEAR((oneNow.x - one.x).value(), (otherNow.x - other.x).value(), 0.001);
    EXPECT_NEAR((oneNow.y - one.y).value(), (otherNow.y - other.y).value(), 0.001);
    EXPECT_TRUE(at.piece(quotes[0]).pinned && at.piece(quotes[1]).pinned);
    at.session().undo();
    EXPECT_EQ(at.piece(quotes[0]).cell, one);
    EXPECT_EQ(at.piece(quotes[1]).cell, other);
}

TEST(Hand, AlignsToTheFirstAndSpreadsEvenly)
{
    WindowAtWork at;
    at.propose();
    const auto quotes = at.all(PieceKind::Quote);
    ASSERT_GE(quotes.size(), 3U);
    at.canvas().hold({quotes[0], quotes[1], quotes[2]});
    Q_EMIT at.canvas().taken(quotes[0]);
    at.canvas().setFocus();
    at.key(Qt::Key_L);
    const Mm left = at.piece(quotes[0]).cell.x;
    EXPECT_EQ(at.piece(quotes[1]).cell.x, left);
    EXPECT_EQ(at.piece(quotes[2]).cell.x, left);
    EXPECT_EQ(at.session().undoLabel(), QStringLiteral("Aligned 3 pieces"));
    at.key(Qt::Key_V);
    std::vector<RectMm> cells;
    cells.reserve(3);
    for (int i = 0; i < 3; ++i)
        cells.push_back(at.piece(quotes[std::size_t(i)]).cell);
    std::sort(cells.begin(), cells.end(), [](auto& a, auto& b) { return a.y < b.y; });
    EXPECT_NEAR(
        (cells[1].y - cells[0].bottom()).value(), (cells[2].y - cells[1].bottom()).value(), 0.01);
}

TEST(Hand, ShiftWhileDraggingTradesPlaces)
{
    WindowAtWork at;
    at.propose();
    const PieceId photo = at.first(PieceKind::Photo);
    const PieceId quote = at.first(PieceKind::Quote);
    const RectMm a = at.piece(photo).cell;
    const RectMm b = at.piece(quote).cell;
    at.clickOn(photo);
    at.drag(at.middleOf(photo), at.middleOf(quote), Qt::ShiftModifier);
    EXPECT_EQ(at.piece(photo).cell, b);
    EXPECT_EQ(at.piece(quote).cell, a);
}

TEST(Hand, CtrlWhileDraggingLeavesTheGrid)
{
    WindowAtWork at;
    at.propose();
    const PieceId quote = at.all(PieceKind::Quote).back();
    const RectMm before = at.piece(quote).cell;
    at.drag(at.middleOf(quote), at.middleOf(quote) + QPoint(7, 5), Qt::ControlModifier);
    const RectMm after = at.piece(quote).cell;
    EXPECT_GT(millimetresBetween(before, after), 0.4);
    const Grid& grid = at.canvas().content().style.grid;
    EXPECT_GT(millimetresBetween(after, snapped(grid, after)), 0.1);
}

TEST(Hand, NudgesByAGridStepAndByHalfAMillimetreInOneStepOfUndo)
{
    WindowAtWork at;
    at.propose();
    const PieceId photo = at.first(PieceKind::Photo);
    at.clickOn(photo);
    at.canvas().setFocus();
    const RectMm before = at.piece(photo).cell;
    const QString label = at.session().undoLabel();
    at.key(Qt::Key_Down, Qt::ControlModifier);
    at.key(Qt::Key_Down, Qt::ControlModifier);
    const Grid& grid = at.canvas().content().style.grid;
    EXPECT_NEAR((at.piece(photo).cell.y - before.y).value(), 2 * grid.rowUnit.value(), 0.01);
    const RectMm stepped = at.piece(photo).cell;
    at.key(Qt::Key_Right, Qt::AltModifier);
    EXPECT_NEAR((at.piece(photo).cell.x - stepped.x).value(), 0.5, 1e-9);
    at.session().undo();
    EXPECT_EQ(at.piece(photo).cell, before) << "a row of nudges is one step";
    EXPECT_EQ(at.session().undoLabel(), label);
}

TEST(Hand, ResizesByACornerAndByKeys)
{
    WindowAtWork at;
    at.propose();
    const PieceId photo = at.first(PieceKind::Photo);
    at.clickOn(photo);
    const RectMm before = at.piece(photo).cell;
    const QRectF box = at.canvas().pieceRect(photo);
    const QPoint corner = box.bottomRight().toPoint() - QPoint(2, 2);
    at.drag(corner, corner - QPoint(60, 60));
    EXPECT_LT(at.piece(photo).cell.width, before.width);
    EXPECT_LT(at.piece(photo).cell.height, before.height);
    EXPECT_EQ(at.piece(photo).cell.topLeft(), before.topLeft());
    const RectMm smaller = at.piece(photo).cell;
    at.canvas().setFocus();
    at.key(Qt::Key_Right, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_GT(at.piece(photo).cell.width, smaller.width);
}

TEST(Hand, ShowsWhatThePageWouldBecomeAndMakesExactlyThat)
{
    WindowAtWork at;
    at.propose();
    const PieceId photo = at.first(PieceKind::Photo);
    const PieceId quote = at.first(PieceKind::Quote);
    const auto before = at.pieces();
    std::vector<Piece> shown;
    QObject::connect(&at.compose().desk().livePage(),
        &LivePage::answered,
        [&shown](const std::vector<Piece>& pieces) { shown = pieces; });
    at.clickOn(photo);
    at.carryTo(at.middleOf(photo), at.middleOf(quote));
    at.rest();
    EXPECT_EQ(at.pieces(), before) << "nothing is done before the hand lets go";
    ASSERT_FALSE(shown.empty());
    at.letGo(at.middleOf(photo));
    for (const Piece& piece : shown)
        EXPECT_EQ(at.piece(piece.id).cell, piece.cell);
    EXPECT_EQ(at.pieces().size(), before.size());
    at.session().undo();
    at.settle();
    EXPECT_EQ(at.pieces(), before) << "with what made room it is one step";
}

TEST(Hand, EscapeWhileDraggingLeavesEverything)
{
    WindowAtWork at;
    at.propose();
    const PieceId photo = at.first(PieceKind::Photo);
    at.clickOn(photo);
    const auto before = at.pieces();
    at.carryTo(at.middleOf(photo), at.middleOf(photo) + QPoint(60, 60));
    at.canvas().putBack();
    at.letGo(at.middleOf(photo) + QPoint(60, 60));
    EXPECT_EQ(at.pieces(), before);
}

TEST(Hand, LiftsSeveralByKeys)
{
    WindowAtWork at;
    at.propose();
    const auto quotes = at.all(PieceKind::Quote);
    at.canvas().hold({quotes[0], quotes[1]});
    at.canvas().setFocus();
    const RectMm other = at.piece(quotes[1]).cell;
    at.key(Qt::Key_Space);
    ASSERT_TRUE(at.canvas().isLifted());
    at.key(Qt::Key_Up);
    at.key(Qt::Key_Return);
    EXPECT_LT(at.piece(quotes[1]).cell.y, other.y);
}

TEST(Wishes, TwoPiecesAreKeptTogetherAndApartAgainByKey)
{
    WindowAtWork at;
    at.propose();
    const auto quotes = at.all(PieceKind::Quote);
    ASSERT_GE(quotes.size(), 2U);
    at.clickOn(quotes.front());
    QTest::mouseClick(&at.canvas(), Qt::LeftButton, Qt::ShiftModifier, at.middleOf(quotes.back()));
    ASSERT_EQ(at.canvas().held().size(), 2U);
    at.canvas().setFocus();
    at.key(Qt::Key_K);
    at.settle();
    EXPECT_GT(at.piece(quotes.front()).together, 0);
    EXPECT_EQ(at.piece(quotes.front()).together, at.piece(quotes.back()).together);
    EXPECT_EQ(at.compose().actions().together->text(), QStringLiteral("No longer together"));
    at.canvas().setFocus();
    at.key(Qt::Key_K);
    at.settle();
    EXPECT_EQ(at.piece(quotes.front()).together, 0);
}

TEST(Wishes, ANewPanelBeginsWhereOneSays)
{
    WindowAtWork at;
    at.propose();
    const std::vector<Piece> before = at.pieces();
    const PanelId first = at.session().panel()->id;
    const PieceId last = at.all(PieceKind::Quote).back();
    at.clickOn(last);
    at.canvas().setFocus();
    at.key(Qt::Key_B);
    at.settle();
    EXPECT_EQ(panelsOf(at.book(), at.session().display()->id).size(), 2U);
    EXPECT_NE(at.session().panel()->id, first);
    EXPECT_EQ(at.piece(last).panel, at.session().panel()->id);
    std::size_t there = 0;
    for (const Panel* panel : panelsOf(at.book(), at.session().display()->id)) {
        for (const Piece* piece : piecesOf(at.book(), panel->id)) {
            EXPECT_FALSE(piece->cell.isEmpty()) << "every piece has a place";
            ++there;
        }
    }
    EXPECT_EQ(there, before.size()) << "nothing is lost";
    at.session().undo();
    EXPECT_EQ(panelsOf(at.book(), at.session().display()->id).size(), 1U) << "one step of undo";
    EXPECT_EQ(at.pieces(), before);
}

TEST(Wishes, ALockedPanelIsNotArranged)
{
    WindowAtWork at;
    at.propose();
    at.compose().actions().lockPanel->trigger();
    EXPECT_TRUE(at.session().panel()->locked);
    EXPECT_TRUE(at.compose().actions().lockPanel->isChecked());
    const std::vector<Piece> before = at.pieces();
    at.compose().actions().arrangeAgain->trigger();
    at.compose().actions().arrangeDisplay->trigger();
    at.settle();
    EXPECT_EQ(at.pieces(), before);
    at.compose().actions().lockPanel->trigger();
    EXPECT_FALSE(at.session().panel()->locked);
    EXPECT_EQ(at.session().undoLabel(), QStringLiteral("Unlocked: panel 1"));
}

} // namespace
} // namespace wainscot::ui
