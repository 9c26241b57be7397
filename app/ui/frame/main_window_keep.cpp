// Keep: what the place asks of the window.
#include "app/ui/frame/main_window.h"

#include <QDir>
#include <QFileDialog>

#include "app/jobs/made_files.h"
#include "app/jobs/sentences.h"

namespace wainscot::ui {

void MainWindow::connectKeep()
{
    connect(m_keep, &KeepPlace::stateChanged, this, &MainWindow::refreshSill);
    connect(&m_keep->file(), &TermColumn::packAsked, this, &MainWindow::askPack);
    connect(&m_keep->term(), &TermView::experienceAsked, this, [this](ExperienceId experience) {
        m_session.chooseExperience(experience);
        go(Place::Gather);
    });
    connect(&m_keep->term(), &TermView::displayAsked, this, [this](DisplayId display) {
        if (const Display* own = m_session.book().displays.find(display))
            m_session.chooseExperience(own->experience);
        m_session.chooseDisplay(display);
        go(Place::Compose);
    });
}

void MainWindow::sayKeep()
{
    m_sill->say(m_keep->done(), m_keep->missing());
    if (m_keep->term().strands().empty()) {
        m_nextStep = [this] { go(Place::Gather); };
        m_sill->setNext(tr("Go to Gather"));
    } else {
        m_nextStep = [this] { askTerm(); };
        m_sill->setNext(tr("Make the term's file"));
    }
}

// From elsewhere it shows first what the file would hold.
void MainWindow::askTerm()
{
    if (!m_session.isOpen())
        return;
    if (shownPlace() != m_keep || m_keep->task() != KeepPlace::Task::Term) {
        go(Place::Keep);
        m_keep->setTask(KeepPlace::Task::Term);
        return;
    }
    KeepJob job = m_keep->file().job();
    job.file = QFileDialog::getSaveFileName(this,
        tr("The term's file"),
        documents() + QLatin1Char('/') + m_session.book().info.title + QStringLiteral(".pdf"),
        tr("PDF (*.pdf)"));
    if (!job.file.isEmpty())
        keepTerm(job);
}

void MainWindow::keepTerm(KeepJob job)
{
    job.picturesFolder = m_session.picturesFolder();
    m_work.start<KeepOutcome>(
        tr("Making the term's file"),
        [job, book = m_session.book()](const JobRun& run) { return job.run(book, run); },
        [this, from = m_session.folder()](const Result<KeepOutcome>& result) {
            if (result)
                rememberMade(from, result->made);
            m_sill->announce(result ? tr("The term's file has %1 pages. It is at %2.")
                                          .arg(result->pages)
                                          .arg(QDir::toNativeSeparators(result->file))
                                    : sentenceFor(result.error()));
        });
}

} // namespace wainscot::ui
