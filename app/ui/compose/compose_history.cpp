// Looking at a panel otherwise: from farther, at an earlier time, where else a thing hangs.
#include "app/ui/compose/compose_place.h"

#include <QLocale>

#include "app/ui/compose/panel_picture.h"
#include "app/ui/session/piece_edits.h"

namespace wainscot::ui {

namespace {

constexpr std::size_t kMostSteps = 24;

} // namespace

void ComposePlace::stepBack()
{
    if (m_stage->stepBack().isVisible()) {
        m_stage->stepBack().close();
        return;
    }
    endWriting(true);
    canvas().putBack();
    const DrawnPanel* panel = m_desk.drawnPanel();
    if (panel == nullptr)
        return;
    m_stage->choice().close();
    m_stage->stepBack().open(*panel, [this](PieceId id) {
        const Piece* piece = m_desk.piece(id);
        return piece != nullptr ? nameFor(m_session.book(), *piece) : QString();
    });
}

// First what was done since the book was opened, then how it was on earlier days.
void ComposePlace::showHistory()
{
    const Display* display = m_session.display();
    if (display == nullptr || m_session.panel() == nullptr)
        return;
    endWriting(true);
    canvas().putBack();
    const auto steps = std::make_shared<std::vector<DisplayStep>>(
        historyOf(m_session.book(), m_session.stepsDone(), display->id, kMostSteps));
    if (m_work.isBusy()) { // what this sitting knows has to do
        offerHistory(*steps, {});
        return;
    }
    const DisplayPastJob job{m_session.folder(), display->id};
    m_work.start<std::vector<DisplayThen>>(
        tr("Looking for earlier days"),
        [job, steps, now = m_session.book()](
            const JobRun& run) { return job.run(steps->empty() ? now : steps->back().book, run); },
        [this, steps](Result<std::vector<DisplayThen>> past) {
            offerHistory(*steps, past ? *past : std::vector<DisplayThen>());
        });
}

ComposePlace::Offer ComposePlace::offerOfThen(
    const QString& name, const QString& about, const std::shared_ptr<const Book>& then)
{
    const DisplayId display = m_session.display()->id;
    PanelId shown = m_session.panel()->id;
    if (then->panels.find(shown) == nullptr)
        shown = panelsOf(*then, display).front()->id;
    return {name,
        about,
        [this, then, display, shown] {
            return panelPicture(
                todayWith(m_session.book(), *then, display), shown, kOfferWidthPx, m_shelf);
        },
        [this, then, name] { m_desk.bringBack(*then, name); }};
}

void ComposePlace::offerHistory(
    const std::vector<DisplayStep>& steps, const std::vector<DisplayThen>& past)
{
    if (m_session.display() == nullptr || m_session.panel() == nullptr || canvas().isBusy()
        || isWriting())
        return;
    std::vector<Offer> offers;
    for (const DisplayStep& step : steps) {
        if (panelsOf(step.book, m_session.display()->id).empty())
            continue;
        const int back = int(offers.size());
        offers.push_back(offerOfThen(step.label.isEmpty() ? tr("Before all this") : step.label,
            back == 0 ? tr("as it is now") : counted(back, tr("1 step back"), tr("%1 steps back")),
            std::make_shared<const Book>(step.book)));
    }
    const QLocale locale;
    for (const DisplayThen& then : past) {
        offers.push_back(offerOfThen(locale.toString(then.state.at.date(), QLocale::LongFormat),
            tr("at %1").arg(locale.toString(then.state.at.time(), QLocale::ShortFormat)),
            then.book));
    }
    offer(tr("How this display came about"),
        tr("Choose one to bring the display back to it, with today's permissions. That can be "
           "undone too."),
        std::move(offers));
}

void ComposePlace::showWhereItHangs(DrawerItem item)
{
    const Display* display = m_session.display();
    PieceId found;
    for (const auto& [id, piece] : m_session.book().pieces.rows()) {
        const bool same = item.kind == DrawerItem::Kind::Quote ? piece.quote.number() == item.id
            : item.kind == DrawerItem::Kind::Picture           ? piece.picture.number() == item.id
                                                               : false;
        const Panel* panel = same ? m_session.book().panels.find(piece.panel) : nullptr;
        const bool here = panel != nullptr && display != nullptr && panel->display == display->id;
        if (panel != nullptr && (here || !found.isValid()))
            found = id;
    }
    const Piece* piece = m_desk.piece(found);
    if (piece == nullptr)
        return;
    const Panel& panel = *m_session.book().panels.find(piece->panel);
    if (display == nullptr || panel.display != display->id)
        m_session.chooseDisplay(panel.display);
    m_session.choosePanel(panel.id);
    canvas().takeInHand(found);
    canvas().setFocus();
    refreshNote();
    Q_EMIT stateChanged();
}

} // namespace wainscot::ui
