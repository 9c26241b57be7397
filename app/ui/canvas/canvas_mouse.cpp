// The mouse, the wheel and pinching.
#include "app/ui/canvas/canvas.h"

#include <QContextMenuEvent>
#include <QGestureEvent>
#include <QMouseEvent>
#include <QNativeGestureEvent>
#include <QPinchGesture>
#include <QWheelEvent>

#include <algorithm>
#include <cmath>

namespace wainscot::ui {

namespace {

constexpr double kEdgeReach = 10; // px to both sides of an edge that catch the pointer
constexpr double kDragStart = 4; // px before a press becomes a drag

} // namespace

const CanvasPiece* Canvas::pieceAt(QPointF at, bool exceptHeld) const
{
    const PointMm point = m_view.toMm(at);
    const CanvasPiece* best = nullptr; // of pieces that overlap, the smaller one lies on top
    for (const CanvasPiece& piece : m_content.pieces) {
        if (!piece.piece.cell.contains(point) || (exceptHeld && isHeld(piece.piece.id)))
            continue;
        if (best == nullptr || piece.piece.cell.areaMm2() < best->piece.cell.areaMm2())
            best = &piece;
    }
    return best;
}

Qt::Edges Canvas::edgesAt(QPointF at) const
{
    const QRectF box = pieceRect(inHand());
    if (box.isEmpty() || isCropping() || m_held.size() != 1)
        return {};
    // Small pieces keep a middle that moves them.
    const double reach = qMin(kEdgeReach, qMin(box.width(), box.height()) / 4);
    if (!box.adjusted(-kEdgeReach, -kEdgeReach, kEdgeReach, kEdgeReach).contains(at))
        return {};
    Qt::Edges edges;
    edges.setFlag(Qt::LeftEdge, at.x() < box.left() + reach);
    edges.setFlag(Qt::RightEdge, at.x() > box.right() - reach);
    edges.setFlag(Qt::TopEdge, at.y() < box.top() + reach);
    edges.setFlag(Qt::BottomEdge, at.y() > box.bottom() - reach);
    return edges;
}

void Canvas::mousePressEvent(QMouseEvent* event)
{
    m_pressedAt = event->position();
    if (event->button() == Qt::MiddleButton) {
        putBack();
        setMode(Mode::Pan);
        return;
    }
    if (event->button() == Qt::LeftButton && m_mode != Mode::Lift)
        press(event);
}

void Canvas::press(QMouseEvent* event)
{
    const CanvasPiece* piece = pieceAt(m_pressedAt);
    if (isCropping()) {
        if (piece != nullptr && piece->piece.id == inHand()) {
            if (m_trials.empty())
                beginTrying(false);
            setMode(Mode::CropDrag);
            return;
        }
        putBack();
    }
    const bool add = event->modifiers().testFlag(Qt::ShiftModifier);
    m_edges = add ? Qt::Edges() : edgesAt(m_pressedAt);
    if (m_edges) {
        beginTrying(false);
        setMode(Mode::Resize);
        return;
    }
    m_toggleOnRelease = false;
    if (piece == nullptr) {
        m_heldBeforeBand = add ? m_held : std::vector<PieceId>();
        if (!add) {
            takeInHand({});
            sayTaken();
        }
        setMode(Mode::Band);
        return;
    }
    // Shift and a click adds; Shift and a drag trades places, so which it is shows on release.
    m_toggleOnRelease = add || (m_held.size() > 1 && isHeld(piece->piece.id));
    if (!m_toggleOnRelease) {
        takeInHand(piece->piece.id);
        sayTaken();
    }
    setMode(Mode::Pressed);
}

void Canvas::mouseMoveEvent(QMouseEvent* event)
{
    const QPointF at = event->position();
    switch (m_mode) {
    case Mode::Idle:
    case Mode::Crop:
    case Mode::Lift:
        updateCursor(at);
        return;
    case Mode::Pressed:
        if ((at - m_pressedAt).manhattanLength() < kDragStart)
            return;
        if (const CanvasPiece* piece = pieceAt(m_pressedAt);
            piece != nullptr && !isHeld(piece->piece.id)) {
            takeInHand(piece->piece.id);
            sayTaken();
        }
        beginTrying(true);
        setMode(Mode::Move);
        [[fallthrough]];
    case Mode::Move:
        moveTrialTo(at, event->modifiers());
        return;
    case Mode::Resize:
        resizeTrialTo(at);
        return;
    case Mode::CropDrag:
        cropTrialTo(at);
        return;
    case Mode::Band:
        bandTo(at, event->modifiers().testFlag(Qt::ShiftModifier));
        return;
    case Mode::Pan:
        m_fitted = false;
        m_view.panBy(at - m_pressedAt);
        m_pressedAt = at;
        viewMoved();
        return;
    }
}

void Canvas::mouseReleaseEvent(QMouseEvent* event)
{
    const Mode mode = m_mode;
    if (mode == Mode::Move || mode == Mode::Resize || mode == Mode::CropDrag) {
        finishTrial();
    } else if (mode == Mode::Pressed) {
        setMode(Mode::Idle);
        const CanvasPiece* piece = pieceAt(m_pressedAt);
        if (m_toggleOnRelease && piece != nullptr) {
            if (event->modifiers().testFlag(Qt::ShiftModifier)) {
                toggleHeld(piece->piece.id);
            } else {
                takeInHand(piece->piece.id);
                sayTaken();
            }
        }
    } else if (mode == Mode::Pan || mode == Mode::Band) {
        m_band = QRectF();
        setMode(Mode::Idle);
        update();
    }
    updateCursor(event->position());
}

// Everything the band touches, in reading order after what was held before.
void Canvas::bandTo(QPointF at, bool add)
{
    const QRectF before = m_band;
    m_band = QRectF(m_pressedAt, at).normalized();
    update(before.toAlignedRect().adjusted(-3, -3, 3, 3));
    update(m_band.toAlignedRect().adjusted(-3, -3, 3, 3));
    std::vector<PieceId> ids = add ? m_heldBeforeBand : std::vector<PieceId>();
    for (const CanvasPiece& piece : m_content.pieces) {
        if (m_view.toPx(piece.piece.cell).intersects(m_band)
            && std::find(ids.begin(), ids.end(), piece.piece.id) == ids.end())
            ids.push_back(piece.piece.id);
    }
    if (ids != m_held) {
        hold(std::move(ids));
        sayTaken();
    }
}

void Canvas::mouseDoubleClickEvent(QMouseEvent* event)
{
    if (const CanvasPiece* piece = pieceAt(event->position());
        piece != nullptr && event->button() == Qt::LeftButton)
        Q_EMIT writingAsked(piece->piece.id, event->position());
}

void Canvas::contextMenuEvent(QContextMenuEvent* event)
{
    if (isBusy())
        return;
    if (event->reason() == QContextMenuEvent::Mouse) {
        const CanvasPiece* piece = pieceAt(event->pos());
        if (piece == nullptr || !isHeld(piece->piece.id)) {
            takeInHand(piece != nullptr ? piece->piece.id : PieceId());
            sayTaken();
        }
        Q_EMIT menuAsked(event->globalPos());
        return;
    }
    Q_EMIT menuAsked(mapToGlobal(pieceRect(inHand()).center().toPoint()));
}

void Canvas::wheelEvent(QWheelEvent* event)
{
    const double turns = event->angleDelta().y() / 120.0;
    if (isCropping()) {
        zoomCrop(std::pow(1.08, turns));
    } else if (event->modifiers().testFlag(Qt::ControlModifier)) {
        m_fitted = false;
        m_view.zoomAbout(event->position(), std::pow(1.15, turns));
        viewMoved();
    } else if (!m_fitted) {
        const QPoint delta = event->angleDelta();
        m_view.panBy(event->modifiers().testFlag(Qt::ShiftModifier)
                ? QPointF(delta.y(), delta.x()) / 2
                : QPointF(delta) / 2);
        viewMoved();
    }
    event->accept();
}

bool Canvas::event(QEvent* event)
{
    // Escape ends what is being tried before any shortcut of the window sees it.
    if (event->type() == QEvent::ShortcutOverride) {
        const auto* key = static_cast<QKeyEvent*>(event);
        if (isBusy()
            && (key->key() == Qt::Key_Escape || key->key() == Qt::Key_Plus
                || key->key() == Qt::Key_Minus)) {
            event->accept();
            return true;
        }
    }
    if (event->type() == QEvent::NativeGesture)
        return nativeGesture(static_cast<QNativeGestureEvent*>(event));
    if (event->type() == QEvent::Gesture && gesture(event))
        return true;
    return QWidget::event(event);
}

// Two fingers on a touch pad.
bool Canvas::nativeGesture(QNativeGestureEvent* event)
{
    if (event->gestureType() != Qt::ZoomNativeGesture || !m_hasContent)
        return false;
    m_fitted = false;
    m_view.zoomAbout(event->position(), 1 + event->value());
    viewMoved();
    return true;
}

// Two fingers on the screen itself.
bool Canvas::gesture(QEvent* event)
{
    auto* all = static_cast<QGestureEvent*>(event);
    auto* pinch = static_cast<QPinchGesture*>(all->gesture(Qt::PinchGesture));
    if (pinch == nullptr || !m_hasContent)
        return false;
    if (m_mode != Mode::Pan)
        putBack(); // the first finger may have taken a piece
    m_fitted = false;
    m_view.zoomAbout(mapFromGlobal(pinch->centerPoint()), pinch->scaleFactor());
    m_view.panBy(pinch->centerPoint() - pinch->lastCenterPoint());
    viewMoved();
    all->accept(pinch);
    return true;
}

void Canvas::updateCursor(QPointF at)
{
    const Qt::Edges edges = edgesAt(at);
    const bool across = edges & (Qt::LeftEdge | Qt::RightEdge);
    const bool down = edges & (Qt::TopEdge | Qt::BottomEdge);
    if (across && down) {
        const bool falling =
            edges == (Qt::LeftEdge | Qt::TopEdge) || edges == (Qt::RightEdge | Qt::BottomEdge);
        setCursor(falling ? Qt::SizeFDiagCursor : Qt::SizeBDiagCursor);
    } else if (across) {
        setCursor(Qt::SizeHorCursor);
    } else if (down) {
        setCursor(Qt::SizeVerCursor);
    } else if (isCropping()) {
        setCursor(Qt::OpenHandCursor);
    } else {
        setCursor(pieceAt(at) != nullptr ? Qt::PointingHandCursor : Qt::ArrowCursor);
    }
}

} // namespace wainscot::ui
