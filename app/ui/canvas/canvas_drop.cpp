// What is dragged onto the panel from the drawer, a file manager or another program.
#include "app/ui/canvas/canvas.h"

#include <QDragEnterEvent>
#include <QMimeData>

namespace wainscot::ui {

void Canvas::dragEnterEvent(QDragEnterEvent* event)
{
    const Incoming incoming = incomingFrom(*event->mimeData(), false);
    if (!m_hasContent || incoming.isEmpty())
        return;
    if (m_helpers.welcome && !m_helpers.welcome(incoming))
        return;
    putBack();
    m_incoming = incoming;
    event->acceptProposedAction();
}

void Canvas::dragMoveEvent(QDragMoveEvent* event)
{
    const Grid& grid = m_content.style.grid;
    const PointMm at = m_view.toMm(event->position());
    const SizeMm size =
        m_helpers.sizing ? m_helpers.sizing(m_incoming) : SizeMm{grid.width(3), grid.height(6)};
    const RectMm cell = rectOf(grid,
        nearestCell(
            grid, {at.x - size.width / 2, at.y - size.height / 2, size.width, size.height}));
    event->acceptProposedAction();
    if (m_dropCell && *m_dropCell == cell)
        return;
    m_dropCell = cell;
    updateGuides(cell);
    update();
    setAttempt({Attempt::What::Drop, cell, {}, {}});
}

void Canvas::dragLeaveEvent(QDragLeaveEvent* /*event*/)
{
    endTrying();
    dropStaticLayer();
    Q_EMIT modeChanged();
}

void Canvas::dropEvent(QDropEvent* event)
{
    const Incoming incoming = incomingFrom(*event->mimeData(), true);
    if (incoming.isEmpty() || !m_dropCell)
        return;
    const RectMm cell = *m_dropCell;
    event->acceptProposedAction();
    endTrying();
    dropStaticLayer();
    Q_EMIT dropped(incoming, cell);
}

} // namespace wainscot::ui
