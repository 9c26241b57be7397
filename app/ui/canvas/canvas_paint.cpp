// The layers of the canvas: paper and marks once, above them what moves.
#include "app/ui/canvas/canvas.h"

#include <QPaintEvent>
#include <QPainter>

#include "app/ui/canvas/outline.h"
#include "app/ui/canvas/ruler.h"
#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

namespace {

constexpr int kHandReach = 18; // px a marked piece reaches beyond its cell: bars, finding

} // namespace

QRect Canvas::dirtyRectOf(const RectMm& cell) const
{
    return m_view.toPx(cell).toAlignedRect().adjusted(
        -kHandReach, -kHandReach, kHandReach, kHandReach);
}

// Text may run out of its cell at the foot, so what was typeset counts, not the cell alone.
void Canvas::updateTrialRegion(const QRect& before)
{
    const Trial& hand = m_trials.front();
    QRect now = dirtyRectOf(hand.now.cell);
    if (m_mode != Mode::Move) {
        const int foot = int(m_view.scale() * m_content.style.grid.rowUnit.value() * 6);
        update(before.adjusted(0, 0, 0, foot));
        update(now.adjusted(0, 0, 0, foot));
        return;
    }
    update(before);
    for (const Trial& trial : m_trials) {
        const QRect stands = m_view.toPx(trial.before.cell).translated(m_follow).toAlignedRect();
        now |= stands.adjusted(-kHandReach, -kHandReach, kHandReach, kHandReach);
    }
    update(now);
    if (m_trials.size() > 1)
        update(); // several are seldom moved, and far apart
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

DisplayList Canvas::withoutTrials() const
{
    DisplayList rest = m_around ? *m_around : m_content.list;
    std::erase_if(rest.marks, [this](const Mark& mark) {
        for (const Trial& trial : m_trials) {
            if (mark.piece == trial.now.id)
                return true;
        }
        return false;
    });
    return rest;
}

// What this audience does not see yet keeps its place with its reason.
void Canvas::paintWaiting(QPainter& painter) const
{
    for (const CanvasPiece& piece : m_content.pieces) {
        if (piece.waits.isEmpty())
            continue;
        const QRectF box = m_view.toPx(piece.piece.cell);
        painter.setPen(QPen(QColor(0x74, 0x6d, 0x60), 1, Qt::DashLine));
        painter.setBrush(QColor(0xf4, 0xe6, 0xc8, 120));
        painter.drawRect(box);
        painter.setFont(interfaceFont(0.88));
        painter.setPen(QColor(0x59, 0x53, 0x48));
        painter.drawText(
            box.adjusted(4, 4, -4, -4), Qt::AlignCenter | Qt::TextWordWrap, piece.waits);
    }
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
    if (!m_hasContent)
        return m_static;
    if (m_trials.empty() && !m_around)
        paintMarks(painter, m_content.list, rect());
    else
        paintMarks(painter, withoutTrials(), rect());
    if (m_trials.empty())
        paintWaiting(painter);
    if (m_rulers)
        paintRulers(painter, rect(), m_view, m_content.list.size, m_inches);
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
    const QRect dirty = event->region().boundingRect();
    if (!m_trials.empty())
        paintTrial(painter, dirty);
    else
        paintHeld(painter);
    if (m_dropCell)
        paintGoal(painter, *m_dropCell, tr("here"), dirty);
    paintGuides(painter);
    paintSigns(painter);
    if (!m_band.isEmpty()) {
        painter.setPen(QPen(QColor(kHandOnPaper), 1, Qt::DashLine));
        painter.setBrush(QColor(138, 63, 107, 24));
        painter.drawRect(m_band);
    }
}

void Canvas::paintTrial(QPainter& painter, const QRect& dirty)
{
    if (m_mode == Mode::Move) {
        paintAttempt(painter, dirty);
        paintMovedMarks(painter);
        return;
    }
    for (const Trial& trial : m_trials) {
        paintMarks(painter, trial.list, dirty);
        if (m_mode == Mode::Lift || m_mode == Mode::Resize)
            paintGoal(painter, trial.now.cell, {}, dirty);
        paintHand(painter, trial.now.cell);
    }
}

// What is moved is painted once; after that a move copies pixels only.
void Canvas::paintMovedMarks(QPainter& painter)
{
    QRect source;
    for (const Trial& trial : m_trials)
        source |= m_view.toPx(trial.before.cell).toAlignedRect().adjusted(-8, -4, 8, 12);
    if (m_trialPixmap.isNull()) {
        const double ratio = devicePixelRatioF();
        m_trialPixmap = QPixmap(source.size() * ratio);
        m_trialPixmap.setDevicePixelRatio(ratio);
        m_trialPixmap.fill(Qt::transparent);
        QPainter own(&m_trialPixmap);
        for (const Trial& trial : m_trials) {
            const QRectF stands = m_view.toPx(trial.before.cell).translated(-source.topLeft());
            own.fillRect(stands, QColor(255, 255, 255, 225));
            own.save();
            own.setRenderHints(QPainter::Antialiasing | QPainter::SmoothPixmapTransform);
            own.setTransform(
                m_view.transform() * QTransform::fromTranslate(-source.left(), -source.top()));
            (void)paint(own, trial.list, m_pictures, PaintPurpose::Screen);
            own.restore();
            lineOnAny(own, stands, QColor(kHandOnPaper));
        }
    }
    const QPointF at = QPointF(source.topLeft()) + m_follow;
    painter.setOpacity(0.85); // what lies under it stays to be seen
    painter.drawPixmap(at.toPoint(), m_trialPixmap);
    painter.setOpacity(1);
}

} // namespace wainscot::ui
