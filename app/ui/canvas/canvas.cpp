#include "app/ui/canvas/canvas.h"

#include <QAccessible>
#include <QGuiApplication>
#include <QScreen>

#include <algorithm>

#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

Canvas::Canvas(PictureProvider& pictures, QWidget* parent)
    : QWidget(parent)
    , m_pictures(pictures)
{
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setAcceptDrops(true);
    setAttribute(Qt::WA_OpaquePaintEvent);
    setAccessibleName(tr("Panel"));
}

Canvas::~Canvas() = default;

void Canvas::setHelpers(Preview preview, Placing placing)
{
    m_preview = std::move(preview);
    m_placing = std::move(placing);
}

void Canvas::setContent(CanvasContent content)
{
    const bool otherSize = !m_hasContent || !(content.list.size == m_content.list.size);
    m_content = std::move(content);
    m_hasContent = true;
    m_trial.reset();
    if (m_mode != Mode::Crop)
        setMode(Mode::Idle);
    if (find(m_hand) == nullptr)
        m_hand = PieceId();
    if (otherSize || m_fitted)
        fitWhole();
    dropStaticLayer();
}

void Canvas::clearContent()
{
    m_content = {};
    m_hasContent = false;
    m_hand = PieceId();
    m_trial.reset();
    setMode(Mode::Idle);
    dropStaticLayer();
}

void Canvas::refreshPictures()
{
    dropStaticLayer();
}

const CanvasPiece* Canvas::find(PieceId id) const
{
    for (const CanvasPiece& piece : m_content.pieces) {
        if (piece.piece.id == id)
            return &piece;
    }
    return nullptr;
}

void Canvas::takeInHand(PieceId id)
{
    if (m_hand == id)
        return;
    if (isBusy())
        putBack();
    m_hand = find(id) != nullptr ? id : PieceId();
    update();
    const auto& pieces = m_content.pieces;
    const auto at = std::find_if(pieces.begin(), pieces.end(), [this](const CanvasPiece& p) {
        return p.piece.id == m_hand;
    });
    if (at != pieces.end() && hasFocus()) {
        QAccessibleEvent focus(this, QAccessible::Focus);
        focus.setChild(int(at - pieces.begin()));
        QAccessible::updateAccessibility(&focus);
    }
}

void Canvas::tryPiece(const std::optional<Piece>& piece)
{
    if (piece) {
        if (!m_trial)
            beginTrying();
        showTrial(*piece);
    } else if (m_trial) {
        m_trial.reset();
        dropStaticLayer();
    }
}

void Canvas::setMode(Mode mode)
{
    if (m_mode == mode)
        return;
    m_mode = mode;
    Q_EMIT modeChanged();
}

void Canvas::setFitRoom(const QRectF& room)
{
    if (m_fitRoom == room)
        return;
    m_fitRoom = room;
    if (m_fitted)
        fitWhole();
}

void Canvas::fitWhole()
{
    m_fitted = true;
    if (m_hasContent)
        m_view.fit(m_content.list.size, m_fitRoom.isEmpty() ? QRectF(rect()) : m_fitRoom);
    viewMoved();
}

void Canvas::zoomBy(double factor)
{
    m_fitted = false;
    const QRectF hand = pieceRect(m_hand);
    m_view.zoomAbout(hand.isEmpty() ? QRectF(rect()).center() : hand.center(), factor);
    viewMoved();
}

void Canvas::zoomToTrueSize()
{
    m_fitted = false;
    const double perInch = screen() != nullptr ? screen()->physicalDotsPerInch() : 96.0;
    const QRectF hand = pieceRect(m_hand);
    m_view.setScaleAbout(
        hand.isEmpty() ? QRectF(rect()).center() : hand.center(), perInch / kMmPerInch);
    viewMoved();
}

void Canvas::viewMoved()
{
    dropStaticLayer();
    Q_EMIT viewChanged();
}

QRectF Canvas::panelRect() const
{
    const SizeMm size = m_content.list.size;
    return m_view.toPx(RectMm{Mm(0), Mm(0), size.width, size.height});
}

QRectF Canvas::pieceRect(PieceId id) const
{
    if (m_trial && m_trial->id == id)
        return m_view.toPx(m_trial->cell);
    const CanvasPiece* piece = find(id);
    return piece != nullptr ? m_view.toPx(piece->piece.cell) : QRectF();
}

void Canvas::beginTrying()
{
    const CanvasPiece* piece = find(m_hand);
    if (piece == nullptr)
        return;
    m_before = piece->piece;
    m_follow = QPointF();
    m_trialPixmap = QPixmap();
    m_trial = m_before;
    m_trialList = m_preview ? m_preview(*m_trial) : DisplayList();
    dropStaticLayer();
}

void Canvas::showTrial(const Piece& piece)
{
    const QRect before = m_trial ? dirtyRectOf(m_trial->cell) : QRect();
    m_trial = piece;
    m_trialList = m_preview ? m_preview(piece) : DisplayList();
    updateTrialRegion(before);
    Q_EMIT trying(piece.cell);
}

void Canvas::putBack()
{
    const bool wasBusy = isBusy() || m_trial.has_value();
    m_trial.reset();
    m_follow = QPointF();
    setMode(Mode::Idle);
    if (wasBusy)
        dropStaticLayer();
}

void Canvas::finishTrial()
{
    const Mode mode = m_mode;
    if (!m_trial)
        return;
    const Piece result = *m_trial;
    m_trial.reset();
    m_follow = QPointF();
    const bool cropping = mode == Mode::Crop || mode == Mode::CropDrag;
    setMode(cropping ? Mode::Crop : Mode::Idle);
    dropStaticLayer();
    if (cropping) {
        if (!(result.framing == m_before.framing))
            Q_EMIT framed(result.id, result.framing);
    } else if (!(result.cell == m_before.cell)) {
        Q_EMIT placed(result.id, result.cell);
    }
}

void Canvas::setCropping(bool on)
{
    const CanvasPiece* piece = find(m_hand);
    if (on && (piece == nullptr || piece->piece.kind != PieceKind::Photo))
        return;
    if (on == isCropping())
        return;
    if (on) {
        setMode(Mode::Crop);
        setFocus();
    } else {
        putBack();
    }
    update();
}

void Canvas::lift()
{
    if (find(m_hand) == nullptr || isBusy())
        return;
    beginTrying();
    setMode(Mode::Lift);
    setFocus();
    update();
}

void Canvas::setDown()
{
    if (m_mode == Mode::Lift)
        finishTrial();
}

void Canvas::dropStaticLayer()
{
    m_static = QPixmap();
    update();
}

Canvas::Work Canvas::takeWork()
{
    return std::exchange(m_work, {});
}

} // namespace wainscot::ui
