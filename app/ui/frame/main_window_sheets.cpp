// Sheets to answer on: asked for, made as a PDF or sent to the printer.
#include <QDir>
#include <QFileDialog>
#include <QPageSize>
#include <QPainter>
#include <QPrintDialog>
#include <QPrinter>

#include "app/jobs/made_files.h"
#include "app/jobs/sentences.h"
#include "app/ui/frame/main_window.h"
#include "app/ui/gather/sheets_dialog.h"
#include "app/ui/hang/sheet_printer.h"

namespace wainscot::ui {

namespace {

void setPaper(QPrinter& printer, SizeMm page)
{
    const bool across = page.width > page.height;
    const SizeMm upright = across ? page.transposed() : page;
    printer.setPageSize(
        QPageSize(QSizeF(upright.width.value(), upright.height.value()), QPageSize::Millimeter));
    printer.setPageOrientation(across ? QPageLayout::Landscape : QPageLayout::Portrait);
    printer.setFullPage(true);
}

} // namespace

void MainWindow::askAnswerSheets()
{
    if (m_session.experience() == nullptr) {
        m_sill->announce(tr("Say first what happened; its questions stand on the sheets."));
        return;
    }
    SheetsDialog dialog(m_session, m_compose->shelf(), this);
    if (dialog.exec() != QDialog::Accepted)
        return;
    if (dialog.wantsPrinter()) {
        QPrinter printer(QPrinter::HighResolution);
        setPaper(printer, dialog.pages().front().size);
        QPrintDialog ask(&printer, this);
        if (ask.exec() != QDialog::Accepted)
            return;
        const bool printed = printAnswerSheets(printer, dialog.pages());
        if (printed)
            rememberPrinted(dialog.job());
        m_sill->announce(printed ? tr("Sent to the printer.") : tr("The printer does not answer."));
        return;
    }
    SheetsJob job = dialog.job();
    job.file = QFileDialog::getSaveFileName(this,
        tr("Sheets to answer on"),
        documents() + QLatin1Char('/') + tr("Sheets") + QStringLiteral(".pdf"),
        tr("PDF (*.pdf)"));
    if (!job.file.isEmpty())
        makeAnswerSheets(job);
}

void MainWindow::makeAnswerSheets(SheetsJob job)
{
    job.picturesFolder = m_session.picturesFolder();
    m_work.start<SheetsOutcome>(
        tr("Making the sheets"),
        [job, book = m_session.book()](const JobRun& run) { return job.run(book, run); },
        [this, from = m_session.folder()](const Result<SheetsOutcome>& result) {
            if (result)
                rememberMade(from, result->made);
            m_sill->announce(result ? tr("%1 to answer on. They are at %2.")
                                          .arg(counted(result->pages, tr("1 page"), tr("%1 pages")),
                                              QDir::toNativeSeparators(result->file))
                                    : sentenceFor(result.error()));
        });
}

void MainWindow::rememberPrinted(const SheetsJob& job)
{
    if (const auto sheets = job.cleared(m_session.book(), m_session.today()))
        rememberMade(m_session.folder(),
            madeFileOf(m_session.book(),
                *sheets,
                MadeFileKind::PrintedAnswerSheets,
                job.experience,
                m_session.today()));
}

bool MainWindow::printAnswerSheets(QPrinter& printer, const std::vector<DisplayList>& pages)
{
    if (pages.empty())
        return false;
    PrintedPictures pictures(m_session);
    setPaper(printer, pages.front().size);
    QPainter painter;
    if (!painter.begin(&printer))
        return false;
    const double dots = printer.resolution() / kMmPerInch;
    bool first = true;
    for (const DisplayList& page : pages) {
        setPaper(printer, page.size); // counts from the next page on
        if (!first && !printer.newPage())
            return false;
        first = false;
        painter.resetTransform();
        painter.scale(dots, dots);
        if (!paint(painter, page, pictures, PaintPurpose::Output))
            return false;
    }
    return painter.end();
}

} // namespace wainscot::ui
