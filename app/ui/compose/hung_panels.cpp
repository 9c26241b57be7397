#include "app/ui/compose/hung_panels.h"

#include <QPainter>

#include "app/ui/kit/icons.h"
#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

namespace {

int namesHeight()
{
    return QFontMetrics(interfaceFont(0.85)).height() * 2 + air(1.5);
}

} // namespace

HungPanel::HungPanel(const QString& name, const QString& second, double shape, QWidget* parent)
    : QAbstractButton(parent)
    , m_second(second)
    , m_shape(shape)
{
    setText(name);
    setAccessibleName(name + QStringLiteral(", ") + second);
    setFocusPolicy(Qt::StrongFocus);
    setCursor(Qt::PointingHandCursor);
}

void HungPanel::setPicture(const QPixmap& picture)
{
    m_picture = picture;
    update();
}

int HungPanel::heightFor(int width) const
{
    return int((width - 8) * m_shape) + air(4) + 4 + namesHeight();
}

void HungPanel::paintEvent(QPaintEvent* /*event*/)
{
    const Tokens& t = tokens();
    QPainter painter(this);
    painter.setRenderHints(QPainter::Antialiasing | QPainter::SmoothPixmapTransform);
    const double panelWidth = width() - 8;
    const QRectF panel(4, air(4) + 2, panelWidth, panelWidth * m_shape);
    painter.setPen(QPen(t.quiet, 1));
    painter.drawLine(QPointF(width() / 2.0, 2), panel.topLeft() + QPointF(3, 0));
    painter.drawLine(QPointF(width() / 2.0, 2), panel.topRight() - QPointF(3, 0));
    painter.setPen(Qt::NoPen);
    painter.setBrush(t.quiet);
    painter.drawEllipse(QPointF(width() / 2.0, 3), 2.5, 2.5);
    if (!m_picture.isNull()) {
        painter.fillRect(panel.translated(1, 2), QColor(0, 0, 0, 40));
        painter.drawPixmap(panel, m_picture, QRectF(m_picture.rect()));
    } else {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(t.quiet, 1.2, Qt::DashLine));
        painter.drawRect(panel);
        const double side = scaled(20);
        drawIcon(painter,
            Icon::Plus,
            QRectF(panel.center() - QPointF(side / 2, side / 2), QSizeF(side, side)),
            t.quiet,
            t.accent);
    }
    QRectF line(0, panel.bottom() + air(1), width(), QFontMetrics(interfaceFont(0.85)).height());
    painter.setFont(interfaceFont(0.85, QFont::DemiBold));
    painter.setPen(t.ink);
    painter.drawText(line, Qt::AlignCenter, text());
    line.translate(0, line.height());
    painter.setFont(interfaceFont(0.85));
    painter.setPen(t.quiet);
    painter.drawText(line,
        Qt::AlignCenter,
        QFontMetrics(interfaceFont(0.85)).elidedText(m_second, Qt::ElideRight, width()));
    if (hasFocus())
        drawFocusRing(painter, rect());
}

HungPanels::HungPanels(Session& session, Desk& desk, PictureProvider& pictures, QWidget* parent)
    : QWidget(parent)
    , m_session(session)
    , m_desk(desk)
    , m_pictures(pictures)
    , m_rover(new Rover(this))
{
    setAccessibleName(tr("Hung panels"));
}

void HungPanels::refresh()
{
    m_rover->setMembers({});
    for (HungPanel* panel : m_panels) {
        panel->hide();
        panel->deleteLater(); // it may be the sender
    }
    m_panels.clear();
    const DrawnDisplay* drawn = m_desk.drawn();
    if (drawn == nullptr || m_session.panel() == nullptr)
        return;
    const double shape = drawn->display.panelSize.height / drawn->display.panelSize.width;
    for (const DrawnPanel& panel : drawn->panels) {
        if (panel.cleared.id() == m_session.panel()->id)
            continue;
        auto* hung = new HungPanel(
            tr("Panel %1 of %2").arg(panel.cleared.number()).arg(drawn->panels.size()),
            panel.cleared.title(),
            shape,
            this);
        if (auto image = toImage(panel.list, DotsPerInch(14), m_pictures))
            hung->setPicture(QPixmap::fromImage(*image));
        connect(hung, &HungPanel::clicked, this, [this, id = panel.cleared.id()] {
            m_session.choosePanel(id);
        });
        m_panels.push_back(hung);
    }
    auto* fresh = new HungPanel(tr("New panel"), tr("after these"), shape, this);
    connect(fresh, &HungPanel::clicked, this, [this] { m_desk.addPanelAfter(); });
    m_panels.push_back(fresh);
    QVector<QWidget*> members;
    for (HungPanel* panel : m_panels) {
        panel->show();
        members << panel;
    }
    m_rover->setMembers(members);
    place();
}

void HungPanels::place()
{
    int total = 0;
    for (const HungPanel* panel : m_panels)
        total += panel->heightFor(width()) + air(4);
    int top = qMax(0, (height() - total) / 2);
    for (HungPanel* panel : m_panels) {
        const int high = panel->heightFor(width());
        panel->setGeometry(0, top, width(), high);
        panel->setVisible(top + high <= height() || panel == m_panels.front());
        top += high + air(4);
    }
}

void HungPanels::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    place();
}

} // namespace wainscot::ui
