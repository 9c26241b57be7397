#include "app/ui/canvas/canvas.h"

#include <QDragEnterEvent>
#include <QKeyEvent>
#include <QMimeData>
#include <QMouseEvent>
#include <QWheelEvent>

#include <algorithm>
#include <cmath>

namespace wainscot::ui {

namespace {

constexpr double kEdgeReach = 10; // px to both sides of an edge that catch the pointer
constexpr double kDragStart = 4; // px before a press becomes a drag
constexpr double kMostZoom = 8; // of a picture in its frame

std::optional<DrawerItem> itemIn(const QMimeData* mime)
{
    const QList<QByteArray> parts = mime->data(QString::fromLatin1(kDrawerMime)).split(' ');
    if (parts.size() != 2)
        return std::nullopt;
    DrawerItem item;
    if (parts[0] == "quote")
        item.kind = DrawerItem::Kind::Quote;
    else if (parts[0] == "picture")
        item.kind = DrawerItem::Kind::Picture;
    else
        item.kind = DrawerItem::Kind::Note;
    item.id = parts[1].toLongLong();
    return item;
}

} // namespace

const CanvasPiece* Canvas::pieceAt(QPointF at) const
{
    const PointMm point = m_view.toMm(at);
    const CanvasPiece* best = nullptr; // of pieces that overlap, the smaller one lies on top
    for (const CanvasPiece& piece : m_content.pieces) {
        if (!piece.piece.cell.contains(point))
            continue;
        if (best == nullptr || piece.piece.cell.areaMm2() < best->piece.cell.areaMm2())
            best = &piece;
    }
    return best;
}

Qt::Edges Canvas::edgesAt(QPointF at) const
{
    const QRectF box = pieceRect(m_hand);
    if (box.isEmpty() || isCropping())
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
    if (event->button() != Qt::LeftButton || m_mode == Mode::Lift)
        return;
    const CanvasPiece* piece = pieceAt(m_pressedAt);
    if (isCropping()) {
        if (piece != nullptr && piece->piece.id == m_hand) {
            if (!m_trial)
                beginTrying();
            setMode(Mode::CropDrag);
            return;
        }
        putBack();
    }
    m_edges = edgesAt(m_pressedAt);
    if (m_edges) {
        beginTrying();
        setMode(Mode::Resize);
        return;
    }
    takeInHand(piece != nullptr ? piece->piece.id : PieceId());
    Q_EMIT taken(m_hand);
    setMode(piece != nullptr ? Mode::Pressed : (m_fitted ? Mode::Idle : Mode::Pan));
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
        beginTrying();
        setMode(Mode::Move);
        [[fallthrough]];
    case Mode::Move:
        moveTrialTo(at);
        return;
    case Mode::Resize:
        resizeTrialTo(at);
        return;
    case Mode::CropDrag:
        cropTrialTo(at);
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
    if (m_mode == Mode::Move || m_mode == Mode::Resize || m_mode == Mode::CropDrag)
        finishTrial();
    else if (m_mode == Mode::Pressed || m_mode == Mode::Pan)
        setMode(Mode::Idle);
    updateCursor(event->position());
}

void Canvas::mouseDoubleClickEvent(QMouseEvent* event)
{
    if (const CanvasPiece* piece = pieceAt(event->position());
        piece != nullptr && event->button() == Qt::LeftButton)
        Q_EMIT writingAsked(piece->piece.id);
}

void Canvas::moveTrialTo(QPointF at)
{
    const QRectF stands = m_view.toPx(m_before.cell);
    const QRect before = dirtyRectOf(m_trial->cell)
        | stands.translated(m_follow).toAlignedRect().adjusted(-15, -15, 15, 15);
    m_follow = at - m_pressedAt;
    const Grid& grid = m_content.style.grid;
    const RectMm wished =
        m_before.cell.movedBy(m_view.toMm(m_follow.x()), m_view.toMm(m_follow.y()));
    const RectMm cell = snapped(grid, wished);
    if (!(cell == m_trial->cell)) {
        // The column lines of the old and the new goal run down the whole panel.
        for (const RectMm& goal : {m_trial->cell, cell}) {
            const QRectF box = m_view.toPx(goal);
            for (const double x : {box.left(), box.right()})
                update(QRectF(x - 2, panelRect().top(), 4, panelRect().height()).toAlignedRect());
        }
        m_trial = m_placing ? m_placing(m_before, cell) : m_before;
        Q_EMIT trying(cell);
    }
    updateTrialRegion(before);
}

void Canvas::resizeTrialTo(QPointF at)
{
    const QPointF delta = at - m_pressedAt;
    const RectMm cell = resized(m_content.style.grid,
        m_before.cell,
        m_edges,
        m_view.toMm(delta.x()),
        m_view.toMm(delta.y()));
    if (cell == m_trial->cell || !m_placing)
        return;
    showTrial(m_placing(m_before, cell));
    update(); // the column lines run down the whole panel
}

void Canvas::cropTrialTo(QPointF at)
{
    const CanvasPiece* piece = find(m_hand);
    const RectMm place = m_before.picturePlace;
    if (piece == nullptr || place.isEmpty() || piece->pictureSize.isEmpty())
        return;
    const RectFraction part =
        visiblePart(piece->pictureSize, place.width / place.height, m_before.framing);
    // The picture follows the pointer: the point kept in view moves the other way.
    const QPointF delta = at - m_pressedAt;
    const QRectF frame = m_view.toPx(place);
    Piece trial = m_before;
    const auto shifted = [](double start, double length, double by) {
        return std::clamp(start + length / 2 - by * length, length / 2, 1 - length / 2);
    };
    trial.framing.focus = {shifted(part.x, part.width, delta.x() / frame.width()),
        shifted(part.y, part.height, delta.y() / frame.height())};
    showTrial(trial);
}

void Canvas::zoomCrop(double factor)
{
    if (!m_trial)
        beginTrying();
    if (!m_trial)
        return;
    Piece trial = *m_trial;
    trial.framing.zoom = std::clamp(trial.framing.zoom * factor, 1.0, kMostZoom);
    m_before.framing = find(m_hand)->piece.framing;
    setMode(Mode::Crop);
    showTrial(trial);
    finishTrial();
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
    return QWidget::event(event);
}

void Canvas::keyPressEvent(QKeyEvent* event)
{
    const bool done = m_mode == Mode::Lift ? liftedKey(event)
        : isCropping()                     ? cropKey(event)
                                           : chosenKey(event);
    if (!done)
        QWidget::keyPressEvent(event);
}

bool Canvas::liftedKey(QKeyEvent* event)
{
    int columns = 0;
    int rows = 0;
    switch (event->key()) {
    case Qt::Key_Left:
        columns = -1;
        break;
    case Qt::Key_Right:
        columns = 1;
        break;
    case Qt::Key_Up:
        rows = -1;
        break;
    case Qt::Key_Down:
        rows = 1;
        break;
    case Qt::Key_Return:
    case Qt::Key_Enter:
    case Qt::Key_Space:
        setDown();
        return true;
    case Qt::Key_Escape:
        putBack();
        return true;
    default:
        return false;
    }
    const Grid& grid = m_content.style.grid;
    RectMm cell = m_trial->cell;
    if (event->modifiers().testFlag(Qt::AltModifier)) {
        const SizeMm panel = grid.panel;
        cell = cell.movedBy(Mm(columns * 0.5), Mm(rows * 0.5));
        cell.x = std::clamp(cell.x, Mm(0), panel.width - cell.width);
        cell.y = std::clamp(cell.y, Mm(0), panel.height - cell.height);
    } else if (event->modifiers().testFlag(Qt::ShiftModifier)) {
        cell = resized(grid,
            cell,
            Qt::RightEdge | Qt::BottomEdge,
            columns * (grid.column + grid.gutter),
            rows * grid.rowUnit);
    } else {
        cell = moved(grid, cell, columns, rows);
    }
    if (m_placing)
        showTrial(m_placing(m_before, cell));
    update();
    return true;
}

bool Canvas::cropKey(QKeyEvent* event)
{
    QPointF step;
    switch (event->key()) {
    case Qt::Key_Left:
        step = {-8, 0};
        break;
    case Qt::Key_Right:
        step = {8, 0};
        break;
    case Qt::Key_Up:
        step = {0, -8};
        break;
    case Qt::Key_Down:
        step = {0, 8};
        break;
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
        return false;
    }
    beginTrying();
    m_pressedAt = {};
    cropTrialTo(step);
    finishTrial();
    return true;
}

bool Canvas::chosenKey(QKeyEvent* event)
{
    if ((event->modifiers() & ~Qt::KeypadModifier) != Qt::NoModifier)
        return false;
    const bool mirrored = layoutDirection() == Qt::RightToLeft;
    switch (event->key()) {
    case Qt::Key_Down:
        chooseNext(1);
        return true;
    case Qt::Key_Up:
        chooseNext(-1);
        return true;
    case Qt::Key_Right:
        chooseNext(mirrored ? -1 : 1);
        return true;
    case Qt::Key_Left:
        chooseNext(mirrored ? 1 : -1);
        return true;
    case Qt::Key_Home:
        chooseNext(-10000);
        return true;
    case Qt::Key_End:
        chooseNext(10000);
        return true;
    case Qt::Key_Space:
        lift();
        return true;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (m_hand.isValid())
            Q_EMIT writingAsked(m_hand);
        return true;
    case Qt::Key_Escape:
        takeInHand(PieceId());
        Q_EMIT taken(PieceId());
        return true;
    default:
        return false;
    }
}

void Canvas::chooseNext(int step)
{
    const auto& pieces = m_content.pieces;
    if (pieces.empty())
        return;
    int at = step > 0 ? -1 : 0;
    for (int i = 0; i < int(pieces.size()); ++i) {
        if (pieces[std::size_t(i)].piece.id == m_hand)
            at = i;
    }
    at = std::clamp(at + step, 0, int(pieces.size()) - 1);
    takeInHand(pieces[std::size_t(at)].piece.id);
    Q_EMIT taken(m_hand);
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
    if (!m_hand.isValid() && event->reason() != Qt::MouseFocusReason && !m_content.pieces.empty()
        && event->reason() != Qt::ActiveWindowFocusReason)
        chooseNext(1);
    update();
}

void Canvas::focusOutEvent(QFocusEvent* event)
{
    QWidget::focusOutEvent(event);
    update();
}

void Canvas::dragEnterEvent(QDragEnterEvent* event)
{
    if (m_hasContent && itemIn(event->mimeData()))
        event->acceptProposedAction();
}

void Canvas::dragMoveEvent(QDragMoveEvent* event)
{
    const Grid& grid = m_content.style.grid;
    const PointMm at = m_view.toMm(event->position());
    const Mm width = grid.width(std::max(1, grid.columns / 4));
    const Mm height = grid.height(std::max(1, grid.rows / 5));
    m_dropCell =
        rectOf(grid, nearestCell(grid, {at.x - width / 2, at.y - height / 2, width, height}));
    event->acceptProposedAction();
    update();
    Q_EMIT trying(*m_dropCell);
}

void Canvas::dragLeaveEvent(QDragLeaveEvent* /*event*/)
{
    m_dropCell.reset();
    update();
}

void Canvas::dropEvent(QDropEvent* event)
{
    const auto item = itemIn(event->mimeData());
    if (!item || !m_dropCell)
        return;
    const RectMm cell = *m_dropCell;
    m_dropCell.reset();
    event->acceptProposedAction();
    update();
    Q_EMIT dropped(*item, cell);
}

} // namespace wainscot::ui
