// Hang, Print: what it says of the sheets, what is set for the printers, and the ways out.
#include <QCheckBox>
#include <QFile>
#include <QFileInfo>
#include <QPrinter>
#include <QProcess>

#include <algorithm>

#include <gmock/gmock.h>

#include "app/jobs/program_settings.h"
#include "app/ui/session/sheet_settings.h"
#include "core/base/paper_size.h"
#include "support/window_at_work.h"
#include "tests/support/media_pictures.h"

namespace wainscot::ui {
namespace {

HangPlace& open(WindowAtWork& at)
{
    at.propose();
    at.window().go(Place::Hang);
    at.window().hang().setTask(HangPlace::Task::Print);
    at.settle();
    return at.window().hang();
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

TEST(HangPrint, SaysHowManySheetsAndPrintsAsMany)
{
    WindowAtWork at;
    for (const char* key : {"sheets/paper", "sheets/overlap", "sheets/margin", "sheets/ruler"})
        ProgramSettings().remove(QString::fromLatin1(key));
    PrintPage& page = open(at).print();
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
    PrintPage& page = open(at).print();
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
    PrintPage& page = open(at).print();
    const QString name = QStringLiteral("A file for each panel");
    EXPECT_EQ(boxCalled(page, name), nullptr) << "there is one panel";
    addPanel(at);
    EXPECT_FALSE(page.fileForEach());
    QCheckBox* each = boxCalled(page, name);
    ASSERT_NE(each, nullptr);
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
    PrintPage& page = open(at).print();
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
    forget();
}

// What is set for a printer counts when the system's dialog turns to it, not when the sheets were
// shown for any printer and it happens to be the usual one.
TEST(HangPrint, KeepsWhatWasShownUnlessTheDialogTurnsToAnotherPrinter)
{
    WindowAtWork at;
    const auto forget = [] {
        for (const char* group : {"sheets", "printers"})
            ProgramSettings().remove(QString::fromLatin1(group));
    };
    forget();
    const QString hall = QStringLiteral("Hall");
    const QString office = QStringLiteral("Office");
    PrintPage& page = open(at).print();
    page.setPrinters({[&] { return QStringList{hall}; },
        [](const QString& name) {
            return PrinterFacts{name, {Mm(297), Mm(420)}, Mm(5)};
        }});
    page.setPrinter(hall);
    page.setPrinter({});
    page.setPaper(QStringLiteral("Letter"));
    const SheetWishes shown = page.wishes();
    const SizeMm letter = *paperSizeFromText(QStringLiteral("Letter"));
    const SizeMm a3 = *paperSizeFromText(QStringLiteral("A3"));
    EXPECT_EQ(sheetsAfterTurning(shown, hall, hall).paper, letter) << "it is the usual one";
    EXPECT_EQ(sheetsAfterTurning(shown, office, hall).paper, a3);
    EXPECT_EQ(sheetsAfterTurning(shown, hall, office).paper, letter) << "nothing is set for it";
    EXPECT_EQ(sheetsAfterTurning(shown, hall, {}).paper, letter) << "to a file";
    forget();
}

TEST(HangPrint, LeavesOutSheetsThatStayWhite)
{
    WindowAtWork at;
    for (const char* group : {"sheets", "printers"})
        ProgramSettings().remove(QString::fromLatin1(group));
    PrintPage& page = open(at).print();
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
    PrintPage& page = open(at).print();
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
    const PrintPage& page = open(at).print();
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
