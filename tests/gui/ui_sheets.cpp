// Sheets to the school's printer: one that is printed again is the one of the whole run.
#include <QDir>
#include <QFileInfo>
#include <QImage>
#include <QPrinter>
#include <QProcess>

#include <gtest/gtest.h>

#include "app/jobs/program_settings.h"
#include "app/ui/session/sheet_settings.h"
#include "support/window_at_work.h"

namespace wainscot::ui {
namespace {

class Sheets : public ::testing::Test {
protected:
    Sheets()
    {
        ProgramSettings().remove(QStringLiteral("sheets"));
        keep(SheetSetting::Paper, QStringLiteral("A3"));
        at.propose();
        at.window().go(Place::Hang);
        at.settle();
    }
    ~Sheets() override { ProgramSettings().remove(QStringLiteral("sheets")); }

    // The pages of a PDF of this name as pictures.
    QList<QImage> drawn(const QString& name)
    {
        QProcess draw;
        draw.start(QStringLiteral("pdftoppm"),
            {QStringLiteral("-r"),
                QStringLiteral("60"),
                QStringLiteral("-png"),
                at.file(name + QStringLiteral(".pdf")),
                at.file(name)});
        EXPECT_TRUE(draw.waitForFinished(60000) && draw.exitCode() == 0);
        const QDir folder = QFileInfo(at.file(name)).dir();
        QList<QImage> pages;
        const QStringList files =
            folder.entryList({name + QStringLiteral("-*.png")}, QDir::Files, QDir::Name);
        for (const QString& file : files)
            pages << QImage(folder.filePath(file));
        return pages;
    }

    // All sheets, or one (from 1), as the printer draws them.
    QList<QImage> printed(const QString& name, int only = 0)
    {
        QPrinter printer(QPrinter::HighResolution);
        printer.setOutputFormat(QPrinter::PdfFormat);
        printer.setOutputFileName(at.file(name + QStringLiteral(".pdf")));
        if (only > 0)
            printer.setFromTo(only, only);
        EXPECT_TRUE(at.window().printSheets(printer, keptSheets()));
        return drawn(name);
    }

    WindowAtWork at;
};

TEST_F(Sheets, PrintedAgainIsTheSheetOfTheWholeRun)
{
    const QList<QImage> all = printed(QStringLiteral("all"));
    ASSERT_EQ(all.size(), at.window().hang().print().sheets() + 1) << "how they join comes first";
    ASSERT_GE(all.size(), 4);
    for (const int number : {1, 3, int(all.size())}) {
        const QList<QImage> one = printed(QStringLiteral("one%1").arg(number), number);
        ASSERT_EQ(one.size(), 1) << number;
        EXPECT_EQ(one.front(), all[number - 1]) << number;
        EXPECT_NE(one.front(), all[number % all.size()]) << "sheets differ, or this proves nothing";
    }
}

// The printer draws what the PDF holds: the same parts, marks, names and sentences.
TEST_F(Sheets, OfThePrinterAreTheSheetsOfThePdf)
{
    const QList<QImage> printer = printed(QStringLiteral("printer"));
    ExportPdfJob job;
    job.display = at.session().display()->name;
    job.file = at.file(QStringLiteral("pdf.pdf"));
    job.picturesFolder = at.session().picturesFolder();
    job.sheets = keptSheets();
    ASSERT_TRUE(job.run(at.book(), {}).ok());
    const QList<QImage> pdf = drawn(QStringLiteral("pdf"));
    ASSERT_EQ(printer.size(), pdf.size());
    const auto difference = [](const QImage& a, const QImage& b) {
        const QImage one = a.convertToFormat(QImage::Format_Grayscale8);
        const QImage other = b.convertToFormat(QImage::Format_Grayscale8);
        double sum = 0;
        for (int y = 0; y < qMin(one.height(), other.height()); ++y) {
            for (int x = 0; x < qMin(one.width(), other.width()); ++x)
                sum += qAbs(int(one.constScanLine(y)[x]) - int(other.constScanLine(y)[x]));
        }
        return sum / (double(one.width()) * one.height());
    };
    for (int i = 0; i < pdf.size(); ++i) {
        ASSERT_LE(qAbs(printer[i].width() - pdf[i].width()), 1) << i;
        const double same = difference(printer[i], pdf[i]);
        EXPECT_LT(same, 0.1) << i;
        EXPECT_GT(difference(printer[i], pdf[(i + 1) % pdf.size()]), 10 * same) << i;
    }
}

} // namespace
} // namespace wainscot::ui
