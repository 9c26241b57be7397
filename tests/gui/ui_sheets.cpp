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

    // All sheets, or one (from 1), as a PDF; its pages as pictures.
    QList<QImage> printed(const QString& name, int only = 0)
    {
        QPrinter printer(QPrinter::HighResolution);
        printer.setOutputFormat(QPrinter::PdfFormat);
        printer.setOutputFileName(at.file(name + QStringLiteral(".pdf")));
        if (only > 0)
            printer.setFromTo(only, only);
        EXPECT_TRUE(at.window().printSheets(printer, keptSheets()));
        QProcess draw;
        draw.start(QStringLiteral("pdftoppm"),
            {QStringLiteral("-r"),
                QStringLiteral("60"),
                QStringLiteral("-png"),
                at.file(name + QStringLiteral(".pdf")),
                at.file(name)});
        EXPECT_TRUE(draw.waitForFinished(60000) && draw.exitCode() == 0);
        QDir folder = QFileInfo(at.file(name)).dir();
        QList<QImage> pages;
        const QStringList files =
            folder.entryList({name + QStringLiteral("-*.png")}, QDir::Files, QDir::Name);
        for (const QString& file : files)
            pages << QImage(folder.filePath(file));
        return pages;
    }

    WindowAtWork at;
};

TEST_F(Sheets, PrintedAgainIsTheSheetOfTheWholeRun)
{
    const QList<QImage> all = printed(QStringLiteral("all"));
    ASSERT_EQ(all.size(), at.window().hang().print().sheets());
    ASSERT_GE(all.size(), 4);
    for (const int number : {1, 3, int(all.size())}) {
        const QList<QImage> one = printed(QStringLiteral("one%1").arg(number), number);
        ASSERT_EQ(one.size(), 1) << number;
        EXPECT_EQ(one.front(), all[number - 1]) << number;
        EXPECT_NE(one.front(), all[number % all.size()]) << "sheets differ, or this proves nothing";
    }
}

} // namespace
} // namespace wainscot::ui
