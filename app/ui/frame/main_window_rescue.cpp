// Going back to an earlier day, and saving what is left of a damaged book.
#include "app/ui/frame/main_window.h"

#include <QDir>
#include <QFileDialog>
#include <QInputDialog>
#include <QLineEdit>

#include "app/jobs/book_jobs.h"
#include "app/jobs/go_back.h"
#include "app/jobs/made_files.h"
#include "app/jobs/sentences.h"
#include "app/jobs/take_down.h"
#include "app/ui/frame/go_back_dialog.h"

namespace wainscot::ui {

void MainWindow::askGoBack()
{
    if (!m_session.isOpen())
        return;
    m_work.start<std::vector<EarlierDay>>(
        tr("Looking for earlier days"),
        [job = EarlierDaysJob{m_session.folder()}, now = m_session.book()](
            const JobRun& run) { return job.run(now, run); },
        [this](const Result<std::vector<EarlierDay>>& days) {
            if (!days)
                m_sill->announce(sentenceFor(days.error()));
            else if (days->empty())
                m_sill->announce(
                    tr("No earlier day is kept yet. The first is kept with the next change."));
            else
                offerDays(*days);
        });
}

void MainWindow::offerDays(const std::vector<EarlierDay>& days)
{
    GoBackDialog dialog(days, m_compose->shelf(), this);
    if (dialog.exec() == QDialog::Accepted)
        goBackTo(dialog.chosen());
}

void MainWindow::goBackTo(const QString& state)
{
    m_compose->endWriting(true);
    const auto then = ReadEarlierJob{m_session.folder(), state}.run({});
    if (!then)
        m_sill->announce(sentenceFor(then.error()));
    else if (m_session.perform(editBackTo(m_session.book(), *then, tr("Going back"))))
        m_sill->announce(tr("The book is as it was then. Permissions, who is in pictures and what "
                            "is covered stay as today. Undo brings today back."));
}

void MainWindow::askKeepUntil()
{
    const auto known = RetentionJob{m_session.folder()}.run({});
    bool chosen = false;
    const QString day = QInputDialog::getText(this,
        tr("How long it is kept"),
        tr("The last day, written as 2027-07-31. Empty: no day."),
        QLineEdit::Normal,
        known && known->until ? known->until->toString(Qt::ISODate) : QString(),
        &chosen)
                            .simplified();
    if (chosen)
        keepUntil(day);
}

void MainWindow::keepUntil(const QString& day)
{
    const QDate until = QDate::fromString(day, Qt::ISODate);
    if (!day.isEmpty() && !until.isValid()) {
        m_sill->announce(tr("%1 is no day. Write it as 2027-07-31.").arg(day));
        return;
    }
    const auto kept =
        RetentionJob{m_session.folder(), true, day.isEmpty() ? std::nullopt : std::optional(until)}
            .run({});
    m_sill->announce(kept ? inWords(*kept) : sentenceFor(kept.error()));
    refreshPlaces();
}

void MainWindow::askRepair()
{
    const QString file = QFileDialog::getOpenFileName(
        this, tr("Repair a book"), documents(), tr("Books (book.wainscot)"));
    if (file.isEmpty())
        return;
    const QString folder = QFileInfo(file).absolutePath();
    const QString newFolder = QFileDialog::getSaveFileName(
        this, tr("Where the repaired book shall be"), folder + QLatin1Char(' ') + tr("repaired"));
    if (!newFolder.isEmpty())
        repairBook(folder, newFolder);
}

void MainWindow::repairBook(const QString& folder, const QString& newFolder)
{
    m_work.start<RepairOutcome>(
        tr("Repairing the book"),
        [job = RepairJob{folder, newFolder}](const JobRun& run) { return job.run(run); },
        [this, newFolder](const Result<RepairOutcome>& result) {
            if (!result) {
                m_sill->announce(sentenceFor(result.error()));
                return;
            }
            openBook(newFolder);
            go(Place::Keep);
            tellRepaired(result->problems);
        });
}

// The list stays on the place Keep until another book is opened.
void MainWindow::tellRepaired(const QStringList& problems)
{
    m_notSaved = problems;
    refreshPlaces();
    m_sill->announce(problems.isEmpty()
            ? tr("Everything was saved. The damaged book is as it was.")
            : tr("Saved, but for %1. The damaged book is as it was.")
                  .arg(counted(int(problems.size()), tr("1 thing"), tr("%1 things"))));
}

QStringList MainWindow::toTakeDown() const
{
    constexpr qsizetype kMostLines = 12;
    QStringList lines;
    if (const auto hung = TakeDownJob{}.run(m_session.book(), {})) {
        for (const TakeDown& one : *hung)
            lines << (one.panel == 0
                    ? tr("%1, photo of the wall: %2").arg(one.display, one.why)
                    : tr("%1, panel %2: %3").arg(one.display).arg(one.panel).arg(one.why));
    }
    if (const auto files =
            OutdatedFilesJob{}.run(m_session.book(), madeFilesIn(m_session.folder()), {})) {
        for (const OutdatedFile& one : *files)
            lines << whatToDo(one.file) + QLatin1Char(' ') + one.why.front();
    }
    lines.removeDuplicates(); // several words of one child on a panel
    const qsizetype more = lines.size() - kMostLines;
    if (more > 0)
        lines = lines.mid(0, kMostLines) << tr("And %1 more.").arg(more);
    return lines;
}

} // namespace wainscot::ui
