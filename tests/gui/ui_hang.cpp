// Hang: check and wall.
#include <QApplication>
#include <QDateEdit>
#include <QDropEvent>
#include <QFile>
#include <QFileInfo>
#include <QLineEdit>
#include <QMimeData>
#include <QMouseEvent>
#include <QPainter>
#include <QPrinter>
#include <QProcess>
#include <QRegularExpression>
#include <QUrl>

#include <algorithm>

#include <gmock/gmock.h>

#include "app/jobs/made_files.h"
#include "app/ui/hang/hanging_list.h"
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

// To look at: WAINSCOT_KEEP=folder keeps how it looks.
void keepPicture(QWidget& widget, const char* name)
{
    const QString folder = qEnvironmentVariable("WAINSCOT_KEEP");
    if (!folder.isEmpty())
        widget.grab().save(folder + u'/' + QString::fromLatin1(name));
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
    const std::size_t steps = at.session().stepsDone().size();
    QTest::keyClick(height, Qt::Key_Return);
    EXPECT_EQ(at.session().stepsDone().size(), steps) << "nothing was typed";
    height->selectAll();
    QTest::keyClicks(height, QStringLiteral("3000"));
    QTest::keyClick(height, Qt::Key_Return);
    EXPECT_EQ(page.wall()->size.height, Mm(3000));
    EXPECT_EQ(page.wall()->fittings.front().place.bottom(), Mm(3000));
}

// A printer that makes a PDF; what pdftotext and pdfinfo read in it.
struct PrintedList {
    explicit PrintedList(QString path)
        : file(std::move(path))
        , printer(QPrinter::HighResolution)
    {
        printer.setOutputFormat(QPrinter::PdfFormat);
        printer.setOutputFileName(file);
        printer.setPageSize(QPageSize(QPageSize::A4));
        printer.setPageOrientation(QPageLayout::Landscape);
    }
    [[nodiscard]] std::string text() const
    {
        return test::outputOf(
            QStringLiteral("pdftotext"), {QStringLiteral("-layout"), file, QStringLiteral("-")})
            .simplified()
            .toStdString();
    }
    [[nodiscard]] std::string info() const
    {
        return test::outputOf(QStringLiteral("pdfinfo"), {file}).simplified().toStdString();
    }
    // Points, of any word.
    [[nodiscard]] double tallest() const
    {
        static const QRegularExpression word(QStringLiteral(
            "<word xMin=\"[^\"]*\" yMin=\"([^\"]*)\" xMax=\"[^\"]*\" yMax=\"([^\"]*)\""));
        auto each = word.globalMatch(QString::fromUtf8(test::outputOf(
            QStringLiteral("pdftotext"), {QStringLiteral("-bbox"), file, QStringLiteral("-")})));
        double most = 0;
        while (each.hasNext()) {
            const auto one = each.next();
            most = std::max(most, one.captured(2).toDouble() - one.captured(1).toDouble());
        }
        EXPECT_GT(most, 5);
        return most;
    }
    // To look at: WAINSCOT_KEEP=folder keeps it.
    ~PrintedList()
    {
        const QString keep = qEnvironmentVariable("WAINSCOT_KEEP");
        if (!keep.isEmpty())
            QFile::copy(file, keep + u'/' + QFileInfo(file).fileName());
    }
    QString file;
    QPrinter printer;
};

TEST(HangWall, PrintsAListToFollowWithAHammerOnOnePage)
{
    using ::testing::HasSubstr;
    WindowAtWork at;
    WallPage& page = measured(at);
    page.add(FittingKind::ExitSign);
    page.proposePlaces();
    at.settle();
    keepPicture(at.window(), "wall.png");
    PrintedList printed(at.file(QStringLiteral("list.pdf")));
    ASSERT_TRUE(page.printList(printed.printer));
    EXPECT_THAT(printed.info(), HasSubstr("Pages: 1 "));
    const HangingLine& line = page.view().plan().list.front();
    const std::string text = printed.text();
    for (const Mm length : {line.left(), line.right(), line.bottom, line.top, line.nails()[0].up}) {
        EXPECT_THAT(text, HasSubstr(std::to_string(qRound(length.value())) + " mm"));
        EXPECT_THAT(text, HasSubstr(inchesInWords(length).toStdString()));
    }
    EXPECT_THAT(text,
        HasSubstr(std::to_string(qRound(line.nails()[0].left.value())) + " and "
            + std::to_string(qRound(line.nails()[1].left.value())) + " mm"));
    EXPECT_THAT(text, HasSubstr("6000 by 2700 mm (236 1/4 in by 106 1/4 in)"));
    // The picture's own words are all on the page, and no larger than the heading.
    for (const char* one : {"exit sign", "Grown-ups' eyes", "Children's eyes", "5m"})
        EXPECT_THAT(text, HasSubstr(one));
    EXPECT_LE(printed.tallest(), 40);
    EXPECT_THAT(text, HasSubstr("Ask your"));
}

// A wall of thirty small panels: nothing is printed below the end of the paper.
TEST(HangWall, RemembersAListThatWasPrinted)
{
    WindowAtWork at;
    WallPage& wall = measured(at);
    wall.proposePlaces();
    wall.rememberPrinted();
    const auto made = madeFilesIn(at.session().folder());
    ASSERT_EQ(made.size(), 1U);
    EXPECT_EQ(made.front().kind, MadeFileKind::PrintedHangingList);
    EXPECT_EQ(made.front().name, wall.wall()->name);
    EXPECT_FALSE(made.front().words.empty());
}

TEST(HangWall, PrintsALongListOnMorePages)
{
    using ::testing::HasSubstr;
    const WindowAtWork at;
    Wall wall;
    wall.name = QStringLiteral("Long wall");
    WallPlan plan = planOf(Book{}, wall);
    for (int i = 0; i < 30; ++i) {
        HangingLine line;
        line.name = QStringLiteral("Corridor, panel %1").arg(i + 1);
        line.size = {Mm(150), Mm(200)};
        line.place = {Mm(20.0 + 190 * i), Mm(1300), Mm(150), Mm(200)};
        line.bottom = Mm(1200);
        line.top = Mm(1400);
        plan.list.push_back(line);
    }
    PrintedList printed(at.file(QStringLiteral("long.pdf")));
    ASSERT_TRUE(
        HangingList(wall, plan, [](PanelId, int) { return QPixmap(); }).print(printed.printer));
    EXPECT_THAT(printed.info(), HasSubstr("Pages: 3 "));
    const std::string text = printed.text();
    for (int i = 0; i < 30; ++i)
        EXPECT_THAT(text, HasSubstr("Corridor, panel " + std::to_string(i + 1) + " "));
    EXPECT_THAT(text, HasSubstr("Ask your"));
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

} // namespace
} // namespace wainscot::ui
