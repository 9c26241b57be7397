// A book as one file to carry, and back.
#include "app/ui/frame/main_window.h"

#include <QDir>
#include <QFileDialog>
#include <QInputDialog>

#include "app/jobs/made_files.h"
#include "app/jobs/pack_job.h"
#include "app/jobs/sentences.h"

namespace wainscot::ui {

namespace {

QString filter()
{
    return MainWindow::tr("Packed books (*.zip *.locked)");
}

// What is typed does not show. Nothing when the person turned back.
std::optional<QString> askPhrase(QWidget* over, const QString& title, const QString& question)
{
    bool given = false;
    const QString phrase =
        QInputDialog::getText(over, title, question, QLineEdit::Password, {}, &given);
    return given ? std::optional(phrase) : std::nullopt;
}

// A phrase typed twice alike, or an empty one for no lock.
std::optional<QString> askNewPhrase(QWidget* over)
{
    const QString title = MainWindow::tr("Lock the packed book");
    QString question = MainWindow::tr("A passphrase of 8 characters or more. Leave it empty for a "
                                      "file without a lock.\nWho forgets it cannot open the file.");
    for (;;) {
        const auto phrase = askPhrase(over, title, question);
        if (!phrase || phrase->isEmpty())
            return phrase;
        if (phrase->size() < kShortestPhrase) {
            question = MainWindow::tr("That has fewer than 8 characters. Choose a longer one:");
            continue;
        }
        const auto again = askPhrase(over, title, MainWindow::tr("The same once more:"));
        if (!again || *again == *phrase)
            return again;
        question = MainWindow::tr("The two were not the same. From the beginning:");
    }
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
    const auto phrase = file.isEmpty() ? std::nullopt : askNewPhrase(this);
    if (phrase)
        packBook(file, *phrase);
}

void MainWindow::packBook(const QString& file, const QString& phrase)
{
    m_compose->endWriting(true);
    m_work.start<PackReport>(
        tr("Packing the book"),
        [job = PackJob{m_session.folder(), file, phrase}](
            const JobRun& run) { return job.run(run); },
        [this, file, from = m_session.folder(), locked = !phrase.isEmpty()](
            const Result<PackReport>& result) {
            if (!result) {
                m_sill->announce(sentenceFor(result.error()));
                return;
            }
            rememberMade(from, madeFileOf(MadeFileKind::PackedBook, file, m_session.today()));
            m_sill->announce(tr("The whole book is in %1, with its %2 pictures. %3")
                                 .arg(QDir::toNativeSeparators(file))
                                 .arg(result->pictures)
                                 .arg(locked ? tr("It is locked.") : tr("It is not locked.")));
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
    if (folder.isEmpty())
        return;
    const auto phrase = isLockedPack(file)
        ? askPhrase(this, tr("Unpack a book"), tr("It is locked. Its passphrase:"))
        : std::optional(QString());
    if (phrase)
        unpackBook(file, folder, *phrase);
}

void MainWindow::unpackBook(const QString& file, const QString& folder, const QString& phrase)
{
    m_work.start<PackReport>(
        tr("Unpacking the book"),
        [job = UnpackJob{file, folder, phrase}](const JobRun& run) { return job.run(run); },
        [this, folder](const Result<PackReport>& result) {
            if (result)
                openBook(folder);
            else
                m_sill->announce(sentenceFor(result.error()));
        });
}

} // namespace wainscot::ui
