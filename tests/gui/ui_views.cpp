// Nearer and further, rulers, history, the list of keys.
#include <QApplication>
#include <QDialog>
#include <QDir>
#include <QNativeGestureEvent>
#include <QPointingDevice>
#include <QTimer>
#include <QWheelEvent>

#include <gmock/gmock.h>

#include "app/jobs/program_settings.h"
#include "app/ui/canvas/screen_size.h"
#include "support/window_at_work.h"

namespace wainscot::ui {
namespace {

TEST(Views, TrueSizeIsTrueOnThisScreen)
{
    WindowAtWork at;
    at.propose();
    at.compose().actions().trueSize->trigger();
    EXPECT_NEAR(at.canvas().view().scale(), pixelsPerMm(at.canvas()), 1e-9);
    setPixelsPerMm(at.canvas(), 5.0);
    at.compose().actions().trueSize->trigger();
    EXPECT_NEAR(at.canvas().view().scale(), 5.0, 1e-9) << "as a person measured it";
    setPixelsPerMm(at.canvas(), 0);
    EXPECT_FALSE(screenSizeIsMeasured(at.canvas()));
}

TEST(Views, TheWheelWithCtrlKeepsThePointUnderIt)
{
    WindowAtWork at;
    at.propose();
    const QPointF there = at.canvas().panelRect().center() + QPointF(40, -30);
    const PointMm before = at.canvas().view().toMm(there);
    const double scale = at.canvas().view().scale();
    QWheelEvent wheel(there,
        at.canvas().mapToGlobal(there),
        {},
        {0, 120},
        Qt::NoButton,
        Qt::ControlModifier,
        Qt::NoScrollPhase,
        false);
    QApplication::sendEvent(&at.canvas(), &wheel);
    EXPECT_GT(at.canvas().view().scale(), scale);
    const PointMm after = at.canvas().view().toMm(there);
    EXPECT_NEAR(after.x.value(), before.x.value(), 0.01);
    EXPECT_NEAR(after.y.value(), before.y.value(), 0.01);
}

TEST(Views, PinchingOnATouchPadGoesNearer)
{
    WindowAtWork at;
    at.propose();
    const double scale = at.canvas().view().scale();
    const QPointF there = at.canvas().panelRect().center();
    QNativeGestureEvent pinch(Qt::ZoomNativeGesture,
        QPointingDevice::primaryPointingDevice(),
        2,
        there,
        there,
        at.canvas().mapToGlobal(there),
        0.2,
        {});
    QApplication::sendEvent(&at.canvas(), &pinch);
    EXPECT_NEAR(at.canvas().view().scale(), scale * 1.2, 1e-6);
}

TEST(Views, RulersAreShownAndKeptAndCountInches)
{
    WindowAtWork at;
    at.propose();
    const QColor wall = at.canvas().grab().toImage().pixelColor(300, 4);
    at.compose().actions().rulers->trigger();
    EXPECT_NE(at.canvas().grab().toImage().pixelColor(300, 4), wall);
    EXPECT_TRUE(ProgramSettings().value(QStringLiteral("rulers")).toBool());
    const QImage millimetres = at.canvas().grab().toImage();
    at.compose().actions().inches->trigger();
    EXPECT_NE(at.canvas().grab().toImage(), millimetres);
    at.compose().actions().inches->trigger();
    at.compose().actions().rulers->trigger();
}

TEST(Views, HistoryBringsTheDisplayBackAndThatIsUndoneToo)
{
    WindowAtWork at;
    at.propose();
    const auto proposed = at.pieces();
    const PieceId quote = at.first(PieceKind::Quote);
    at.clickOn(quote);
    at.key(Qt::Key_P);
    at.key(Qt::Key_Delete);
    const auto later = at.pieces();
    at.key(Qt::Key_H, Qt::ControlModifier);
    PanelChoice& choice = at.compose().stage().choice();
    ASSERT_TRUE(choice.isVisible());
    ASSERT_EQ(choice.count(), 3) << "proposed, pinned, taken off";
    EXPECT_TRUE(choice.way(2)->accessibleName().startsWith(QStringLiteral("Proposed panel")));
    EXPECT_TRUE(choice.way(0)->hasFocus());
    at.key(Qt::Key_End);
    at.key(Qt::Key_Return);
    EXPECT_FALSE(choice.isVisible());
    EXPECT_EQ(at.pieces(), proposed);
    EXPECT_TRUE(at.session().undoLabel().startsWith(QStringLiteral("Back to")));
    at.session().undo();
    EXPECT_EQ(at.pieces(), later);
}

// What was done before the book was opened is known from the states the book keeps.
TEST(Views, HistoryReachesBackBeyondTheOpeningOfTheBook)
{
    WindowAtWork at;
    at.propose();
    const std::vector<Piece> proposed = at.pieces();
    const QString folder = at.session().folder();
    const auto open = [&] {
        ASSERT_TRUE(at.window().openBook(folder));
        at.window().go(Place::Compose);
        at.settle();
    };
    at.window().beginBook(at.file(QStringLiteral("other")), QStringLiteral("Other"));
    QDir earlier(folder + QStringLiteral("/earlier"));
    const QDateTime then = QDateTime::currentDateTime().addDays(-1);
    ASSERT_TRUE(earlier.rename(earlier.entryList(QDir::Files).value(0),
        then.toString(QStringLiteral("yyyy-MM-ddTHH-mm-ss'.wainscot'"))));
    open();
    at.clickOn(at.first(PieceKind::Quote));
    at.key(Qt::Key_Delete);
    const std::vector<Piece> later = at.pieces();
    ASSERT_NE(later, proposed);
    at.window().beginBook(at.file(QStringLiteral("third")), QStringLiteral("Third"));
    open();
    ASSERT_FALSE(at.session().canUndo());
    at.canvas().setFocus();
    at.key(Qt::Key_H, Qt::ControlModifier);
    PanelChoice& choice = at.compose().stage().choice();
    ASSERT_TRUE(choice.isVisible());
    ASSERT_EQ(choice.count(), 2) << "as it is, and before the quote was taken off";
    at.key(Qt::Key_End);
    at.key(Qt::Key_Return);
    EXPECT_EQ(at.pieces(), proposed);
    at.session().undo();
    EXPECT_EQ(at.pieces(), later);
}

TEST(Views, OtherWaysAreLivePicturesAndOneIsTakenInOneStep)
{
    WindowAtWork at;
    at.propose();
    at.clickOn(at.first(PieceKind::Photo));
    at.key(Qt::Key_P);
    const RectMm pinned = at.piece(at.canvas().inHand()).cell;
    const auto before = at.pieces();
    at.canvas().setFocus();
    at.key(Qt::Key_T, Qt::ControlModifier);
    at.settle();
    PanelChoice& choice = at.compose().stage().choice();
    ASSERT_TRUE(choice.isVisible()) << "six pieces around a pin stand in more than one way";
    EXPECT_GE(choice.count(), 1);
    EXPECT_LE(choice.count(), 3);
    EXPECT_EQ(at.pieces(), before) << "looking changes nothing";
    at.key(Qt::Key_Return);
    EXPECT_NE(at.pieces(), before);
    EXPECT_EQ(at.piece(at.first(PieceKind::Photo)).cell, pinned);
    EXPECT_EQ(at.session().undoLabel(), QStringLiteral("Another way"));
    at.session().undo();
    EXPECT_EQ(at.pieces(), before);
}

TEST(Views, HistoryIsLeftByEscape)
{
    WindowAtWork at;
    at.propose();
    const auto before = at.pieces();
    at.key(Qt::Key_H, Qt::ControlModifier);
    at.key(Qt::Key_Escape);
    EXPECT_FALSE(at.compose().stage().choice().isVisible());
    EXPECT_EQ(at.pieces(), before);
}

TEST(Views, EveryActionOfComposeIsInAMenuAndTheListOfKeysIsOneWindow)
{
    WindowAtWork at;
    at.propose();
    QSet<const QAction*> inMenus;
    for (const QMenu* menu : at.window().findChildren<QMenu*>()) {
        for (const QAction* action : menu->actions())
            inMenus << action;
    }
    QList<QAction*> actions = at.compose().actions().lines;
    actions << at.compose().QWidget::actions() << at.canvas().actions();
    for (const QAction* action : actions)
        EXPECT_TRUE(inMenus.contains(action)) << action->text().toStdString();
    bool shown = false;
    QTimer::singleShot(0, &at.window(), [&shown] {
        if (auto* dialog = qobject_cast<QDialog*>(QApplication::activeModalWidget())) {
            shown = dialog->windowTitle() == QStringLiteral("All keys");
            dialog->reject();
        }
    });
    at.canvas().setFocus();
    QTest::keyClick(&at.canvas(), Qt::Key_Slash, Qt::ControlModifier);
    EXPECT_TRUE(shown);
}

} // namespace
} // namespace wainscot::ui
