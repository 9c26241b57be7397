// A book as one file to carry, and back.
#include "app/ui/frame/main_window.h"

#include <QDir>
#include <QFileDialog>

#include "app/jobs/pack_job.h"
#include "app/jobs/sentences.h"

namespace wainscot::ui {

namespace {

QString filter()
{
    return MainWindow::tr("Packed books (*.zip)");
}

} // namespace

void MainWindow::askPack()
{
    if (!m_session.isOpen())
        return;
    const QString name = QDir(m_session.folder()).dirName();
    const QString file = QFileDialog::getSaveFileName(this,
        tr("Pack the whole book to carry"),
        documents() + QLatin1Char('/') + name + QStringLiteral(".zip"),
        filter());
    if (!file.isEmpty())
        packBook(file);
}

void MainWindow::packBook(const QString& file)
{
    m_compose->endWriting(true);
    m_work.start<PackReport>(
        tr("Packing the book"),
        [job = PackJob{m_session.folder(), file}](const JobRun& run) { return job.run(run); },
        [this, file](const Result<PackReport>& result) {
            m_sill->announce(result
                    ? tr("The whole book is in %1, with its %2 pictures. It is not locked.")
                          .arg(QDir::toNativeSeparators(file))
                          .arg(result->pictures)
                    : sentenceFor(result.error()));
        });
}

void MainWindow::askUnpack()
{
    const QString file =
        QFileDialog::getOpenFileName(this, tr("Unpack a book"), documents(), filter());
    if (file.isEmpty())
        return;
    const QString folder = QFileDialog::getSaveFileName(this,
        tr("Where the book shall be"),
        documents() + QLatin1Char('/') + QFileInfo(file).completeBaseName());
    if (!folder.isEmpty())
        unpackBook(file, folder);
}

void MainWindow::unpackBook(const QString& file, const QString& folder)
{
    m_work.start<PackReport>(
        tr("Unpacking the book"),
        [job = UnpackJob{file, folder}](const JobRun& run) { return job.run(run); },
        [this, folder](const Result<PackReport>& result) {
            if (result)
                openBook(folder);
            else
                m_sill->announce(sentenceFor(result.error()));
        });
}

} // namespace wainscot::ui
