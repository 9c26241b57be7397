// What the rail and the sill say about the book.
#include "app/ui/frame/main_window.h"

#include <QLocale>

#include <algorithm>
#include <set>

#include "app/jobs/group_edits.h"
#include "app/jobs/meeting_edits.h"
#include "app/jobs/sentences.h"
#include "app/ui/kit/surfaces.h"
#include "app/ui/session/piece_edits.h"
#include "core/voice/answers.h"

namespace wainscot::ui {

namespace {

using Nail = PlaceNail::Nail;

// Whose words or work stand on the display.
std::set<ChildId> childrenOn(const Book& book, DisplayId display)
{
    std::set<ChildId> on;
    for (const Panel* panel : panelsOf(book, display)) {
        for (const Piece* piece : piecesOf(book, panel->id)) {
            if (const Quote* quote = book.quotes.find(piece->quote))
                on.insert(quote->child);
            if (const Picture* picture = book.pictures.find(piece->picture))
                on.insert(picture->people.children.begin(), picture->people.children.end());
        }
    }
    return on;
}

int findingsToLookAt(const std::vector<Finding>& findings)
{
    return int(std::count_if(findings.begin(), findings.end(), [](const Finding& f) {
        return f.severity != Severity::Note;
    }));
}

int stops(const std::vector<Finding>& findings)
{
    return int(std::count_if(findings.begin(), findings.end(), [](const Finding& f) {
        return f.severity == Severity::Stop;
    }));
}

int meetingsHeld(const Book& book, ExperienceId experience)
{
    return int(meetingsOf(book, experience).size())
        - (plannedMeeting(book, experience) != nullptr ? 1 : 0);
}

} // namespace

void MainWindow::refreshRail()
{
    const Book& book = m_session.book();
    const Experience* experience = m_session.experience();
    const AnswersOfClass answers =
        experience != nullptr ? answersIn(book, *experience) : AnswersOfClass();
    const int panels =
        m_session.display() != nullptr ? int(panelsOf(book, m_session.display()->id).size()) : 0;
    const int look = findingsToLookAt(m_compose->desk().findings());
    m_rail->setVisible(m_session.isOpen());
    if (m_session.isOpen())
        setWindowTitle(QStringLiteral("%1 \u2013 Wainscot").arg(book.info.title));
    m_rail->setExperience(experience != nullptr ? experience->title : QString(),
        book.info.title + QStringLiteral(", ")
            + counted(int(book.children.size()), tr("1 child"), tr("%1 children")));
    const int children = int(book.children.size());
    m_rail->setLine(Place::Gather,
        answers.asked() > 0 ? tr("%1 of %2 answers").arg(answers.answered()).arg(answers.asked())
            : children > 0  ? counted(children, tr("1 child"), tr("%1 children"))
                            : tr("nothing yet"),
        answers.answered() == 0                                  ? Nail::Untouched
            : answers.complete() == int(answers.children.size()) ? Nail::NothingMissing
                                                                 : Nail::InWork);
    const int groups = experience != nullptr ? int(groupsOf(book, experience->id).size()) : 0;
    const int meetings = experience != nullptr ? meetingsHeld(book, experience->id) : 0;
    QStringList listened;
    if (groups > 0)
        listened << counted(groups, tr("1 group"), tr("%1 groups"));
    if (meetings > 0)
        listened << counted(meetings, tr("1 meeting"), tr("%1 meetings"));
    m_rail->setLine(Place::Listen,
        listened.isEmpty() ? tr("nothing yet") : listened.join(QStringLiteral(", ")),
        listened.isEmpty() ? Nail::Untouched : Nail::InWork);
    QString line =
        panels == 0 ? tr("nothing yet") : counted(panels, tr("1 panel"), tr("%1 panels"));
    if (look > 0)
        line = tr("%1, %2 to look at").arg(line).arg(look);
    m_rail->setLine(Place::Compose,
        line,
        panels == 0 ? Nail::Untouched : (look > 0 ? Nail::InWork : Nail::NothingMissing));
    int hanging = 0;
    for (const auto& [id, wall] : book.walls.rows()) {
        hanging += int(std::count_if(wall.panels.begin(), wall.panels.end(), [&](const auto& one) {
            const Panel* panel = book.panels.find(one.panel);
            return panel != nullptr && m_session.display() != nullptr
                && panel->display == m_session.display()->id;
        }));
    }
    m_rail->setLine(Place::Hang,
        panels == 0       ? tr("nothing to hang")
            : hanging > 0 ? tr("%1 on a wall").arg(counted(hanging, tr("1 panel"), tr("%1 panels")))
                          : tr("not on a wall yet"),
        panels == 0             ? Nail::Untouched
            : hanging >= panels ? Nail::NothingMissing
                                : Nail::InWork);
    m_rail->setLine(Place::Keep, tr("the term, carry, erase"), Nail::Untouched);
    m_kept->setText(m_session.isOpen() ? tr("Kept %1").arg(
                        QLocale().toString(m_session.keptAt().time(), QStringLiteral("HH:mm")))
                                       : QString());
}

void MainWindow::refreshSill()
{
    m_undo->setEnabled(m_session.canUndo());
    m_redo->setEnabled(m_session.canRedo());
    m_undo->setText(m_session.canUndo() ? tr("Undo: %1").arg(m_session.undoLabel()) : tr("Undo"));
    m_redo->setText(
        m_session.canRedo() ? tr("Do again: %1").arg(m_session.redoLabel()) : tr("Do again"));
    m_sill->setUndo(m_session.undoLabel());
    for (QAction* one : std::as_const(m_needBook))
        one->setEnabled(m_session.isOpen());
    for (QAction* one : std::as_const(m_needPanel))
        one->setEnabled(m_session.panel() != nullptr);
    refreshRail();
    const auto next = [this](const QString& text, std::function<void()> does) {
        m_nextStep = std::move(does);
        m_sill->setNext(text);
    };
    if (!m_session.isOpen()) {
        m_sill->say(tr("No book is open."), tr("A book is a folder. Everything stays in it."));
        next(tr("Begin a book"), [this] { beginNamedBook(); });
        return;
    }
    if (m_place == Place::Compose) {
        sayCompose();
        return;
    }
    if (m_place == Place::Gather) {
        sayGather();
        return;
    }
    if (m_place == Place::Listen) {
        sayListen();
        return;
    }
    if (m_place == Place::Hang) {
        sayHang();
        return;
    }
    sayKeep();
}

void MainWindow::sayGather()
{
    const TaskPage::Saying saying = m_gather->task().saying();
    m_sill->say(saying.done, saying.missing);
    m_nextStep = saying.takeNext;
    m_sill->setNext(saying.next);
}

void MainWindow::sayListen()
{
    const TaskPage::Saying saying = m_listen->saying();
    m_sill->say(saying.done, saying.missing);
    m_nextStep = saying.takeNext;
    m_sill->setNext(saying.next);
}

void MainWindow::sayCompose()
{
    const auto next = [this](const QString& text, std::function<void()> does) {
        m_nextStep = std::move(does);
        m_sill->setNext(text);
    };
    const Book& book = m_session.book();
    Canvas& canvas = m_compose->canvas();
    const Piece* hand = m_compose->desk().piece(canvas.inHand());
    if (m_compose->isWriting()) {
        m_sill->say(
            tr("You are writing."), tr("The panel shows every line as it will be printed."));
        next(tr("Done writing"), [this] { m_compose->endWriting(true); });
        return;
    }
    if (hand != nullptr && canvas.isLifted()) {
        m_sill->say(tr("%1 is in your hand.").arg(beginningOf(nameFor(book, *hand), 60)),
            tr("Arrow keys move it, Enter sets it down, Esc puts it back."));
        next(tr("Set it down"), [this] { m_compose->canvas().setDown(); });
        return;
    }
    if (m_session.panel() == nullptr) {
        const int words = int(book.quotes.size());
        m_sill->say(words > 0
                ? tr("%1. No panel yet.").arg(counted(words, tr("1 answer"), tr("%1 answers")))
                : tr("No words and no panel yet."),
            tr("Only what the families allowed is proposed."));
        if (words > 0 || !book.pictures.isEmpty())
            next(tr("Propose a panel"), [this] { m_compose->desk().propose(); });
        else
            next(tr("Go to Gather"), [this] { go(Place::Gather); });
        return;
    }
    const auto on = childrenOn(book, m_session.display()->id);
    const int panels = int(panelsOf(book, m_session.display()->id).size());
    QStringList missing;
    for (const auto& [id, child] : book.children.rows()) {
        if (on.count(id) == 0)
            missing << displayName(child);
    }
    const auto& findings = m_compose->desk().findings();
    const int look = findingsToLookAt(findings);
    QStringList second;
    if (missing.size() > 4)
        second << tr("%1 children are not on it.").arg(missing.size());
    else if (!missing.isEmpty())
        second << tr("Not on it: %1.").arg(listInWords(missing));
    if (look > 0)
        second << tr("%1 to look at.").arg(counted(look, tr("1 finding"), tr("%1 findings")));
    m_sill->say(tr("%1. %2 of %3 children are on it.")
                    .arg(counted(panels, tr("1 panel"), tr("%1 panels")))
                    .arg(on.size())
                    .arg(book.children.size()),
        second.join(QLatin1Char(' ')));
    const int mustMend = stops(findings);
    if (mustMend > 0)
        next(tr("Mend %1 first").arg(counted(mustMend, tr("1 thing"), tr("%1 things"))),
            [this] { m_compose->goToFinding(1); });
    else
        next(tr("Make the PDF"), [this] { askExport(); });
}

} // namespace wainscot::ui
