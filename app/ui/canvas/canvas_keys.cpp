// The keyboard on the panel, and focus.
#include "app/ui/canvas/canvas.h"

#include <QKeyEvent>

#include <algorithm>

namespace wainscot::ui {

namespace {

constexpr double kFineMm = 0.5;

// One step to the side or down the page; nothing for any other key.
QPoint stepOf(int key)
{
    switch (key) {
    case Qt::Key_Left:
        return {-1, 0};
    case Qt::Key_Right:
        return {1, 0};
    case Qt::Key_Up:
        return {0, -1};
    case Qt::Key_Down:
        return {0, 1};
    default:
        return {};
    }
}

} // namespace

void Canvas::keyPressEvent(QKeyEvent* event)
{
    const bool done = m_mode == Mode::Lift ? liftedKey(event)
        : isCropping()                     ? cropKey(event)
                                           : nudgeKey(event) || chosenKey(event);
    if (!done)
        QWidget::keyPressEvent(event);
}

// Alt: half a millimetre, off the grid. Shift: the foot and the end follow instead of the whole.
RectMm Canvas::steppedCell(const RectMm& cell, QPoint step, Qt::KeyboardModifiers modifiers) const
{
    const Grid& grid = m_content.style.grid;
    if (modifiers.testFlag(Qt::AltModifier)) {
        RectMm fine = cell.movedBy(Mm(step.x() * kFineMm), Mm(step.y() * kFineMm));
        const SizeMm panel = grid.panel;
        fine.x = std::clamp(fine.x, Mm(0), std::max(Mm(0), panel.width - fine.width));
        fine.y = std::clamp(fine.y, Mm(0), std::max(Mm(0), panel.height - fine.height));
        return fine;
    }
    if (modifiers.testFlag(Qt::ShiftModifier)) {
        return resized(grid,
            cell,
            Qt::RightEdge | Qt::BottomEdge,
            step.x() * (grid.column + grid.gutter),
            step.y() * grid.rowUnit);
    }
    return moved(grid, cell, step.x(), step.y());
}

bool Canvas::liftedKey(QKeyEvent* event)
{
    switch (event->key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
    case Qt::Key_Space:
        setDown();
        return true;
    case Qt::Key_Escape:
        putBack();
        return true;
    default:
        break;
    }
    const QPoint step = stepOf(event->key());
    if (step.isNull() || m_trials.empty() || !m_helpers.placing)
        return false;
    const RectMm cell = steppedCell(m_trials.front().now.cell, step, event->modifiers());
    const bool sizes = event->modifiers().testFlag(Qt::ShiftModifier);
    if (sizes || m_trials.size() == 1) {
        showTrial(m_helpers.placing(m_trials.front().before, cell));
    } else {
        moveTrialsBy(
            cell.x - m_trials.front().before.cell.x, cell.y - m_trials.front().before.cell.y);
        for (Trial& trial : m_trials)
            trial.list = m_helpers.preview ? m_helpers.preview(trial.now) : DisplayList();
    }
    updateGuides(m_trials.front().now.cell);
    setAttempt(
        {sizes ? Attempt::What::Resize : Attempt::What::Place, m_trials.front().now.cell, {}, {}});
    update();
    return true;
}

bool Canvas::cropKey(QKeyEvent* event)
{
    constexpr int kStepPx = 8;
    switch (event->key()) {
    case Qt::Key_Plus:
        zoomCrop(1.08);
        return true;
    case Qt::Key_Minus:
        zoomCrop(1 / 1.08);
        return true;
    case Qt::Key_Return:
    case Qt::Key_Enter:
    case Qt::Key_Escape:
        setCropping(false);
        return true;
    default:
        break;
    }
    const QPoint step = stepOf(event->key()) * kStepPx;
    if (step.isNull())
        return false;
    beginTrying(false);
    m_pressedAt = {};
    cropTrialTo(step);
    finishTrial();
    return true;
}

// Control moves what is in hand by a step of the grid, Alt by half a millimetre, both without
// lifting; Control and Shift resize it.
bool Canvas::nudgeKey(QKeyEvent* event)
{
    const QPoint step = stepOf(event->key());
    const Qt::KeyboardModifiers modifiers = event->modifiers() & ~Qt::KeypadModifier;
    const bool grid = modifiers == Qt::ControlModifier;
    const bool fine = modifiers == Qt::AltModifier;
    const bool sizes = modifiers == (Qt::ControlModifier | Qt::ShiftModifier);
    if (step.isNull() || m_held.empty() || isBusy() || (!grid && !fine && !sizes))
        return false;
    beginTrying(!sizes);
    if (m_trials.empty())
        return false;
    const RectMm before = m_trials.front().before.cell;
    const Qt::KeyboardModifiers how = fine ? Qt::AltModifier
        : sizes                            ? Qt::ShiftModifier
                                           : Qt::NoModifier;
    const RectMm cell = steppedCell(before, step, how);
    if (sizes)
        m_trials.front().now.cell = cell;
    else
        moveTrialsBy(cell.x - before.x, cell.y - before.y);
    const std::vector<PlacedCell> cells = triedCells();
    const bool changed = !(m_trials.front().now.cell == before);
    endTrying();
    dropStaticLayer();
    if (changed)
        Q_EMIT nudged(cells);
    return true;
}

bool Canvas::chosenKey(QKeyEvent* event)
{
    const Qt::KeyboardModifiers modifiers = event->modifiers() & ~Qt::KeypadModifier;
    if (modifiers != Qt::NoModifier && modifiers != Qt::ShiftModifier)
        return false;
    const bool add = modifiers == Qt::ShiftModifier;
    const bool mirrored = layoutDirection() == Qt::RightToLeft;
    const QPoint step = stepOf(event->key());
    if (!step.isNull()) {
        chooseNext(mirrored ? step.y() - step.x() : step.x() + step.y(), add);
        return true;
    }
    switch (event->key()) {
    case Qt::Key_Home:
        chooseNext(-int(m_content.pieces.size()), add);
        return true;
    case Qt::Key_End:
        chooseNext(int(m_content.pieces.size()), add);
        return true;
    case Qt::Key_Space:
        lift();
        return true;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (inHand().isValid())
            Q_EMIT writingAsked(inHand(), {});
        return true;
    case Qt::Key_Escape:
        takeInHand(PieceId());
        sayTaken();
        return true;
    default:
        return false;
    }
}

// From the piece that was taken last; with Shift the ones before it stay in the hand.
void Canvas::chooseNext(int step, bool add)
{
    const auto& pieces = m_content.pieces;
    if (pieces.empty())
        return;
    int at = step > 0 ? -1 : 0;
    for (int i = 0; i < int(pieces.size()); ++i) {
        if (!m_held.empty() && pieces[std::size_t(i)].piece.id == m_held.back())
            at = i;
    }
    at = std::clamp(at + step, 0, int(pieces.size()) - 1);
    const PieceId next = pieces[std::size_t(at)].piece.id;
    if (add && !m_held.empty()) {
        std::vector<PieceId> ids = m_held;
        std::erase(ids, next);
        ids.push_back(next);
        hold(std::move(ids));
    } else {
        takeInHand(next);
    }
    sayTaken();
}

void Canvas::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    if (m_fitted)
        fitWhole();
    else
        dropStaticLayer();
}

void Canvas::focusInEvent(QFocusEvent* event)
{
    QWidget::focusInEvent(event);
    // Coming by keyboard, something should be in hand to see where one is.
    if (m_held.empty() && event->reason() != Qt::MouseFocusReason && !m_content.pieces.empty()
        && event->reason() != Qt::ActiveWindowFocusReason)
        chooseNext(1, false);
    update();
}

void Canvas::focusOutEvent(QFocusEvent* event)
{
    QWidget::focusOutEvent(event);
    update();
}

} // namespace wainscot::ui
