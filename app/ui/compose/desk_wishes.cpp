// What a teacher asks of the arrangement: pieces kept together, where a panel begins, locks.
#include "app/ui/compose/desk.h"

#include <algorithm>

#include "app/ui/kit/surfaces.h"
#include "app/ui/session/panel_edits.h"
#include "app/ui/session/piece_edits.h"

namespace wainscot::ui {

bool Desk::areTogether(const PieceIds& ids) const
{
    const Piece* first = ids.empty() ? nullptr : piece(ids.front());
    return first != nullptr && first->together > 0
        && std::all_of(ids.begin(), ids.end(), [&](PieceId id) {
               const Piece* one = piece(id);
               return one != nullptr && one->together == first->together;
           });
}

void Desk::setTogether(const PieceIds& ids, bool together)
{
    if (ids.empty() || (together && ids.size() < 2))
        return;
    Edit edit = keepTogether(m_session.book(),
        ids,
        together,
        together ? tr("Kept together: %1 pieces").arg(ids.size()) : tr("No longer kept together"));
    edit.gesture = m_session.newGesture();
    const int gesture = edit.gesture;
    if (!edit.isEmpty() && m_session.perform(std::move(edit)) && together)
        arrangeAgain(gesture);
}

void Desk::startPanelHere(PieceId id)
{
    const Piece* own = piece(id);
    if (own == nullptr)
        return;
    PanelId added;
    const PanelId before = own->panel;
    Edit edit = startPanelAt(
        m_session.book(), id, tr("A new panel begins: %1").arg(wordFor(own->kind)), added);
    if (edit.isEmpty()) {
        Q_EMIT announced(tr("The panel begins with it already."));
        return;
    }
    edit.gesture = m_session.newGesture();
    const int gesture = edit.gesture;
    if (!m_session.perform(std::move(edit)))
        return;
    m_session.choosePanel(added);
    arrangePanels({before, added}, tr("A new panel"), gesture);
}

bool Desk::isLocked() const
{
    return m_session.panel() != nullptr && m_session.panel()->locked;
}

void Desk::setLocked(bool locked)
{
    const Panel* panel = m_session.panel();
    if (panel == nullptr || panel->locked == locked)
        return;
    m_session.perform(lockPanel(m_session.book(),
        panel->id,
        locked,
        locked ? tr("Locked: panel %1").arg(panel->number)
               : tr("Unlocked: panel %1").arg(panel->number)));
}

} // namespace wainscot::ui
