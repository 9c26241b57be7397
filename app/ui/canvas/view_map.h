// Where a panel's millimetres fall on the canvas: scale and offset, zoom about a point, fit.
#pragma once

#include <QPointF>
#include <QRectF>
#include <QSizeF>
#include <QTransform>

#include "core/base/geometry.h"

namespace wainscot::ui {

class ViewMap {
public:
    // Nearest and furthest: a hair of the panel across the window, and twelve times true size.
    static constexpr double kLeastScale = 0.05; // px per mm
    static constexpr double kMostScale = 45;

    [[nodiscard]] double scale() const { return m_scale; } // px per mm
    [[nodiscard]] QPointF origin() const { return m_origin; } // of the panel, in px

    // The whole panel inside `room`, in its middle.
    void fit(SizeMm panel, const QRectF& room);
    // The point of the panel under `at` stays under it.
    void zoomAbout(QPointF at, double factor);
    void setScaleAbout(QPointF at, double pxPerMm);
    void panBy(QPointF delta) { m_origin += delta; }

    [[nodiscard]] QPointF toPx(PointMm at) const;
    [[nodiscard]] QRectF toPx(const RectMm& rect) const;
    [[nodiscard]] PointMm toMm(QPointF at) const;
    [[nodiscard]] Mm toMm(double px) const { return Mm(px / m_scale); }
    [[nodiscard]] RectMm toMm(const QRectF& rect) const;
    [[nodiscard]] QTransform transform() const; // millimetres to px

private:
    double m_scale = 1;
    QPointF m_origin;
};

} // namespace wainscot::ui
