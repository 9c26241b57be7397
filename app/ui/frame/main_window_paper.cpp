// What goes out of the book: PDF for a print shop, sheets for the school's printer, pictures.
#include "app/ui/frame/main_window.h"

#include <QDir>
#include <QFileDialog>
#include <QInputDialog>

#include "app/jobs/export_job.h"
#include "app/jobs/sentences.h"
#include "app/ui/kit/settings.h"
#include "core/base/paper_size.h"
#include "layout/paper/sheets.h"

namespace wainscot::ui {

namespace {

const QString kPaperKey = QStringLiteral("sheets/paper");
constexpr Mm kShopBleed(3); // common practice, no source

QString usualPaper()
{
    const bool letter = QLocale().measurementSystem() == QLocale::ImperialUSSystem;
    return ProgramSettings()
        .value(kPaperKey, letter ? QStringLiteral("Letter") : QStringLiteral("A4"))
        .toString();
}

} // namespace

ExportPdfJob MainWindow::pdfJob(const QString& file) const
{
    ExportPdfJob job;
    job.display = m_session.display()->name;
    job.file = file;
    job.picturesFolder = m_session.picturesFolder();
    return job;
}

QString MainWindow::askFile(const QString& heading, const QString& suffix, const QString& filter)
{
    return QFileDialog::getSaveFileName(
        this, heading, documents() + QLatin1Char('/') + m_session.display()->name + suffix, filter);
}

// Runs an export and says where it is and what it left out.
template <class Job> void MainWindow::startExport(const QString& doing, const Job& job)
{
    m_work.start<ExportOutcome>(
        doing,
        [job, book = m_session.book()](const JobRun& run) { return job.run(book, run); },
        [this](const Result<ExportOutcome>& result) {
            if (!result) {
                m_sill->announce(sentenceFor(result.error()));
                return;
            }
            const QString where = QDir::toNativeSeparators(result->files.value(0));
            QString said = result->files.size() > 1
                ? tr("%1 files are there, the first is %2.").arg(result->files.size()).arg(where)
                : tr("It is at %1.").arg(where);
            if (!result->leftOut.empty())
                said += QLatin1Char(' ') + tr("Left out: %1").arg(result->leftOut.front().why);
            m_sill->announce(said);
        });
}

void MainWindow::askExport()
{
    if (m_session.display() == nullptr)
        return;
    const QString file = askFile(tr("Make the PDF"), QStringLiteral(".pdf"), tr("PDF (*.pdf)"));
    if (!file.isEmpty())
        exportPdf(file);
}

void MainWindow::exportPdf(const QString& file)
{
    if (m_session.display() != nullptr)
        startExport(tr("Making the PDF"), pdfJob(file));
}

void MainWindow::askShopPdf()
{
    if (m_session.display() == nullptr)
        return;
    const QString file = askFile(
        tr("A PDF that is trimmed"), tr(" trimmed") + QStringLiteral(".pdf"), tr("PDF (*.pdf)"));
    if (file.isEmpty())
        return;
    ExportPdfJob job = pdfJob(file);
    job.bleed = kShopBleed;
    job.marks = true;
    startExport(tr("Making the PDF"), job);
}

void MainWindow::askSheets()
{
    if (m_session.display() == nullptr)
        return;
    const QStringList papers{QStringLiteral("A4"),
        QStringLiteral("A3"),
        QStringLiteral("Letter"),
        QStringLiteral("Legal"),
        QStringLiteral("Tabloid")};
    bool chosen = false;
    const QString paper = QInputDialog::getItem(this,
        tr("On sheets"),
        tr("The paper in the printer:"),
        papers,
        int(papers.indexOf(usualPaper())),
        false,
        &chosen);
    if (!chosen)
        return;
    const QString file = askFile(
        tr("On sheets"), tr(" on %1").arg(paper) + QStringLiteral(".pdf"), tr("PDF (*.pdf)"));
    if (!file.isEmpty())
        exportSheets(file, paper);
}

void MainWindow::exportSheets(const QString& file, const QString& paper)
{
    const auto size = paperSizeFromText(paper);
    if (m_session.display() == nullptr || !size)
        return;
    ProgramSettings().setValue(kPaperKey, paper);
    ExportPdfJob job = pdfJob(file);
    job.sheets = SheetWishes{*size};
    startExport(tr("Cutting the panels into sheets"), job);
    refreshPlaces();
}

QString MainWindow::sheetsInWords() const
{
    const auto paper = paperSizeFromText(usualPaper());
    const Display* display = m_session.display();
    if (display == nullptr || !paper)
        return {};
    SheetOptions options;
    options.paper = *paper;
    const auto plan = planSheets(display->panelSize, options);
    if (!plan)
        return {};
    const int panels = int(panelsOf(m_session.book(), display->id).size());
    return tr("%1: %2 rows of %3 for each panel, %4 sheets in all, and one that shows how they go "
              "together.")
        .arg(usualPaper())
        .arg(plan->rows)
        .arg(plan->columns)
        .arg(plan->count() * panels);
}

void MainWindow::askPictures()
{
    if (m_session.display() == nullptr)
        return;
    const QString file = askFile(tr("As pictures"), QStringLiteral(".png"), tr("Pictures (*.png)"));
    if (file.isEmpty())
        return;
    ExportPngJob job;
    job.display = m_session.display()->name;
    job.file = file;
    job.picturesFolder = m_session.picturesFolder();
    startExport(tr("Making pictures of the panels"), job);
}

} // namespace wainscot::ui
