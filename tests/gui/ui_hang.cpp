// Hang: check, wall, print.
#include <QApplication>
#include <QCheckBox>
#include <QDateEdit>
#include <QDropEvent>
#include <QLineEdit>
#include <QMimeData>
#include <QMouseEvent>
#include <QPainter>
#include <QPrinter>
#include <QProcess>
#include <QUrl>

#include <algorithm>

#include <gmock/gmock.h>

#include "app/ui/kit/settings.h"
#include "core/model/wall_photo.h"
#include "support/window_at_work.h"
#include "tests/support/media_pictures.h"

namespace wainscot::ui {
namespace {

HangPlace& open(WindowAtWork& at, HangPlace::Task task)
{
    at.propose();
    at.window().go(Place::Hang);
    at.window().hang().setTask(task);
    at.settle();
    return at.window().hang();
}

WallPage& measured(WindowAtWork& at)
{
    WallPage& wall = open(at, HangPlace::Task::Wall).wall();
    wall.measureWall();
    at.settle();
    return wall;
}

TEST(HangWall, IsMeasuredProposedAndUndoneByName)
{
    WindowAtWork at;
    WallPage& page = measured(at);
    ASSERT_NE(page.wall(), nullptr);
    EXPECT_EQ(page.wall()->size, (SizeMm{Mm(6000), Mm(2700)}));
    page.proposePlaces();
    ASSERT_EQ(page.wall()->panels.size(), 1U);
    EXPECT_EQ(page.view().plan().list.size(), 1U);
    EXPECT_EQ(at.session().undoLabel(), QStringLiteral("Proposed places"));
    at.session().undo();
    EXPECT_TRUE(page.wall()->panels.empty());
}

TEST(HangWall, APanelIsDraggedAndTheWholeDragIsOneStep)
{
    WindowAtWork at;
    WallPage& page = measured(at);
    page.proposePlaces();
    at.settle();
    const PointMm before = page.wall()->panels.front().corner;
    WallView& view = page.view();
    view.take(0);
    const RectMm place = view.placeOf(0);
    const int steps = static_cast<int>(at.session().stepsDone().size());
    QPoint from;
    for (int x = 1; x < view.width() && from.isNull(); x += 3) {
        for (int y = 1; y < view.height() && from.isNull(); y += 3) {
            QTest::mousePress(&view, Qt::LeftButton, {}, {x, y});
            QTest::mouseRelease(&view, Qt::LeftButton, {}, {x, y});
            if (view.inHand() == 0)
                from = {x + 6, y + 6};
        }
    }
    ASSERT_FALSE(from.isNull()) << "the panel is nowhere";
    QTest::mousePress(&view, Qt::LeftButton, {}, from);
    for (const QPoint& by : {QPoint(20, 0), QPoint(40, -10)}) {
        QMouseEvent move(QEvent::MouseMove,
            from + by,
            view.mapToGlobal(from + by),
            Qt::NoButton,
            Qt::LeftButton,
            Qt::NoModifier);
        QApplication::sendEvent(&view, &move);
    }
    QTest::mouseRelease(&view, Qt::LeftButton, {}, from + QPoint(40, -10));
    const PointMm after = page.wall()->panels.front().corner;
    EXPECT_GT(after.x, before.x);
    EXPECT_LT(after.y, before.y);
    EXPECT_EQ(static_cast<int>(at.session().stepsDone().size()), steps + 1);
    at.session().undo();
    ASSERT_FALSE(page.wall()->panels.empty());
    EXPECT_EQ(page.wall()->panels.front().corner, before);
    EXPECT_EQ(view.placeOf(0).size(), place.size());
}

TEST(HangWall, KeysMoveWhatIsInTheHandAndNothingLeavesTheWall)
{
    WindowAtWork at;
    WallPage& page = measured(at);
    page.add(FittingKind::Socket);
    at.settle();
    WallView& view = page.view();
    view.setFocus();
    ASSERT_EQ(view.inHand(), 0);
    const RectMm before = view.placeOf(0);
    QTest::keyClick(&view, Qt::Key_Right);
    EXPECT_EQ(view.placeOf(0).x, before.x + Mm(10));
    QTest::keyClick(&view, Qt::Key_Down, Qt::AltModifier);
    EXPECT_EQ(view.placeOf(0).y, before.y + Mm(1));
    for (int i = 0; i < 400; ++i)
        QTest::keyClick(&view, Qt::Key_Down);
    EXPECT_LE(view.placeOf(0).bottom(), Mm(2700));
    QTest::keyClick(&view, Qt::Key_Escape);
    EXPECT_EQ(view.inHand(), -1);
    QTest::keyClick(&view, Qt::Key_PageDown);
    EXPECT_EQ(view.inHand(), 0);
    page.takeOff();
    EXPECT_TRUE(page.wall()->fittings.empty());
}

TEST(HangWall, TakesItsMeasuresFromFieldsAndKeepsDoorsOnTheFloor)
{
    WindowAtWork at;
    WallPage& page = measured(at);
    page.add(FittingKind::Door);
    page.view().take(-1);
    at.settle();
    QLineEdit* height = nullptr;
    for (QLineEdit* one : page.findChildren<QLineEdit*>()) {
        if (one->accessibleName().startsWith(QStringLiteral("Height")))
            height = one;
    }
    ASSERT_NE(height, nullptr);
    height->setFocus();
    height->selectAll();
    QTest::keyClicks(height, QStringLiteral("300"));
    QTest::keyClick(height, Qt::Key_Return);
    EXPECT_EQ(page.wall()->size.height, Mm(3000));
    EXPECT_EQ(page.wall()->fittings.front().place.bottom(), Mm(3000));
}

TEST(HangWall, PrintsItsListOnOnePage)
{
    WindowAtWork at;
    WallPage& page = measured(at);
    page.add(FittingKind::ExitSign);
    page.proposePlaces();
    QPrinter printer(QPrinter::HighResolution);
    printer.setOutputFormat(QPrinter::PdfFormat);
    printer.setOutputFileName(at.file(QStringLiteral("list.pdf")));
    printer.setPageOrientation(QPageLayout::Landscape);
    ASSERT_TRUE(page.printList(printer));
    const auto info = test::run(QStringLiteral("pdfinfo"), {at.file(QStringLiteral("list.pdf"))});
    EXPECT_TRUE(info);
}

// Two bands close to each other on a small wall, at the usual size of text and at 150 %.
TEST(HangWall, NamesOfTheBandsNeverStandOnEachOther)
{
    const QFont usual = QApplication::font();
    Wall wall;
    wall.viewers = Viewers::Both;
    for (const double share : {1.0, 1.5}) {
        QFont font = usual;
        font.setPointSizeF(usual.pointSizeF() * share);
        QApplication::setFont(font);
        for (const auto& [youngest, oldest] :
            {std::pair(3, 4), std::pair(4, 6), std::pair(9, 12)}) {
            wall.youngest = youngest;
            wall.oldest = oldest;
            const WallPlan plan = planOf(Book{}, wall);
            for (int height = 60; height <= 500; height += 20) {
                QImage paper(1200, height, QImage::Format_RGB32);
                QPainter painter(&paper);
                const WallPicture picture(wall, plan, tokens(), {});
                const auto names =
                    picture.bandNames(painter, picture.fitted(QRectF(64, 10, 700, height - 20)));
                ASSERT_EQ(names.size(), 2U);
                EXPECT_LT(names[0].box.bottom(), names[1].box.top()) << height;
                EXPECT_EQ(names[0].lines.front().text, QStringLiteral("Grown-ups' eyes"));
            }
        }
    }
    QApplication::setFont(usual);
}

TEST(HangWall, TakesAPhotoOfHowItHangsAndAsksWhoIsInIt)
{
    WindowAtWork at;
    WallPage& page = measured(at);
    page.proposePlaces();
    const DisplayId display = at.session().display()->id;
    const QString file = at.file(QStringLiteral("wall.jpg"));
    ASSERT_TRUE(test::noisePhoto(320, 240, 7).save(file, "jpeg"));
    QMimeData mime;
    mime.setUrls({QUrl::fromLocalFile(file)});
    QDragEnterEvent enter({20, 20}, Qt::CopyAction, &mime, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(&page, &enter);
    ASSERT_TRUE(enter.isAccepted());
    QDropEvent drop({20, 20}, Qt::CopyAction, &mime, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(&page, &drop);
    at.settle();
    const auto photos = wallPhotosOf(at.book(), display);
    ASSERT_EQ(photos.size(), 1U);
    EXPECT_FALSE(photos.front()->people.lookedAt) << "nobody sees it until somebody has looked";
    EXPECT_EQ(photos.front()->hungOn, at.session().today());
    EXPECT_EQ(at.session().undoLabel(), QStringLiteral("Photo of the wall"));
    PicturesTask& pictures = at.window().gather().pictures();
    ASSERT_NE(pictures.picture(), nullptr);
    EXPECT_EQ(pictures.picture()->id, photos.front()->id);
    auto* day = pictures.findChild<QDateEdit*>();
    ASSERT_NE(day, nullptr);
    EXPECT_TRUE(day->isVisible());
    pictures.nobodySeen();
    EXPECT_TRUE(at.book().pictures.find(photos.front()->id)->people.lookedAt);
    day->setDate(at.session().today().addDays(-3));
    Q_EMIT day->editingFinished();
    EXPECT_EQ(
        at.book().pictures.find(photos.front()->id)->hungOn, at.session().today().addDays(-3));
    const QList<Button*> buttons = pictures.findChildren<Button*>();
    const auto chip = std::find_if(buttons.begin(), buttons.end(), [](const Button* one) {
        return one->text().startsWith(QStringLiteral("Nothing on the panels"));
    });
    ASSERT_NE(chip, buttons.end());
    (*chip)->click();
    EXPECT_FALSE(at.book().pictures.find(photos.front()->id)->panelsLegible);
    for (int step = 0; step < 4; ++step)
        at.session().undo();
    EXPECT_TRUE(wallPhotosOf(at.book(), display).empty());
}

TEST(HangCheck, KeepsTheReasonWhyAFindingWasLeftWithThePanel)
{
    WindowAtWork at;
    CheckPage& page = open(at, HangPlace::Task::Check).check();
    Finding finding;
    finding.severity = Severity::Look;
    finding.rule = QStringLiteral("panel.ink");
    finding.panel = 1;
    finding.says = QStringLiteral("Much ink.");
    page.show({finding});
    page.leave(finding, QStringLiteral("It is the night sky."));
    const Panel& panel = *panelsOf(at.book(), at.session().display()->id).front();
    ASSERT_EQ(panel.left.size(), 1U);
    EXPECT_EQ(panel.left.front().why, QStringLiteral("It is the night sky."));
    page.show({finding});
    EXPECT_THAT(page.summary().toStdString(), ::testing::HasSubstr("1 left as they are"));
    at.session().undo();
    EXPECT_TRUE(panelsOf(at.book(), at.session().display()->id).front()->left.empty());
}

TEST(HangPrint, SaysHowManySheetsAndPrintsAsMany)
{
    WindowAtWork at;
    for (const char* key : {"sheets/paper", "sheets/overlap", "sheets/margin", "sheets/ruler"})
        ProgramSettings().remove(QString::fromLatin1(key));
    PrintPage& page = open(at, HangPlace::Task::Print).print();
    page.setPaper(QStringLiteral("A4"));
    EXPECT_EQ(page.sheets(), 15) << "A1 on A4 with 10 mm overlap, landscape: 3 x 5";
    EXPECT_GT(page.colouredPercent(), 5) << "there are photos on it";
    EXPECT_LT(page.colouredPercent(), 60);
    page.setPaper(QStringLiteral("A3"));
    EXPECT_EQ(page.sheets(), 8);
    QPrinter printer(QPrinter::ScreenResolution);
    printer.setOutputFormat(QPrinter::PdfFormat);
    printer.setOutputFileName(at.file(QStringLiteral("sheets.pdf")));
    ASSERT_TRUE(at.window().printSheets(printer, page.wishes()));
    QProcess info;
    info.start(QStringLiteral("pdfinfo"), {at.file(QStringLiteral("sheets.pdf"))});
    ASSERT_TRUE(info.waitForFinished());
    EXPECT_TRUE(info.readAllStandardOutput().simplified().contains("Pages: 8"));
    page.setRuler(Mm(98));
    EXPECT_NEAR(page.wishes().scale, 100.0 / 98, 1e-12);
    page.setRuler(Mm(100));
}

TEST(HangPrint, PutsTheDataIntoThePdfWhereItIsAskedFor)
{
    WindowAtWork at;
    PrintPage& page = open(at, HangPlace::Task::Print).print();
    const QString file = at.file(QStringLiteral("kept.pdf"));
    const auto attached = [&] {
        at.window().exportPdf(file);
        at.settle();
        return test::outputOf(QStringLiteral("pdfdetach"), {QStringLiteral("-list"), file});
    };
    EXPECT_TRUE(attached().startsWith("0 embedded"));
    auto* data = page.findChild<QCheckBox*>();
    ASSERT_NE(data, nullptr);
    data->click();
    EXPECT_TRUE(attached().contains("display.json"));
}

TEST(HangPrint, TakesNoNonsenseFromTheSettings)
{
    WindowAtWork at;
    const PrintPage& page = open(at, HangPlace::Task::Print).print();
    for (const char* nonsense : {"0", "-5", "wide", "1e300", "nan", ""}) {
        SCOPED_TRACE(nonsense);
        for (const char* key : {"sheets/overlap", "sheets/margin", "sheets/ruler"})
            ProgramSettings().setValue(QString::fromLatin1(key), QString::fromLatin1(nonsense));
        EXPECT_EQ(page.wishes().scale, 1.0);
        EXPECT_GE(page.wishes().overlap, Mm(0));
        EXPECT_LE(page.wishes().overlap, Mm(40));
        EXPECT_GE(page.wishes().margin, Mm(0));
        EXPECT_LE(page.wishes().margin, Mm(40));
    }
    for (const char* key : {"sheets/overlap", "sheets/margin", "sheets/ruler"})
        ProgramSettings().remove(QString::fromLatin1(key));
}

} // namespace
} // namespace wainscot::ui
