// Pieces in the hand: how they follow it, and what is meant when it lets go.
#include "app/ui/canvas/canvas.h"

#include <algorithm>
#include <cmath>

namespace wainscot::ui {

namespace {

constexpr double kFreeSnapPx = 6; // how near edges meet while a piece moves off the grid
constexpr double kFineMm = 0.5;

Mm toFineStep(Mm at)
{
    return Mm(std::round(at.value() / kFineMm) * kFineMm);
}

} // namespace

void Canvas::beginTrying(bool all)
{
    endTrying();
    for (const PieceId id : m_held) {
        const CanvasPiece* piece = find(id);
        if (piece == nullptr || (!all && !m_trials.empty()))
            continue;
        Trial trial{piece->piece, piece->piece, {}};
        if (m_helpers.preview)
            trial.list = m_helpers.preview(trial.now);
        m_trials.push_back(std::move(trial));
    }
    dropStaticLayer();
}

void Canvas::endTrying()
{
    m_rest.stop();
    m_trials.clear();
    m_around.reset();
    m_attempt = {};
    m_follow = QPointF();
    m_trialPixmap = QPixmap();
    m_dropCell.reset();
    m_incoming = {};
    m_band = QRectF();
    clearGuides();
}

void Canvas::tryPiece(const std::optional<Piece>& piece)
{
    if (piece) {
        if (m_trials.empty())
            beginTrying(false);
        if (!m_trials.empty())
            showTrial(*piece);
    } else if (!m_trials.empty()) {
        endTrying();
        dropStaticLayer();
    }
}

const DisplayList* Canvas::tried() const
{
    return m_trials.empty() ? nullptr : &m_trials.front().list;
}

void Canvas::showTrial(const Piece& piece)
{
    Trial& trial = m_trials.front();
    const QRect before = dirtyRectOf(trial.now.cell);
    trial.now = piece;
    trial.list = m_helpers.preview ? m_helpers.preview(piece) : DisplayList();
    updateTrialRegion(before);
}

void Canvas::showAround(const DisplayList& list)
{
    if (m_trials.empty() && !m_dropCell)
        return; // it came too late
    m_around = list;
    dropStaticLayer();
}

void Canvas::setAttempt(const Attempt& attempt)
{
    if (attempt == m_attempt)
        return;
    m_attempt = attempt;
    m_rest.start();
    Q_EMIT trying(attempt);
}

std::vector<RectMm> Canvas::otherCells() const
{
    std::vector<RectMm> cells;
    for (const CanvasPiece& piece : m_content.pieces) {
        if (!isHeld(piece.piece.id) || m_trials.empty())
            cells.push_back(piece.piece.cell);
    }
    return cells;
}

// On the grid; with Control anywhere, to half millimetres or where edges meet those of others.
RectMm Canvas::wishedCell(Qt::KeyboardModifiers modifiers) const
{
    const RectMm before = m_trials.front().before.cell;
    RectMm cell = before.movedBy(m_view.toMm(m_follow.x()), m_view.toMm(m_follow.y()));
    if (!modifiers.testFlag(Qt::ControlModifier))
        return snapped(m_content.style.grid, cell);
    cell.x = toFineStep(cell.x);
    cell.y = toFineStep(cell.y);
    cell = snappedToOthers(cell, otherCells(), m_view.toMm(kFreeSnapPx));
    const SizeMm panel = m_content.list.size;
    cell.x = std::clamp(cell.x, Mm(0), std::max(Mm(0), panel.width - cell.width));
    cell.y = std::clamp(cell.y, Mm(0), std::max(Mm(0), panel.height - cell.height));
    return cell;
}

void Canvas::moveTrialTo(QPointF at, Qt::KeyboardModifiers modifiers)
{
    const RectMm was = m_trials.front().now.cell;
    const QRectF stands = m_view.toPx(m_trials.front().before.cell);
    const QRect before =
        dirtyRectOf(was) | stands.translated(m_follow).toAlignedRect().adjusted(-15, -15, 15, 15);
    m_follow = at - m_pressedAt;
    Attempt attempt;
    if (m_helpers.panelAt)
        attempt.panel = m_helpers.panelAt(at.toPoint());
    const CanvasPiece* under =
        modifiers.testFlag(Qt::ShiftModifier) && m_held.size() == 1 ? pieceAt(at, true) : nullptr;
    if (attempt.panel.isValid()) {
        attempt.what = Attempt::What::Carry;
    } else if (under != nullptr) {
        attempt.what = Attempt::What::Swap;
        attempt.with = under->piece.id;
        attempt.cell = under->piece.cell;
    } else {
        attempt.what = Attempt::What::Place;
        attempt.cell = wishedCell(modifiers);
    }
    if (!(attempt == m_attempt)) {
        if (attempt.what == Attempt::What::Place) {
            moveTrialsBy(attempt.cell.x - m_trials.front().before.cell.x,
                attempt.cell.y - m_trials.front().before.cell.y);
            updateGuides(attempt.cell);
        } else {
            clearGuides();
        }
        if (attempt.what != m_attempt.what || attempt.with != m_attempt.with)
            update(); // a goal somewhere else came or went
        setAttempt(attempt);
    }
    updateTrialRegion(before);
}

// Several keep their places to each other and stay on the paper together.
void Canvas::moveTrialsBy(Mm dx, Mm dy)
{
    const SizeMm panel = m_content.list.size;
    for (const Trial& trial : m_trials) {
        const RectMm& cell = trial.before.cell;
        dx = std::clamp(dx, -cell.x, std::max(-cell.x, panel.width - cell.right()));
        dy = std::clamp(dy, -cell.y, std::max(-cell.y, panel.height - cell.bottom()));
    }
    for (Trial& trial : m_trials) {
        const RectMm goal = trial.before.cell.movedBy(dx, dy);
        for (const RectMm& cell : {trial.now.cell, goal}) {
            update(dirtyRectOf(cell));
            const QRectF box = m_view.toPx(cell);
            // The column lines of the old and the new goal run down the whole panel.
            for (const double x : {box.left(), box.right()})
                update(QRectF(x - 2, panelRect().top(), 4, panelRect().height()).toAlignedRect());
        }
        trial.now = m_helpers.placing ? m_helpers.placing(trial.before, goal) : trial.before;
    }
}

void Canvas::resizeTrialTo(QPointF at)
{
    const QPointF delta = at - m_pressedAt;
    const RectMm cell = resized(m_content.style.grid,
        m_trials.front().before.cell,
        m_edges,
        m_view.toMm(delta.x()),
        m_view.toMm(delta.y()));
    if (cell == m_trials.front().now.cell || !m_helpers.placing)
        return;
    showTrial(m_helpers.placing(m_trials.front().before, cell));
    updateGuides(cell);
    setAttempt({Attempt::What::Resize, cell, {}, {}});
    update(); // the column lines run down the whole panel
}

void Canvas::cropTrialTo(QPointF at)
{
    const CanvasPiece* piece = find(inHand());
    if (piece == nullptr || m_trials.empty() || piece->pictureSize.isEmpty())
        return;
    const Piece& before = m_trials.front().before;
    const RectMm place = before.picturePlace;
    if (place.isEmpty())
        return;
    const RectFraction part =
        visiblePart(piece->pictureSize, place.width / place.height, before.framing);
    // The picture follows the pointer: the point kept in view moves the other way.
    const QPointF delta = at - m_pressedAt;
    const QRectF frame = m_view.toPx(place);
    Piece trial = before;
    const auto shifted = [](double start, double length, double by) {
        return std::clamp(start + length / 2 - by * length, length / 2, 1 - length / 2);
    };
    trial.framing.focus = {shifted(part.x, part.width, delta.x() / frame.width()),
        shifted(part.y, part.height, delta.y() / frame.height())};
    showTrial(trial);
}

void Canvas::zoomCrop(double factor)
{
    if (m_trials.empty())
        beginTrying(false);
    if (m_trials.empty())
        return;
    Piece trial = m_trials.front().now;
    trial.framing.zoom = std::clamp(trial.framing.zoom * factor, 1.0, kMostFrameZoom);
    m_trials.front().before.framing = find(inHand())->piece.framing;
    setMode(Mode::Crop);
    showTrial(trial);
    finishTrial();
}

void Canvas::putBack()
{
    const bool wasBusy = isBusy() || !m_trials.empty();
    endTrying();
    setMode(Mode::Idle);
    if (wasBusy)
        dropStaticLayer();
}

std::vector<PlacedCell> Canvas::triedCells() const
{
    std::vector<PlacedCell> cells;
    for (const Trial& trial : m_trials)
        cells.push_back({trial.now.id, trial.now.cell});
    return cells;
}

void Canvas::finishTrial()
{
    if (m_trials.empty())
        return;
    if (m_mode != Mode::Crop && m_mode != Mode::CropDrag) {
        finishMove();
        return;
    }
    const Piece result = m_trials.front().now;
    const Framing before = m_trials.front().before.framing;
    endTrying();
    setMode(Mode::Crop);
    dropStaticLayer();
    if (!(result.framing == before))
        Q_EMIT framed(result.id, result.framing);
}

// The owner hands back the new content before anything is painted again.
void Canvas::finishMove()
{
    const std::vector<PlacedCell> cells = triedCells();
    const bool moved = !(m_trials.front().now.cell == m_trials.front().before.cell);
    const Attempt attempt = m_attempt;
    const PieceId hand = inHand();
    const std::vector<PieceId> all = m_held;
    endTrying();
    setMode(Mode::Idle);
    dropStaticLayer();
    if (attempt.what == Attempt::What::Swap)
        Q_EMIT swapAsked(hand, attempt.with);
    else if (attempt.what == Attempt::What::Carry)
        Q_EMIT carried(all, attempt.panel);
    else if (moved)
        Q_EMIT placed(cells);
}

} // namespace wainscot::ui
