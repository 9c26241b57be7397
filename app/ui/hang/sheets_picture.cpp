#include "app/ui/hang/sheets_picture.h"

#include <QPaintEvent>
#include <QPainter>

#include "app/ui/compose/panel_picture.h"
#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

SheetsPicture::SheetsPicture(Session& session, PictureShelf& pictures, QWidget* parent)
    : QWidget(parent)
    , m_session(session)
    , m_pictures(pictures)
{
    setMinimumSize(scaled(220), scaled(200));
    connect(&pictures, &PictureShelf::loaded, this, qOverload<>(&QWidget::update));
}

void SheetsPicture::show(std::optional<SheetPlan> plan, bool withoutWhite)
{
    m_plan = std::move(plan);
    m_withoutWhite = withoutWhite;
    update();
}

void SheetsPicture::paintSheet(QPainter& painter, const QRectF& part, const QString& name) const
{
    const QFontMetricsF metrics(painter.font());
    painter.setPen(QPen(tokens().dark ? QColor(kHandOnPaper) : tokens().hand, 1.4));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(part);
    const QRectF box(part.topLeft() + QPointF(3, 3),
        QSizeF(metrics.horizontalAdvance(name) + 8, metrics.height() + 2));
    painter.fillRect(box, QColor(255, 255, 255, 225));
    painter.setPen(QColor(kHandOnPaper));
    painter.drawText(box, Qt::AlignCenter, name);
}

void SheetsPicture::paintEvent(QPaintEvent* /*event*/)
{
    const ::wainscot::Panel* panel = m_session.panel();
    if (!m_plan || panel == nullptr)
        return;
    QPainter painter(this);
    painter.setRenderHints(QPainter::Antialiasing | QPainter::SmoothPixmapTransform);
    const QRectF room = QRectF(rect()).adjusted(6, 6, -6, -6);
    const double scale = qMin(
        room.width() / m_plan->panel.width.value(), room.height() / m_plan->panel.height.value());
    const QRectF place(room.topLeft(),
        QSizeF(m_plan->panel.width.value() * scale, m_plan->panel.height.value() * scale));
    painter.fillRect(place.translated(2, 3), QColor(0, 0, 0, 46));
    painter.drawPixmap(place.toRect(),
        panelPicture(
            m_session.book(), panel->id, qCeil(place.width() * devicePixelRatioF()), m_pictures));
    painter.setFont(interfaceFont(0.85, QFont::DemiBold));
    for (int row = 0; row < m_plan->rows; ++row) {
        for (int column = 0; column < m_plan->columns; ++column) {
            if (m_withoutWhite && m_plan->isWhite(column, row))
                continue;
            const RectMm area = m_plan->area(column, row);
            paintSheet(painter,
                QRectF(place.left() + area.x.value() * scale,
                    place.top() + area.y.value() * scale,
                    area.width.value() * scale,
                    area.height.value() * scale),
                sheetName(column, row));
        }
    }
}

} // namespace wainscot::ui
