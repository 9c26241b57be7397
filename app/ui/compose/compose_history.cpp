// Looking at a panel otherwise: from farther, at an earlier time, where else a thing hangs.
#include "app/ui/compose/compose_place.h"

#include "app/ui/compose/panel_picture.h"
#include "app/ui/session/display_history.h"
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

void ComposePlace::showHistory()
{
    const Display* display = m_session.display();
    const Panel* panel = m_session.panel();
    if (display == nullptr || panel == nullptr)
        return;
    endWriting(true);
    canvas().putBack();
    std::vector<Offer> steps;
    for (DisplayStep& step :
        historyOf(m_session.book(), m_session.stepsDone(), display->id, kMostSteps)) {
        const int back = int(steps.size());
        const auto then = std::make_shared<const Book>(std::move(step.book));
        const QString label = step.label;
        steps.push_back({label.isEmpty() ? tr("Before all this") : label,
            back == 0 ? tr("as it is now") : counted(back, tr("1 step back"), tr("%1 steps back")),
            [this, then, id = display->id, shown = panel->id] {
                return panelPicture(
                    todayWith(m_session.book(), *then, id), shown, kOfferWidthPx, m_shelf);
            },
            [this, then, label] {
                m_desk.bringBack(*then, label.isEmpty() ? tr("the beginning") : label);
            }});
    }
    offer(tr("How this display came about"),
        tr("Choose one to bring the display back to it. That can be undone too."),
        std::move(steps));
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
