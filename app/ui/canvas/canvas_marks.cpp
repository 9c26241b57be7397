// What is drawn over the panel: the hand, where it would let go, guides, pins and findings.
#include "app/ui/canvas/canvas.h"

#include <QPainter>

#include "app/ui/canvas/outline.h"
#include "app/ui/canvas/ruler.h"
#include "app/ui/kit/icons.h"
#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

namespace {

const QColor kGuide(138, 63, 107, 150);
constexpr Mm kMeeting(0.2); // edges so near to each other are one line

// The dashed field with its word, painted once for a drag.
QPixmap goalField(QSize size, double ratio, const QString& word)
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
    painter.drawText(box, Qt::AlignCenter | Qt::TextWordWrap, word);
    return field;
}

// Of a guide or a distance, with room for its number.
QRect reachOf(const QRectF& line)
{
    return line.toAlignedRect().adjusted(-24, -9, 24, 9);
}

} // namespace

void Canvas::updateGuides(const RectMm& cell)
{
    clearGuides();
    const std::vector<RectMm> others = otherCells();
    m_guides = guidesFor(cell, others, kMeeting);
    m_distances = distancesFor(cell, others, m_content.list.size);
    clearGuides(false);
}

void Canvas::clearGuides(bool forget)
{
    for (const Guide& guide : m_guides) {
        const bool vertical = guide.along == Qt::Vertical;
        const PointMm from =
            vertical ? PointMm{guide.at, guide.from} : PointMm{guide.from, guide.at};
        const PointMm to = vertical ? PointMm{guide.at, guide.to} : PointMm{guide.to, guide.at};
        update(reachOf(QRectF(m_view.toPx(from), m_view.toPx(to))));
    }
    for (const Distance& distance : m_distances)
        update(reachOf(QRectF(m_view.toPx(distance.from), m_view.toPx(distance.to))));
    if (forget) {
        m_guides.clear();
        m_distances.clear();
    }
}

void Canvas::paintGuides(QPainter& painter) const
{
    if (m_guides.empty() && m_distances.empty())
        return;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing, false);
    for (const Guide& guide : m_guides) {
        const QPointF from =
            m_view.toPx(guide.along == Qt::Vertical ? PointMm{guide.at, guide.from}
                                                    : PointMm{guide.from, guide.at});
        const double length = m_view.scale() * (guide.to - guide.from).value();
        const QSize size =
            guide.along == Qt::Vertical ? QSize(1, qRound(length)) : QSize(qRound(length), 1);
        painter.fillRect(QRect(from.toPoint(), size), kGuide);
    }
    painter.setFont(interfaceFont(0.85));
    const QFontMetrics metrics(painter.font());
    for (const Distance& distance : m_distances) {
        const QPointF from = m_view.toPx(distance.from);
        const QPointF to = m_view.toPx(distance.to);
        painter.fillRect(QRect(from.toPoint(), to.toPoint()), QColor(138, 63, 107, 90));
        const QString text = lengthText(distance.length(), m_inches);
        QRect box(0, 0, metrics.horizontalAdvance(text) + 8, metrics.height());
        box.moveCenter(((from + to) / 2).toPoint());
        // A gap smaller than its number would hide what is beside it.
        if (QLineF(from, to).length() < metrics.height())
            continue;
        painter.fillRect(box, QColor(255, 255, 255, 225));
        painter.setPen(QColor(kHandOnPaper));
        painter.drawText(box, Qt::AlignCenter, text);
    }
    painter.restore();
}

// Where it would go: the field of each piece, or the piece it would trade places with.
void Canvas::paintAttempt(QPainter& painter, const QRect& dirty) const
{
    switch (m_attempt.what) {
    case Attempt::What::Swap:
        paintGoal(painter, m_attempt.cell, tr("trade places"), dirty);
        break;
    case Attempt::What::Carry:
    case Attempt::What::Nothing:
        break;
    default:
        for (const Trial& trial : m_trials)
            paintGoal(painter, trial.now.cell, tr("here"), dirty);
    }
}

// A dashed field, its word, and the lines of its columns.
void Canvas::paintGoal(
    QPainter& painter, const RectMm& cell, const QString& word, const QRect& dirty) const
{
    const QRectF goal = m_view.toPx(cell);
    const QRectF paper = panelRect();
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing, false);
    for (const double x : {goal.left(), goal.right()}) {
        painter.fillRect(
            QRectF(x, paper.top(), 1, paper.height()).toRect() & dirty, QColor(138, 63, 107, 110));
    }
    if (!word.isEmpty()) {
        const QSize size = goal.toAlignedRect().size();
        if (m_goalPixmap.deviceIndependentSize().toSize() != size || m_goalWord != word)
            m_goalPixmap = goalField(size, devicePixelRatioF(), word);
        m_goalWord = word;
        painter.drawPixmap(goal.toAlignedRect().topLeft(), m_goalPixmap);
    }
    painter.restore();
}

// The piece the note speaks of has bars to resize it; others in the hand a line only.
void Canvas::paintHeld(QPainter& painter) const
{
    for (std::size_t i = m_held.size(); i-- > 0;) {
        const CanvasPiece* piece = find(m_held[i]);
        if (piece == nullptr)
            continue;
        if (i == 0 && m_held.size() == 1)
            paintHand(painter, piece->piece.cell);
        else if (i == 0)
            lineOnAny(painter,
                m_view.toPx(piece->piece.cell).adjusted(-3, -3, 3, 6),
                QColor(kHandOnPaper));
        else
            outline(painter,
                m_view.toPx(piece->piece.cell).adjusted(-3, -3, 3, 6).toAlignedRect(),
                1,
                QColor(kHandOnPaper));
    }
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
        const QRectF frame = m_view.toPx(m_trials.empty() ? find(inHand())->piece.picturePlace
                                                          : m_trials.front().now.picturePlace);
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
    const bool moving = !m_trials.empty();
    for (const CanvasPiece& piece : m_content.pieces) {
        if ((moving && (m_around || isHeld(piece.piece.id)))
            || (!piece.piece.pinned && !piece.finding))
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
    if (!moving)
        paintStrands(painter);
    if (m_content.locked)
        paintLock(painter);
    if (hasFocus() && m_held.empty())
        drawFocusRing(painter, panelRect().adjusted(-4, -4, 4, 4));
}

} // namespace wainscot::ui
