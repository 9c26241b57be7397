#include "app/ui/compose/hung_panel.h"

#include <QApplication>
#include <QContextMenuEvent>
#include <QDragEnterEvent>
#include <QMimeData>
#include <QPainter>

#include "app/ui/kit/icons.h"
#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

namespace {

constexpr int kSide = 5; // px beside the paper, for the line round it

int lineHeight()
{
    return QFontMetrics(interfaceFont(0.85)).height();
}

} // namespace

HungPanel::HungPanel(PanelId panel, QWidget* parent)
    : QAbstractButton(parent)
    , m_panel(panel)
{
    setFocusPolicy(Qt::StrongFocus);
    setCursor(Qt::PointingHandCursor);
    setAcceptDrops(panel.isValid());
}

void HungPanel::say(const QString& name, const QString& second, double shape)
{
    m_second = second;
    m_shape = shape;
    setText(name);
    setAccessibleName(second.isEmpty() ? name : name + QStringLiteral(", ") + second);
    setToolTip(second);
    update();
}

void HungPanel::setPicture(const QPixmap& picture)
{
    m_picture = picture;
    update();
}

void HungPanel::setCurrent(bool current)
{
    if (m_current == current)
        return;
    m_current = current;
    setAccessibleDescription(current ? tr("On the stage") : QString());
    update();
}

void HungPanel::setGoal(bool goal)
{
    if (m_goal == goal)
        return;
    m_goal = goal;
    update();
}

QRectF HungPanel::paper() const
{
    const double width = this->width() - 2 * kSide;
    return {double(kSide), double(air(4)) + 2, width, width * m_shape};
}

QRect HungPanel::nameRect() const
{
    return {0, int(paper().bottom()) + air(1), width(), lineHeight()};
}

int HungPanel::heightFor(int width) const
{
    return int((width - 2 * kSide) * m_shape) + air(4) + 4 + 2 * lineHeight() + air(1.5);
}

void HungPanel::paintPaper(QPainter& painter) const
{
    const Tokens& t = tokens();
    const QRectF panel = paper();
    if (!m_panel.isValid()) {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(underMouse() ? t.ink : t.quiet, 1.2, Qt::DashLine));
        painter.drawRect(panel);
        const double side = scaled(20);
        drawIcon(painter,
            Icon::Plus,
            QRectF(panel.center() - QPointF(side / 2, side / 2), QSizeF(side, side)),
            t.quiet,
            t.accent);
        return;
    }
    painter.fillRect(panel.translated(1, 2), QColor(0, 0, 0, 40));
    painter.fillRect(panel, Qt::white);
    if (!m_picture.isNull())
        painter.drawPixmap(panel, m_picture, QRectF(m_picture.rect()));
    painter.setBrush(m_goal ? QColor(138, 63, 107, 40) : QColor(Qt::transparent));
    if (m_goal)
        painter.setPen(QPen(t.hand, 2, Qt::DashLine));
    else if (m_current)
        painter.setPen(QPen(t.accent, 2));
    else if (underMouse())
        painter.setPen(QPen(t.edge, 1));
    else
        painter.setPen(Qt::NoPen);
    painter.drawRect(panel.adjusted(-1.5, -1.5, 1.5, 1.5));
}

void HungPanel::paintEvent(QPaintEvent* /*event*/)
{
    const Tokens& t = tokens();
    QPainter painter(this);
    painter.setRenderHints(QPainter::Antialiasing | QPainter::SmoothPixmapTransform);
    const QRectF panel = paper();
    painter.setPen(QPen(t.quiet, 1));
    painter.drawLine(QPointF(width() / 2.0, 3), panel.topLeft() + QPointF(3, 0));
    painter.drawLine(QPointF(width() / 2.0, 3), panel.topRight() - QPointF(3, 0));
    painter.setPen(Qt::NoPen);
    painter.setBrush(m_current ? t.accent : t.quiet);
    painter.drawEllipse(QPointF(width() / 2.0, 3), 2.5, 2.5);
    paintPaper(painter);
    QRect line = nameRect();
    const QFont bold = interfaceFont(0.85, QFont::DemiBold);
    painter.setFont(bold);
    painter.setPen(t.ink);
    painter.drawText(
        line, Qt::AlignCenter, QFontMetrics(bold).elidedText(text(), Qt::ElideRight, line.width()));
    line.translate(0, line.height());
    painter.setFont(interfaceFont(0.85));
    painter.setPen(t.quiet);
    painter.drawText(line,
        Qt::AlignCenter,
        QFontMetrics(interfaceFont(0.85)).elidedText(m_second, Qt::ElideRight, line.width()));
    if (hasFocus())
        drawFocusRing(painter, rect());
}

void HungPanel::mousePressEvent(QMouseEvent* event)
{
    m_pressedAt = event->pos();
    m_carried = false;
    QAbstractButton::mousePressEvent(event);
}

void HungPanel::mouseMoveEvent(QMouseEvent* event)
{
    const bool far =
        (event->pos() - m_pressedAt).manhattanLength() >= QApplication::startDragDistance();
    if (m_panel.isValid() && event->buttons().testFlag(Qt::LeftButton) && (far || m_carried)) {
        m_carried = true;
        setDown(false);
        Q_EMIT carriedTo(event->globalPosition().toPoint(), false);
        return;
    }
    QAbstractButton::mouseMoveEvent(event);
}

void HungPanel::mouseReleaseEvent(QMouseEvent* event)
{
    if (std::exchange(m_carried, false)) {
        Q_EMIT carriedTo(event->globalPosition().toPoint(), true);
        return;
    }
    QAbstractButton::mouseReleaseEvent(event);
}

void HungPanel::contextMenuEvent(QContextMenuEvent* event)
{
    if (m_panel.isValid())
        Q_EMIT menuAsked(event->globalPos());
}

void HungPanel::enterEvent(QEnterEvent* event)
{
    QAbstractButton::enterEvent(event);
    update();
}

void HungPanel::leaveEvent(QEvent* event)
{
    QAbstractButton::leaveEvent(event);
    update();
}

void HungPanel::dragEnterEvent(QDragEnterEvent* event)
{
    if (!incomingFrom(*event->mimeData(), false).item)
        return;
    setGoal(true);
    event->acceptProposedAction();
}

void HungPanel::dragLeaveEvent(QDragLeaveEvent* /*event*/)
{
    setGoal(false);
}

void HungPanel::dropEvent(QDropEvent* event)
{
    setGoal(false);
    if (const auto item = incomingFrom(*event->mimeData(), false).item) {
        event->acceptProposedAction();
        Q_EMIT dropped(*item);
    }
}

} // namespace wainscot::ui
