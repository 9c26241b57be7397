// Hang: check, wall, print.
#include <QApplication>
#include <QCheckBox>
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
#include "app/jobs/program_settings.h"
#include "app/ui/hang/hanging_list.h"
#include "app/ui/session/sheet_settings.h"
#include "core/base/paper_size.h"
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

// One that is seen.
QCheckBox* boxCalled(const QWidget& page, const QString& text)
{
    for (QCheckBox* one : page.findChildren<QCheckBox*>()) {
        if (one->text() == text && one->isVisibleTo(&page))
            return one;
    }
    return nullptr;
}

// A copy of the first behind it, and back to the first in Hang.
void addPanel(WindowAtWork& at)
{
    const PanelId first = at.session().panel()->id;
    at.compose().actions().panelOnceMore->trigger();
    at.settle();
    at.session().choosePanel(first);
    at.window().go(Place::Hang);
    at.settle();
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
    EXPECT_TRUE(info.readAllStandardOutput().simplified().contains("Pages: 9"))
        << "8, and how they join";
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
    QCheckBox* data = boxCalled(page, QStringLiteral("With what the panels say, as data"));
    ASSERT_NE(data, nullptr);
    data->click();
    EXPECT_TRUE(attached().contains("display.json"));
}

TEST(HangPrint, MakesAFileForEachPanelWhereItIsAskedFor)
{
    WindowAtWork at;
    PrintPage& page = open(at, HangPlace::Task::Print).print();
    const QString name = QStringLiteral("A file for each panel");
    EXPECT_EQ(boxCalled(page, name), nullptr) << "there is one panel";
    addPanel(at);
    EXPECT_FALSE(page.fileForEach());
    QCheckBox* each = boxCalled(page, name);
    ASSERT_NE(each, nullptr);
    keepPicture(at.window(), "print-each.png");
    const auto pages = [&](const QString& file) {
        const QByteArray info =
            test::outputOf(QStringLiteral("pdfinfo"), {at.file(file)}).simplified();
        const qsizetype begins = info.indexOf("Pages: ");
        return begins < 0 ? 0 : info.mid(begins + 7, 1).toInt();
    };
    const auto write = [&](const QString& file, bool trimmed) {
        if (trimmed)
            at.window().exportShopPdf(at.file(file));
        else
            at.window().exportPdf(at.file(file));
        at.settle();
    };
    write(QStringLiteral("kept.pdf"), false);
    EXPECT_EQ(pages(QStringLiteral("kept.pdf")), 2);
    EXPECT_TRUE(furtherFilesThere(at.file(QStringLiteral("kept.pdf")), 2).isEmpty());
    for (QCheckBox* one : page.findChildren<QCheckBox*>()) {
        if (one->text() == name)
            one->click();
    }
    EXPECT_TRUE(page.fileForEach());
    EXPECT_TRUE(page.trimmedFileForEach());
    for (const bool trimmed : {false, true}) {
        const QString base = trimmed ? QStringLiteral("shop") : QStringLiteral("kept");
        write(base + QStringLiteral(".pdf"), trimmed);
        EXPECT_EQ(pages(base + QStringLiteral(".pdf")), 1);
        EXPECT_EQ(pages(base + QStringLiteral("-2.pdf")), 1);
        EXPECT_EQ(furtherFilesThere(at.file(base + QStringLiteral(".pdf")), 2),
            QStringList{base + QStringLiteral("-2.pdf")})
            << "whoever replaces the first is asked about the others";
    }
}

// Each printer keeps what is set for it; the first time, the system says what it can do.
TEST(HangPrint, RemembersEachPrinterByItself)
{
    WindowAtWork at;
    const auto forget = [] {
        for (const char* group : {"sheets", "printers"})
            ProgramSettings().remove(QString::fromLatin1(group));
    };
    forget();
    PrintPage& page = open(at, HangPlace::Task::Print).print();
    page.setPaper(QStringLiteral("A4"));
    const QString office = QStringLiteral("Office/2nd floor & cellar");
    const QString hall = QStringLiteral("Hall");
    page.setPrinters({[&] {
                          return QStringList{office, hall};
                      },
        [&](const QString& name) {
            return name == office ? PrinterFacts{name, {Mm(297), Mm(420)}, Mm(4.2)}
                                  : PrinterFacts{name, {Mm(90), Mm(140)}, Mm(12.7)};
        }});
    page.setPrinter(office);
    EXPECT_EQ(page.paper(), QStringLiteral("A3")) << "it lies in the printer";
    EXPECT_EQ(page.wishes().margin, Mm(5)) << "the least that is offered and reaches";
    page.setRuler(Mm(98));
    page.setPrinter(hall);
    EXPECT_EQ(page.paper(), QStringLiteral("A4")) << "its own paper is none for sheets";
    EXPECT_EQ(page.wishes().margin, Mm(13));
    EXPECT_EQ(page.wishes().scale, 1.0) << "how true another one prints says nothing of it";
    page.setPaper(QStringLiteral("Letter"));
    page.setPrinter(office);
    EXPECT_EQ(page.paper(), QStringLiteral("A3"));
    EXPECT_NEAR(page.wishes().scale, 100.0 / 98, 1e-12);
    keep(SheetSetting::Margin, QStringLiteral("10"));
    page.setPrinter(office);
    EXPECT_EQ(page.wishes().margin, Mm(10)) << "what somebody set stays";
    page.setPrinter({});
    EXPECT_EQ(page.paper(), QStringLiteral("A4"));
    EXPECT_EQ(page.wishes().margin, Mm(7));
    EXPECT_EQ(page.wishes().scale, 1.0);
    EXPECT_EQ(keptSheetsOf(hall)->paper, *paperSizeFromText(QStringLiteral("Letter")));
    EXPECT_FALSE(keptSheetsOf(QStringLiteral("Cellar")).has_value());
    forget();
}

TEST(HangPrint, LeavesOutSheetsThatStayWhite)
{
    WindowAtWork at;
    for (const char* group : {"sheets", "printers"})
        ProgramSettings().remove(QString::fromLatin1(group));
    PrintPage& page = open(at, HangPlace::Task::Print).print();
    page.setPaper(QStringLiteral("A4"));
    const int all = page.sheets();
    auto* box = [&page]() -> QCheckBox* {
        for (QCheckBox* one : page.findChildren<QCheckBox*>()) {
            if (one->text().contains(QStringLiteral("white")))
                return one;
        }
        return nullptr;
    }();
    ASSERT_NE(box, nullptr);
    ASSERT_TRUE(box->isVisible()) << "the panel has white at its right edge";
    box->click();
    const int some = page.sheets();
    EXPECT_LT(some, all);
    QPrinter printer(QPrinter::ScreenResolution);
    printer.setOutputFormat(QPrinter::PdfFormat);
    printer.setOutputFileName(at.file(QStringLiteral("some.pdf")));
    ASSERT_TRUE(at.window().printSheets(printer, page.wishes()));
    QProcess info;
    info.start(QStringLiteral("pdfinfo"), {at.file(QStringLiteral("some.pdf"))});
    ASSERT_TRUE(info.waitForFinished());
    EXPECT_TRUE(info.readAllStandardOutput().simplified().contains(
        "Pages: " + QByteArray::number(some + 1)));
    box->click();
    EXPECT_EQ(page.sheets(), all);
    ProgramSettings().remove(QStringLiteral("sheets"));
}

TEST(HangPrint, WarnsOfAMarginThePrinterCannotReach)
{
    WindowAtWork at;
    PrintPage& page = open(at, HangPlace::Task::Print).print();
    page.setPrinters({[] { return QStringList{QStringLiteral("Hall")}; },
        [](const QString& name) {
            return PrinterFacts{name, {Mm(210), Mm(297)}, Mm(6.4)};
        }});
    const auto warned = [&page] {
        const auto labels = page.findChildren<QLabel*>();
        return std::any_of(labels.begin(), labels.end(), [](const QLabel* label) {
            return label->isVisible() && label->text().contains(QStringLiteral("6.4 mm"));
        });
    };
    page.setPrinter(QStringLiteral("Hall"));
    EXPECT_FALSE(warned());
    keep(SheetSetting::Margin, QStringLiteral("4"));
    page.setPrinter(QStringLiteral("Hall"));
    EXPECT_TRUE(warned());
    page.setPrinter({});
    EXPECT_FALSE(warned());
    ProgramSettings().remove(QStringLiteral("printers"));
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
