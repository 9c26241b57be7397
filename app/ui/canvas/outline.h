// Straight outlines that are cheap to draw and show on pictures of any tone.
#pragma once

#include <QPainter>

namespace wainscot::ui {

// In whole pixels. Filled, not stroked: a moving piece is drawn at every step, and a smoothed
// stroke costs more than all the rest of the step.
inline void outline(QPainter& painter, const QRect& r, int thick, const QColor& colour)
{
    const int half = thick / 2;
    const QRect outer = r.adjusted(-half, -half, thick - half, thick - half);
    painter.fillRect(outer.left(), outer.top(), outer.width(), thick, colour);
    painter.fillRect(outer.left(), outer.bottom() + 1 - thick, outer.width(), thick, colour);
    painter.fillRect(outer.left(), outer.top(), thick, outer.height(), colour);
    painter.fillRect(outer.right() + 1 - thick, outer.top(), thick, outer.height(), colour);
}

// White below, the colour above.
inline void lineOnAny(QPainter& painter, const QRectF& rect, const QColor& colour)
{
    outline(painter, rect.toAlignedRect(), 4, Qt::white);
    outline(painter, rect.toAlignedRect(), 2, colour);
}

} // namespace wainscot::ui
