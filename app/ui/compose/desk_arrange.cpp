// Arranging: one panel, a part of it, the whole display, or a display from nothing.
#include "app/ui/compose/desk.h"

#include <algorithm>

#include "app/jobs/arrange_job.h"
#include "app/jobs/sentences.h"
#include "app/jobs/template_job.h"
#include "app/ui/kit/surfaces.h"
#include "app/ui/session/piece_edits.h"
#include "core/base/paper_size.h"

namespace wainscot::ui {

namespace {

constexpr int kMostSaid = 2; // sentences the sill has room for

QString whyNot(const Error& error)
{
    return error.detail.isEmpty() ? sentenceFor(error) : error.detail;
}

} // namespace

// Only places are taken over: a text may have been written meanwhile.
void Desk::takeOver(const std::vector<Piece>& arranged, const QString& label, int gesture)
{
    std::vector<Piece> moved;
    for (const Piece& one : arranged) {
        const Piece* own = piece(one.id);
        if (own == nullptr || own->pinned)
            continue;
        moved.push_back(*own);
        moved.back().cell = one.cell;
        moved.back().picturePlace = one.picturePlace;
    }
    m_session.perform(replacePieces(
        m_session.book(), moved, label.isEmpty() ? tr("Arranged again") : label, gesture));
}

void Desk::arrangeAgain(int gesture, const PieceIds& edited)
{
    const DrawnPanel* drawn = drawnPanel();
    if (drawn == nullptr)
        return;
    if (isLocked()) {
        Q_EMIT announced(tr("This panel is locked. Unlock it to have it arranged."));
        return;
    }
    std::vector<Piece> pieces = asTried({});
    const ClearedPanel cleared = clearedAs(pieces);
    const Rearrangement arrangement(
        cleared, drawn->style, std::move(pieces), measurerFor(cleared), edited);
    m_work.start<std::vector<Piece>>(
        tr("Arranging around what is pinned"),
        [arrangement](const JobRun& run) { return arrangement.run(run); },
        [this, gesture](Result<std::vector<Piece>> result) {
            if (result)
                takeOver(*result, {}, gesture);
            else
                Q_EMIT announced(whyNot(result.error()));
        });
}

// The pieces that were not chosen are held where they are, pinned or not.
void Desk::arrangeOnly(const PieceIds& ids)
{
    const DrawnPanel* drawn = drawnPanel();
    if (drawn == nullptr || ids.empty())
        return;
    std::vector<Piece> pieces = asTried({});
    for (Piece& one : pieces) {
        if (std::find(ids.begin(), ids.end(), one.id) == ids.end())
            one.pinned = true;
    }
    const ClearedPanel cleared = clearedAs(pieces);
    const Rearrangement arrangement(cleared, drawn->style, std::move(pieces), measurerFor(cleared));
    m_work.start<std::vector<Piece>>(
        tr("Arranging what is in your hand"),
        [arrangement](const JobRun& run) { return arrangement.run(run); },
        [this, ids](Result<std::vector<Piece>> result) {
            if (!result) {
                Q_EMIT announced(whyNot(result.error()));
                return;
            }
            std::erase_if(*result, [&ids](const Piece& one) {
                return std::find(ids.begin(), ids.end(), one.id) == ids.end();
            });
            takeOver(*result, tr("Arranged %1 pieces").arg(ids.size()), 0);
        });
}

void Desk::arrangeDisplay()
{
    if (m_drawn == std::nullopt)
        return;
    std::vector<PanelId> open;
    for (const Panel* panel : panelsOf(m_session.book(), m_drawn->display.id)) {
        if (!panel->locked)
            open.push_back(panel->id);
    }
    if (open.empty())
        Q_EMIT announced(tr("Every panel is locked."));
    else
        arrangePanels(open, tr("Arranged the display"), 0);
}

void Desk::arrangePanels(const std::vector<PanelId>& which, const QString& label, int gesture)
{
    std::vector<Rearrangement> all;
    for (const DrawnPanel& drawn : m_drawn->panels) {
        if (std::find(which.begin(), which.end(), drawn.cleared.id()) == which.end())
            continue;
        std::vector<Piece> pieces;
        for (const Piece* own : piecesOf(m_session.book(), drawn.cleared.id()))
            pieces.push_back(*own);
        all.emplace_back(drawn.cleared,
            drawn.style,
            std::move(pieces),
            std::make_shared<PanelMeasurer>(
                drawn.cleared.pieces(), drawn.style, m_drawn->display.language));
    }
    m_work.start<std::vector<Piece>>(
        tr("Arranging the display"),
        [all](const JobRun& run) -> Result<std::vector<Piece>> {
            std::vector<Piece> arranged;
            for (std::size_t i = 0; i < all.size(); ++i) {
                run.report(tr("Panel %1").arg(i + 1), int(i), int(all.size()));
                Result<std::vector<Piece>> one = all[i].run(run);
                if (!one)
                    return one;
                arranged.insert(arranged.end(), one->begin(), one->end());
            }
            return arranged;
        },
        [this, label, gesture](Result<std::vector<Piece>> result) {
            if (result)
                takeOver(*result, label, gesture);
            else
                Q_EMIT announced(whyNot(result.error()));
        });
}

void Desk::findOtherWays()
{
    const Panel* panel = m_session.panel();
    if (panel == nullptr)
        return;
    m_work.start<AlternativesOutcome>(
        tr("Looking for other ways"),
        [job = AlternativesJob{panel->id}, book = m_session.book()](
            const JobRun& run) { return job.run(book, run); },
        [this](Result<AlternativesOutcome> result) {
            if (!result) {
                Q_EMIT announced(sentenceFor(result.error()));
                return;
            }
            if (!result->ways.empty())
                Q_EMIT waysFound(result->ways);
            if (!result->says.isEmpty())
                Q_EMIT announced(result->says);
        });
}

void Desk::takeWay(const std::vector<Piece>& way)
{
    takeOver(way, tr("Another way"), 0);
}

ArrangeJob Desk::jobForDisplay() const
{
    ArrangeJob job;
    job.experience = m_session.experience()->title;
    job.display = tr("Hallway");
    job.audience = Audience::Building;
    if (const Display* display = m_session.display()) {
        job.display = display->name;
        job.audience = display->audience;
        job.panelSize = display->panelSize;
        job.readingDistance = display->readingDistance;
    }
    return job;
}

void Desk::propose()
{
    if (m_session.experience() != nullptr)
        startProposal(jobForDisplay(), tr("Proposed panel"));
}

void Desk::startProposal(const ArrangeJob& job, const QString& label)
{
    using Answer = std::variant<ArrangeOutcome, ArrangeFailure>;
    m_work.start<Answer>(
        tr("Proposing a panel"),
        [job, book = m_session.book()](const JobRun& run) { return job.run(book, run); },
        [this, label](Result<Answer> result) {
            if (!result)
                Q_EMIT announced(sentenceFor(result.error()));
            else if (const auto* failure = std::get_if<ArrangeFailure>(&*result))
                Q_EMIT announced(failure->says);
            else
                takeProposal(std::get<ArrangeOutcome>(*result), label);
        });
}

void Desk::takeProposal(ArrangeOutcome& outcome, const QString& label)
{
    outcome.edit.label = label;
    if (!m_session.perform(std::move(outcome.edit)))
        return;
    m_session.chooseDisplay(outcome.display.id);
    // What would suit better, and what of the wishes could not be kept.
    QStringList says;
    for (const Advice& advice : outcome.advice)
        says << advice.says;
    for (const QString& wish : outcome.droppedWishes)
        says << wish;
    if (!says.isEmpty())
        Q_EMIT announced(says.mid(0, kMostSaid).join(QLatin1Char(' ')));
    m_advice = std::move(outcome.advice);
    Q_EMIT advised();
}

void Desk::takeAdvice(const Advice& advice)
{
    const Display* display = m_session.display();
    if (display == nullptr || m_session.experience() == nullptr)
        return;
    ArrangeJob job = jobForDisplay();
    job.plan = display->plan;
    job.panels = std::max(1, int(panelsOf(m_session.book(), display->id).size()));
    QString label;
    switch (advice.kind) {
    case AdviceKind::SmallerPanel:
        job.panelSize = advice.panelSize;
        label = tr("Panel of %1").arg(nameOfPaper(advice.panelSize));
        break;
    case AdviceKind::LargerWords:
        job.voiceStep = advice.voiceStep;
        label = tr("Larger words");
        break;
    case AdviceKind::MorePanels:
        job.panels = advice.panels;
        label = tr("On %1 panels").arg(advice.panels);
        break;
    case AdviceKind::LessOnIt:
        return; // it says that nothing better was found
    }
    startProposal(job, label);
}

void Desk::leaveAdvice()
{
    if (m_advice.empty())
        return;
    m_advice.clear();
    Q_EMIT advised();
}

void Desk::keepAsTemplate(const QString& name)
{
    if (m_session.display() == nullptr || m_session.panel() == nullptr)
        return;
    const KeepTemplateJob job{m_session.display()->name, m_session.panel()->number, name};
    Result<TemplateOutcome> outcome = job.run(m_session.book());
    if (!outcome) {
        Q_EMIT announced(sentenceFor(outcome.error()));
        return;
    }
    const bool replaces = outcome->replaces;
    if (m_session.perform(std::move(outcome->edit)))
        Q_EMIT announced(replaces
                ? tr("\"%1\" is this panel now. You find it among the kinds of panel.")
                      .arg(name.simplified())
                : tr("\"%1\" is among the kinds of panel now.").arg(name.simplified()));
}

void Desk::findKinds()
{
    if (m_session.experience() == nullptr)
        return;
    KindsJob job{jobForDisplay()};
    if (m_drawn)
        job.asked.panels = std::max(1, int(m_drawn->panels.size()));
    m_work.start<KindsOutcome>(
        tr("Trying every kind of panel"),
        [job, book = m_session.book()](const JobRun& run) { return job.run(book, run); },
        [this](Result<KindsOutcome> result) {
            if (!result)
                Q_EMIT announced(sentenceFor(result.error()));
            else if (result->kinds.empty())
                Q_EMIT announced(result->says.front());
            else
                Q_EMIT kindsFound(result->kinds);
        });
}

// The book may have moved on while one chose; then the edit does not fit and says so.
void Desk::takeKind(const KindOfPanel& kind)
{
    Edit edit = kind.outcome.edit;
    edit.label = tr("Kind of panel: %1").arg(kind.name);
    const DisplayId display = kind.outcome.display.id;
    if (m_session.perform(std::move(edit)))
        m_session.chooseDisplay(display);
}

} // namespace wainscot::ui
