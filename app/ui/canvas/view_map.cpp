#include "app/ui/canvas/view_map.h"

#include <algorithm>

namespace wainscot::ui {

void ViewMap::fit(SizeMm panel, const QRectF& room)
{
    if (panel.isEmpty() || room.isEmpty())
        return;
    m_scale = std::clamp(
        std::min(room.width() / panel.width.value(), room.height() / panel.height.value()),
        kLeastScale,
        kMostScale);
    const QSizeF size(panel.width.value() * m_scale, panel.height.value() * m_scale);
    m_origin = room.center() - QPointF(size.width() / 2, size.height() / 2);
    // Whole pixels, so that the edge of the paper is one sharp line.
    m_origin = QPointF(qRound(m_origin.x()), qRound(m_origin.y()));
}

void ViewMap::zoomAbout(QPointF at, double factor)
{
    setScaleAbout(at, m_scale * factor);
}

void ViewMap::setScaleAbout(QPointF at, double pxPerMm)
{
    const double scale = std::clamp(pxPerMm, kLeastScale, kMostScale);
    m_origin = at - (at - m_origin) * (scale / m_scale);
    m_scale = scale;
}

QPointF ViewMap::toPx(PointMm at) const
{
    return m_origin + QPointF(at.x.value(), at.y.value()) * m_scale;
}

QRectF ViewMap::toPx(const RectMm& rect) const
{
    return {
        toPx(rect.topLeft()), QSizeF(rect.width.value() * m_scale, rect.height.value() * m_scale)};
}

PointMm ViewMap::toMm(QPointF at) const
{
    const QPointF mm = (at - m_origin) / m_scale;
    return {Mm(mm.x()), Mm(mm.y())};
}

RectMm ViewMap::toMm(const QRectF& rect) const
{
    const PointMm corner = toMm(rect.topLeft());
    return {corner.x, corner.y, toMm(rect.width()), toMm(rect.height())};
}

QTransform ViewMap::transform() const
{
    return QTransform(m_scale, 0, 0, m_scale, m_origin.x(), m_origin.y());
}

} // namespace wainscot::ui
