#include "app/ui/canvas/canvas.h"

#include <QAccessible>

#include <algorithm>

#include "app/ui/canvas/screen_size.h"
#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

namespace {

constexpr int kRestMs = 150; // the rest of the page moves only when the hand holds still

} // namespace

Canvas::Canvas(PictureProvider& pictures, QWidget* parent)
    : QWidget(parent)
    , m_pictures(pictures)
{
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setAcceptDrops(true);
    setAttribute(Qt::WA_OpaquePaintEvent);
    grabGesture(Qt::PinchGesture);
    setAccessibleName(tr("Panel"));
    m_rest.setSingleShot(true);
    m_rest.setInterval(kRestMs);
    connect(&m_rest, &QTimer::timeout, this, [this] {
        if (m_attempt.what != Attempt::What::Nothing)
            Q_EMIT rested(m_attempt);
    });
}

Canvas::~Canvas() = default;

void Canvas::setHelpers(Helpers helpers)
{
    m_helpers = std::move(helpers);
}

void Canvas::setContent(CanvasContent content)
{
    const bool otherSize = !m_hasContent || !(content.list.size == m_content.list.size);
    m_content = std::move(content);
    m_hasContent = true;
    endTrying();
    if (m_mode != Mode::Crop)
        setMode(Mode::Idle);
    std::erase_if(m_held, [this](PieceId id) { return find(id) == nullptr; });
    if (otherSize || m_fitted)
        fitWhole();
    dropStaticLayer();
}

void Canvas::clearContent()
{
    m_content = {};
    m_hasContent = false;
    m_held.clear();
    endTrying();
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

bool Canvas::isHeld(PieceId id) const
{
    return std::find(m_held.begin(), m_held.end(), id) != m_held.end();
}

void Canvas::takeInHand(PieceId id)
{
    hold(id.isValid() ? std::vector<PieceId>{id} : std::vector<PieceId>{});
}

void Canvas::hold(std::vector<PieceId> ids)
{
    std::erase_if(ids, [this](PieceId id) { return find(id) == nullptr; });
    if (m_held == ids)
        return;
    if (isBusy() && m_mode != Mode::Band)
        putBack();
    m_held = std::move(ids);
    update();
    const auto& pieces = m_content.pieces;
    const auto at = std::find_if(pieces.begin(), pieces.end(), [this](const CanvasPiece& p) {
        return p.piece.id == inHand();
    });
    if (at != pieces.end() && hasFocus()) {
        QAccessibleEvent focus(this, QAccessible::Focus);
        focus.setChild(int(at - pieces.begin()));
        QAccessible::updateAccessibility(&focus);
    }
}

void Canvas::holdAll()
{
    std::vector<PieceId> all = m_held; // the piece in hand stays the first
    for (const CanvasPiece& piece : m_content.pieces) {
        if (!isHeld(piece.piece.id))
            all.push_back(piece.piece.id);
    }
    hold(std::move(all));
    sayTaken();
}

void Canvas::toggleHeld(PieceId id)
{
    std::vector<PieceId> ids = m_held;
    const auto at = std::find(ids.begin(), ids.end(), id);
    if (at != ids.end())
        ids.erase(at);
    else
        ids.push_back(id);
    hold(std::move(ids));
    sayTaken();
}

void Canvas::sayTaken()
{
    Q_EMIT taken(inHand());
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
    const QRectF hand = pieceRect(inHand());
    m_view.zoomAbout(hand.isEmpty() ? QRectF(rect()).center() : hand.center(), factor);
    viewMoved();
}

void Canvas::zoomToTrueSize()
{
    m_fitted = false;
    const QRectF hand = pieceRect(inHand());
    m_view.setScaleAbout(
        hand.isEmpty() ? QRectF(rect()).center() : hand.center(), pixelsPerMm(*this));
    viewMoved();
}

void Canvas::setRulers(bool shown, bool inches)
{
    m_rulers = shown;
    m_inches = inches;
    dropStaticLayer();
    Q_EMIT rulersChanged();
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
    for (const Trial& trial : m_trials) {
        if (trial.now.id == id)
            return m_view.toPx(trial.now.cell);
    }
    const CanvasPiece* piece = find(id);
    return piece != nullptr ? m_view.toPx(piece->piece.cell) : QRectF();
}

void Canvas::setCropping(bool on)
{
    const CanvasPiece* piece = find(inHand());
    if (on && (piece == nullptr || piece->piece.kind != PieceKind::Photo || m_held.size() != 1))
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
    if (find(inHand()) == nullptr || isBusy())
        return;
    beginTrying(true);
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
