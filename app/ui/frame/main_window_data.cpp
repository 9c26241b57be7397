// Everything in the book as tables that any program reads, and back.
#include "app/ui/frame/main_window.h"

#include <QDir>
#include <QFileDialog>
#include <QMessageBox>
#include <QPushButton>

#include "app/jobs/data_job.h"
#include "app/jobs/made_files.h"
#include "app/jobs/sentences.h"

namespace wainscot::ui {

void MainWindow::askTakeDataOut()
{
    if (!m_session.isOpen())
        return;
    QMessageBox box(QMessageBox::NoIcon,
        tr("Take the data out"),
        tr("Everything in this book, as JSON, as CSV files and as pictures."),
        QMessageBox::NoButton,
        this);
    box.setInformativeText(dataCaution());
    const QAbstractButton* go = box.addButton(tr("Choose a folder..."), QMessageBox::AcceptRole);
    box.addButton(tr("Not now"), QMessageBox::RejectRole);
    box.exec();
    if (box.clickedButton() != go)
        return;
    const QString name = QDir(m_session.folder()).dirName();
    const QString folder = QFileDialog::getSaveFileName(this,
        tr("Where the data shall be"),
        documents() + QLatin1Char('/') + tr("%1, data").arg(name));
    if (!folder.isEmpty())
        takeDataOut(folder);
}

void MainWindow::takeDataOut(const QString& folder)
{
    m_compose->endWriting(true);
    m_work.start<DataReport>(
        tr("Taking the data out"),
        [job = TakeDataOutJob{m_session.folder(), folder, {}}](
            const JobRun& run) { return job.run(run); },
        [this, folder, from = m_session.folder()](const Result<DataReport>& result) {
            if (result)
                rememberMade(from, madeFileOf(MadeFileKind::Data, folder, m_session.today()));
            m_sill->announce(!result
                    ? sentenceFor(result.error())
                    : tr("The data is in %1, with %2 pictures. %3")
                          .arg(QDir::toNativeSeparators(folder))
                          .arg(result->pictures)
                          .arg(result->problems.isEmpty() ? tr("It is not cleared for anybody.")
                                                          : result->problems.front()));
        });
}

void MainWindow::askBringDataIn()
{
    const QString from =
        QFileDialog::getExistingDirectory(this, tr("The folder of the data"), documents());
    if (from.isEmpty())
        return;
    const QString folder = QFileDialog::getSaveFileName(
        this, tr("Where the book shall be"), documents() + QLatin1Char('/') + tr("My class"));
    if (!folder.isEmpty())
        bringDataIn(from, folder);
}

void MainWindow::bringDataIn(const QString& from, const QString& folder)
{
    const bool hasJson = QFileInfo::exists(from + QStringLiteral("/data.json"));
    m_work.start<DataReport>(
        tr("Bringing the data in"),
        [job = BringDataInJob{from, folder, hasJson ? DataForm::Json : DataForm::Csv}](
            const JobRun& run) { return job.run(run); },
        [this, folder](const Result<DataReport>& result) {
            if (!result) {
                m_sill->announce(sentenceFor(result.error()));
                return;
            }
            openBook(folder);
            m_notSaved = result->problems;
            refreshPlaces();
        });
}

} // namespace wainscot::ui
