#include "app/ui/canvas/canvas.h"

#include <QPaintEvent>
#include <QPainter>

#include <cmath>

#include "app/ui/kit/icons.h"
#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

namespace {

constexpr int kHandReach = 18; // px a marked piece reaches beyond its cell: bars, finding

DisplayList without(const DisplayList& list, PieceId piece)
{
    DisplayList rest = list;
    std::erase_if(rest.marks, [piece](const Mark& mark) { return mark.piece == piece; });
    return rest;
}

// A straight outline in whole pixels. Filled, not stroked: a moving piece is drawn at every step,
// and a smoothed stroke costs more than all the rest of the step.
void outline(QPainter& painter, const QRect& r, int thick, const QColor& colour)
{
    const int half = thick / 2;
    const QRect outer = r.adjusted(-half, -half, thick - half, thick - half);
    painter.fillRect(outer.left(), outer.top(), outer.width(), thick, colour);
    painter.fillRect(outer.left(), outer.bottom() + 1 - thick, outer.width(), thick, colour);
    painter.fillRect(outer.left(), outer.top(), thick, outer.height(), colour);
    painter.fillRect(outer.right() + 1 - thick, outer.top(), thick, outer.height(), colour);
}

// A line that shows on pictures of any tone: white below, the colour above.
void lineOnAny(QPainter& painter, const QRectF& rect, const QColor& colour)
{
    outline(painter, rect.toAlignedRect(), 4, Qt::white);
    outline(painter, rect.toAlignedRect(), 2, colour);
}

// The dashed field with its word, painted once for a drag.
QPixmap goalField(QSize size, double ratio)
{
    QPixmap field(size * ratio);
    field.setDevicePixelRatio(ratio);
    field.fill(Qt::transparent);
    const QRect box(QPoint(), size);
    QPainter painter(&field);
    painter.fillRect(box, QColor(255, 255, 255, 190));
    painter.fillRect(box, QColor(138, 63, 107, 34));
    painter.setPen(QPen(QColor(kHandOnPaper), 2, Qt::DashLine));
    painter.drawRect(box.adjusted(1, 1, -1, -1));
    painter.setFont(interfaceFont(0.88, QFont::DemiBold));
    painter.drawText(box, Qt::AlignCenter, Canvas::tr("here"));
    return field;
}

} // namespace

QRect Canvas::dirtyRectOf(const RectMm& cell) const
{
    return m_view.toPx(cell).toAlignedRect().adjusted(
        -kHandReach, -kHandReach, kHandReach, kHandReach);
}

// Text may run out of its cell at the foot, so what was typeset counts, not the cell alone.
void Canvas::updateTrialRegion(const QRect& before)
{
    QRect now = dirtyRectOf(m_trial->cell);
    if (m_mode == Mode::Move) {
        const QRectF stands = m_view.toPx(m_before.cell).translated(m_follow);
        now |= stands.toAlignedRect().adjusted(-kHandReach, -kHandReach, kHandReach, kHandReach);
        update(before);
        update(now);
        return;
    }
    const int foot = int(m_view.scale() * m_content.style.grid.rowUnit.value() * 6);
    update(before.adjusted(0, 0, 0, foot));
    update(now.adjusted(0, 0, 0, foot));
}

void Canvas::paintPaper(QPainter& painter, const QRect& dirty)
{
    painter.fillRect(dirty, tokens().wall);
    if (!m_hasContent)
        return;
    const QRectF paper = panelRect();
    painter.fillRect(paper.translated(2, 3), QColor(0, 0, 0, 46));
    painter.fillRect(paper.translated(1, 1), QColor(0, 0, 0, 30));
    painter.fillRect(paper, Qt::white);
}

void Canvas::paintMarks(QPainter& painter, const DisplayList& list, const QRect& dirty)
{
    painter.save();
    painter.setRenderHints(QPainter::Antialiasing | QPainter::SmoothPixmapTransform);
    painter.setClipRect(QRectF(dirty) & panelRect());
    painter.setTransform(m_view.transform(), true);
    // A picture that is still loading shows as a calm tone; nothing else can fail on a screen.
    (void)paint(painter, list, m_pictures, PaintPurpose::Screen, m_view.toMm(QRectF(dirty)));
    painter.restore();
}

const QPixmap& Canvas::staticLayer()
{
    if (!m_static.isNull())
        return m_static;
    ++m_work.staticLayers;
    m_static = QPixmap(size() * devicePixelRatioF());
    m_static.setDevicePixelRatio(devicePixelRatioF());
    QPainter painter(&m_static);
    paintPaper(painter, rect());
    if (m_hasContent) {
        if (m_trial)
            paintMarks(painter, without(m_content.list, m_trial->id), rect());
        else
            paintMarks(painter, m_content.list, rect());
    }
    return m_static;
}

void Canvas::paintEvent(QPaintEvent* event)
{
    QPainter painter(this);
    const QPixmap& layer = staticLayer();
    const double ratio = layer.devicePixelRatio();
    for (const QRect& dirty : event->region()) {
        m_work.pixels += qint64(dirty.width()) * dirty.height();
        painter.drawPixmap(dirty,
            layer,
            QRectF(QPointF(dirty.topLeft()) * ratio, QSizeF(dirty.size()) * ratio).toRect());
    }
    if (!m_hasContent)
        return;
    // The toolkit itself clips to what is repainted.
    painter.setRenderHint(QPainter::Antialiasing);
    if (m_trial)
        paintTrial(painter, event->region().boundingRect());
    else if (const CanvasPiece* piece = find(m_hand))
        paintHand(painter, piece->piece.cell);
    if (m_dropCell)
        paintGoal(painter, *m_dropCell, true, event->region().boundingRect());
    paintSigns(painter);
}

void Canvas::paintTrial(QPainter& painter, const QRect& dirty)
{
    if (m_mode == Mode::Move) {
        paintGoal(painter, m_trial->cell, true, dirty);
        paintMovedMarks(painter);
        return;
    }
    paintMarks(painter, m_trialList, dirty);
    if (m_mode == Mode::Lift || m_mode == Mode::Resize)
        paintGoal(painter, m_trial->cell, false, dirty);
    paintHand(painter, m_trial->cell);
}

// The moved piece is painted once; after that a move copies pixels only.
void Canvas::paintMovedMarks(QPainter& painter)
{
    const QRectF stands = m_view.toPx(m_before.cell);
    const QRect source = stands.toAlignedRect().adjusted(-8, -4, 8, 12);
    if (m_trialPixmap.isNull()) {
        const double ratio = devicePixelRatioF();
        m_trialPixmap = QPixmap(source.size() * ratio);
        m_trialPixmap.setDevicePixelRatio(ratio);
        m_trialPixmap.fill(Qt::transparent);
        QPainter own(&m_trialPixmap);
        own.translate(-source.topLeft());
        own.fillRect(stands, QColor(255, 255, 255, 225));
        own.setRenderHints(QPainter::Antialiasing | QPainter::SmoothPixmapTransform);
        own.setTransform(m_view.transform() * own.transform());
        (void)paint(own, m_trialList, m_pictures, PaintPurpose::Screen);
        own.resetTransform();
        lineOnAny(own, stands.translated(-source.topLeft()), QColor(kHandOnPaper));
    }
    const QPointF at = QPointF(source.topLeft()) + m_follow;
    painter.setOpacity(0.85); // what lies under it stays to be seen
    painter.drawPixmap(at.toPoint(), m_trialPixmap);
    painter.setOpacity(1);
}

// Where the piece would go: a dashed field, its name "here", and the lines of its columns.
void Canvas::paintGoal(QPainter& painter, const RectMm& cell, bool words, const QRect& dirty) const
{
    const QRectF goal = m_view.toPx(cell);
    const QRectF paper = panelRect();
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing, false);
    for (const double x : {goal.left(), goal.right()}) {
        painter.fillRect(
            QRectF(x, paper.top(), 1, paper.height()).toRect() & dirty, QColor(138, 63, 107, 110));
    }
    if (words) {
        const QSize size = goal.toAlignedRect().size();
        if (m_goalPixmap.deviceIndependentSize().toSize() != size)
            m_goalPixmap = goalField(size, devicePixelRatioF());
        painter.drawPixmap(goal.toAlignedRect().topLeft(), m_goalPixmap);
    }
    painter.restore();
}

void Canvas::paintHand(QPainter& painter, const RectMm& cell) const
{
    const QColor hand(kHandOnPaper);
    // Descenders hang below a cell, so the outline keeps a little away from it.
    const QRectF box = m_view.toPx(cell).adjusted(-3, -3, 3, 6);
    painter.save();
    lineOnAny(painter, box, hand);
    if (m_mode == Mode::Crop || m_mode == Mode::CropDrag) {
        painter.setPen(QPen(QColor(255, 255, 255, 170), 1));
        const QRectF frame =
            m_view.toPx(m_trial ? m_trial->picturePlace : find(m_hand)->piece.picturePlace);
        for (const double share : {1 / 3.0, 2 / 3.0}) {
            const double x = frame.left() + frame.width() * share;
            const double y = frame.top() + frame.height() * share;
            painter.drawLine(QPointF(x, frame.top()), QPointF(x, frame.bottom()));
            painter.drawLine(QPointF(frame.left(), y), QPointF(frame.right(), y));
        }
        painter.restore();
        return;
    }
    const double half = qMin<double>(scaled(9), qMin(box.width(), box.height()) / 4);
    const QPointF middle = box.center();
    const auto bar = [&](QPointF from, QPointF to) {
        painter.setPen(QPen(Qt::white, 8, Qt::SolidLine, Qt::RoundCap));
        painter.drawLine(from, to);
        painter.setPen(QPen(hand, 4.5, Qt::SolidLine, Qt::RoundCap));
        painter.drawLine(from, to);
    };
    for (const double y : {box.top(), box.bottom()})
        bar({middle.x() - half, y}, {middle.x() + half, y});
    for (const double x : {box.left(), box.right()})
        bar({x, middle.y() - half}, {x, middle.y() + half});
    painter.restore();
}

// Nails of pinned pieces and marks of findings; a focus ring when nothing is in hand.
void Canvas::paintSigns(QPainter& painter) const
{
    for (const CanvasPiece& piece : m_content.pieces) {
        if ((m_trial && m_trial->id == piece.piece.id) || (!piece.piece.pinned && !piece.finding))
            continue;
        const QRectF box = m_view.toPx(piece.piece.cell);
        if (piece.piece.pinned) {
            painter.setPen(QPen(Qt::white, 1.5));
            painter.setBrush(QColor(kHandOnPaper));
            painter.drawEllipse(
                QPointF(box.center().x(), box.top() + scaled(8)), scaled(4), scaled(4));
        }
        if (piece.finding && *piece.finding != Severity::Note) {
            const bool stop = *piece.finding == Severity::Stop;
            // On paper the light colours hold in the dark window too.
            const Tokens paper = lightTokens();
            const QColor line = stop ? paper.stop : paper.look;
            const double side = scaled(20);
            // Mostly outside, so that it covers no face and no word.
            const QRectF sign(box.right() - side / 4, box.bottom() - side / 2, side, side);
            painter.setPen(QPen(line, 1));
            painter.setBrush(stop ? paper.stopTint : paper.lookTint);
            painter.drawRoundedRect(sign, 3, 3);
            drawIcon(painter,
                stop ? Icon::Stop : Icon::Look,
                sign.adjusted(3, 3, -3, -3),
                line,
                stop ? paper.stopTint : line);
        }
    }
    if (hasFocus() && !m_hand.isValid())
        drawFocusRing(painter, panelRect().adjusted(-4, -4, 4, 4));
}

} // namespace wainscot::ui
