// One goes on working in the window while its helpers read, make, count and judge. Nobody is waited
// for here, so that under the thread sanitizer (.ci/races) nothing orders what the threads do but
// the window.
#include <QElapsedTimer>

#include <gmock/gmock.h>

#include "app/jobs/book_jobs.h"
#include "support/window_at_work.h"

namespace wainscot::ui {
namespace {

using ::testing::SizeIs;

void goOn(int ms)
{
    QElapsedTimer time;
    time.start();
    while (time.elapsed() < ms)
        QApplication::processEvents(QEventLoop::AllEvents, 5);
}

// Nudges the first answer and has everything drawn again.
void workOn(WindowAtWork& at, int times, int msBetween)
{
    at.canvas().setFocus();
    for (int i = 0; i < times; ++i) {
        QTest::keyClick(&at.canvas(), i % 2 == 0 ? Qt::Key_Right : Qt::Key_Left, Qt::AltModifier);
        at.window().repaint();
        goOn(msBetween);
    }
}

TEST(Meanwhile, PiecesAreMovedWhileAFolderIsGathered)
{
    WindowAtWork at;
    at.propose();
    const PieceId quote = at.first(PieceKind::Quote);
    at.clickOn(quote);
    const Mm left = at.piece(quote).cell.x;
    const std::size_t pictures = at.book().pictures.size();
    QDir().mkdir(at.file(QStringLiteral("more")));
    for (int i = 0; i < 6; ++i) {
        QImage image(700 + 40 * i, 500, QImage::Format_RGB32);
        image.fill(QColor::fromHsv(50 * i, 80, 190));
        ASSERT_TRUE(image.save(at.file(QStringLiteral("more/%1.jpg").arg(i))));
    }
    at.window().gatherPhotos(at.file(QStringLiteral("more")), QStringLiteral("Puddle"));
    ASSERT_TRUE(at.window().work().isBusy());
    do
        workOn(at, 1, 5);
    while (at.window().work().isBusy());
    at.settle();
    EXPECT_EQ(at.book().pictures.size(), pictures + 6);
    EXPECT_NE(at.piece(quote).cell.x, left);
}

TEST(Meanwhile, ThePanelIsJudgedWhileItChanges)
{
    WindowAtWork at;
    at.propose();
    at.clickOn(at.first(PieceKind::Quote));
    for (int i = 0; i < 4; ++i) {
        workOn(at, 1, 520); // long enough for the judge to begin
        workOn(at, 3, 10); // while it is at work
    }
    Desk& desk = at.compose().desk();
    bool isDrawn = false;
    QObject::connect(&desk, &Desk::drawnAgain, &desk, [&isDrawn] { isDrawn = true; });
    EXPECT_TRUE(QTest::qWaitFor([&isDrawn] { return isDrawn; }, 60000)) << "never judged";
}

TEST(Meanwhile, ADragEndsWhileThePageIsTried)
{
    WindowAtWork at;
    at.propose();
    const auto before = at.pieces();
    const PieceId photo = at.first(PieceKind::Photo);
    for (int i = 1; i <= 4; ++i) {
        const QPoint from = at.middleOf(photo);
        const QPoint to = from + QPoint(30 * i, 12 * i);
        at.carryTo(from, to);
        goOn(230); // held still: what the page would become is asked for
        QTest::mouseRelease(&at.canvas(), Qt::LeftButton, {}, to);
        at.window().repaint();
    }
    at.settle();
    EXPECT_THAT(at.pieces(), SizeIs(before.size()));
    EXPECT_NE(at.pieces(), before);
}

TEST(Meanwhile, DaysAreChosenWhileTheTermIsCounted)
{
    WindowAtWork at;
    at.propose();
    Experience dated = *at.session().experience();
    dated.on = QDate(2026, 11, 3);
    EditBuilder edit(at.book(), QStringLiteral("dated"));
    edit.put(dated);
    ASSERT_TRUE(at.session().perform(edit.take()));
    at.window().go(Place::Keep);
    for (int i = 0; i < 6; ++i) {
        for (const int day : {1, 8, 15}) { // while the one before is counted
            at.window().keep().file().setDays(QDate(2026, 9, day + i), QDate(2026, 12, 1 + i));
            QTest::qSleep(1);
        }
        dated.title = QStringLiteral("Puddle %1").arg(i);
        EditBuilder again(at.book(), QStringLiteral("renamed"));
        again.put(dated);
        ASSERT_TRUE(at.session().perform(again.take()));
        at.window().repaint();
        goOn(30);
    }
    TermColumn& file = at.window().keep().file();
    EXPECT_TRUE(QTest::qWaitFor([&file] { return file.pages() > 0; }, 60000));
}

TEST(Meanwhile, PicturesArriveWhileThePanelIsShownAndLeft)
{
    WindowAtWork at;
    at.propose();
    const int asked = at.compose().shelf().askedSoFar();
    for (int i = 0; i < 6; ++i) {
        at.window().go(i % 2 == 0 ? Place::Gather : Place::Compose);
        at.window().resize(1200 + 40 * i, 740 + 10 * i);
        at.window().repaint();
        goOn(10);
    }
    at.compose().shelf().setPaths(
        [&at](const QString& sha256) { return at.session().originalPath(sha256); },
        at.file(QStringLiteral("another cache")));
    at.window().go(Place::Compose);
    for (const auto& [id, picture] : at.book().pictures.rows()) // two make them
        (void)at.compose().shelf().thumbnail(picture);
    workOn(at, 3, 10);
    EXPECT_GT(at.compose().shelf().askedSoFar(), asked);
    // and the window goes while pictures may still be on their way
}

// What is gathered must land in the book it was gathered for, with the families' permissions there.
TEST(Meanwhile, NoOtherBookIsOpenedWhileWorkIsDone)
{
    WindowAtWork at;
    const QString folder = at.session().folder();
    const QString other = at.file(QStringLiteral("other"));
    ASSERT_TRUE((NewBookJob{other, QStringLiteral("The Larks")}.run({})));
    at.window().gatherChildren(at.file(QStringLiteral("children.csv")));
    ASSERT_TRUE(at.window().work().isBusy());
    EXPECT_FALSE(at.window().openBook(other));
    at.window().beginBook(at.file(QStringLiteral("third")), QStringLiteral("The Owls"));
    EXPECT_EQ(at.session().folder(), folder);
    EXPECT_FALSE(QFile::exists(at.file(QStringLiteral("third"))));
    at.settle();
    EXPECT_TRUE(at.window().openBook(other));
    EXPECT_TRUE(at.book().children.isEmpty());
}

TEST(Meanwhile, WhoeverAsksForMoreIsToldToWait)
{
    WindowAtWork at;
    at.window().gatherPhotos(at.file(QStringLiteral("photos")), QStringLiteral("Puddle"));
    ASSERT_TRUE(at.window().work().isBusy());
    at.window().gatherChildren(at.file(QStringLiteral("children.csv")));
    EXPECT_THAT(at.window().sill().said().toStdString(),
        ::testing::HasSubstr(
            "Wait until this is done: " + at.window().work().name().toStdString()));
    at.settle();
}

TEST(Meanwhile, TheWindowGoesWhileWorkIsDone)
{
    auto at = std::make_unique<WindowAtWork>();
    at->propose();
    at->window().gatherPhotos(at->file(QStringLiteral("photos")), QStringLiteral("Puddle"));
    EXPECT_TRUE(at->window().work().isBusy());
    workOn(*at, 1, 0);
    at.reset();
}

} // namespace
} // namespace wainscot::ui
