// What goes out of the book: PDF for a print shop, sheets for the school's printer, pictures.
#include "app/ui/frame/main_window.h"

#include <QDir>
#include <QFileDialog>
#include <QMessageBox>
#include <QPushButton>

#include <algorithm>

#include "app/jobs/export_job.h"
#include "app/jobs/made_files.h"
#include "app/jobs/sentences.h"
#include "app/ui/hang/pictures_dialog.h"
#include "core/model/kind_words.h"
#include "core/permit/cleared.h"

namespace wainscot::ui {

namespace {

constexpr Mm kShopBleed(3); // common practice, no source

// Of what is not there; a name that is not said is no loss.
QString firstLeftOut(const std::vector<LeftOut>& leftOut)
{
    const auto at = std::find_if(leftOut.begin(), leftOut.end(), [](const LeftOut& left) {
        return left.what != QLatin1String("name");
    });
    return at == leftOut.end() ? QString() : at->why;
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
    // A file goes out by its name, too.
    const Display& display = *m_session.display();
    const QString name = PermissionRules(m_session.book(), display, m_session.today())
                             .withPermittedNames(display.name, false);
    return QFileDialog::getSaveFileName(
        this, heading, documents() + QLatin1Char('/') + name + suffix, filter);
}

// Of a file for each panel only the first was asked about.
bool MainWindow::mayReplaceFurther(const QString& file)
{
    const int panels = int(panelsOf(m_session.book(), m_session.display()->id).size());
    const QStringList there = furtherFilesThere(file, panels);
    if (there.isEmpty())
        return true;
    QMessageBox box(QMessageBox::NoIcon,
        tr("A file for each panel"),
        tr("These files are there already: %1").arg(there.join(QStringLiteral(", "))),
        QMessageBox::NoButton,
        this);
    const QPushButton* replace = box.addButton(tr("Replace them"), QMessageBox::AcceptRole);
    box.addButton(tr("Leave everything"), QMessageBox::RejectRole);
    box.exec();
    return box.clickedButton() == replace;
}

// Runs an export and says where it is and what it left out.
template <class Job> void MainWindow::startExport(const QString& doing, const Job& job)
{
    m_work.start<ExportOutcome>(
        doing,
        [job, book = m_session.book()](const JobRun& run) { return job.run(book, run); },
        [this, from = m_session.folder()](const Result<ExportOutcome>& result) {
            if (!result) {
                m_sill->announce(sentenceFor(result.error()));
                return;
            }
            rememberMade(from, result->made);
            const QString where = QDir::toNativeSeparators(result->files.value(0));
            QString said = result->files.size() > 1
                ? MainWindow::tr("%1 files are there, the first is %2.")
                      .arg(result->files.size())
                      .arg(where)
                : MainWindow::tr("It is at %1.").arg(where);
            const QString why = firstLeftOut(result->leftOut);
            if (!why.isEmpty())
                said += QLatin1Char(' ') + MainWindow::tr("Left out: %1").arg(why);
            m_sill->announce(said);
        });
}

void MainWindow::askExport()
{
    if (m_session.display() == nullptr)
        return;
    const QString file = askFile(tr("Make the PDF"), QStringLiteral(".pdf"), tr("PDF (*.pdf)"));
    if (!file.isEmpty() && (!m_hang->print().fileForEach() || mayReplaceFurther(file)))
        exportPdf(file);
}

void MainWindow::exportPdf(const QString& file)
{
    if (m_session.display() == nullptr)
        return;
    ExportPdfJob job = pdfJob(file);
    job.withData = m_hang->print().withData();
    job.fileForEach = m_hang->print().fileForEach();
    startExport(tr("Making the PDF"), job);
}

void MainWindow::askShopPdf()
{
    if (m_session.display() == nullptr)
        return;
    const QString file = askFile(
        tr("A PDF that is trimmed"), tr(" trimmed") + QStringLiteral(".pdf"), tr("PDF (*.pdf)"));
    if (!file.isEmpty() && (!m_hang->print().trimmedFileForEach() || mayReplaceFurther(file)))
        exportShopPdf(file);
}

void MainWindow::exportShopPdf(const QString& file)
{
    if (m_session.display() == nullptr)
        return;
    ExportPdfJob job = pdfJob(file);
    job.fileForEach = m_hang->print().trimmedFileForEach();
    job.bleed = kShopBleed;
    job.marks = true;
    startExport(tr("Making the PDF"), job);
}

void MainWindow::askSheets()
{
    if (m_session.display() == nullptr)
        return;
    const QString paper = m_hang->print().paper();
    const QString file = askFile(
        tr("On sheets"), tr(" on %1").arg(paper) + QStringLiteral(".pdf"), tr("PDF (*.pdf)"));
    if (!file.isEmpty())
        exportSheets(file, m_hang->print().wishes());
}

void MainWindow::exportSheets(const QString& file, const QString& paper)
{
    m_hang->print().setPaper(paper);
    exportSheets(file, m_hang->print().wishes());
}

void MainWindow::exportSheets(const QString& file, const SheetWishes& wishes)
{
    if (m_session.display() == nullptr)
        return;
    ExportPdfJob job = pdfJob(file);
    job.sheets = wishes;
    startExport(tr("Cutting the panels into sheets"), job);
}

void MainWindow::askPictures()
{
    if (m_session.display() == nullptr)
        return;
    const PieceId piece = m_compose->canvas().inHand();
    const Piece* own = m_session.book().pieces.find(piece);
    PicturesDialog dialog(own != nullptr ? piece : PieceId(),
        own != nullptr ? tr("Only the piece in the hand: %1").arg(inSentence(own->kind))
                       : QString(),
        this);
    if (dialog.exec() != QDialog::Accepted)
        return;
    ExportPictureJob job = dialog.job();
    const bool jpeg = job.form == PictureForm::Jpeg;
    job.file = askFile(tr("As pictures"),
        jpeg ? QStringLiteral(".jpg") : QStringLiteral(".png"),
        jpeg ? tr("Pictures (*.jpg)") : tr("Pictures (*.png)"));
    if (!job.file.isEmpty() && (job.piece.isValid() || mayReplaceFurther(job.file)))
        exportPictures(job);
}

void MainWindow::exportPictures(ExportPictureJob job)
{
    if (m_session.display() == nullptr)
        return;
    job.display = m_session.display()->name;
    job.picturesFolder = m_session.picturesFolder();
    startExport(
        job.piece.isValid() ? tr("Making the picture") : tr("Making pictures of the panels"), job);
}

} // namespace wainscot::ui
