#include "app/ui/compose/panel_picture.h"

#include <QPainter>

namespace wainscot::ui {

QPixmap panelPicture(
    const DisplayList& list, int width, double pixelRatio, PictureProvider& pictures)
{
    if (list.size.isEmpty() || width < 1)
        return {};
    const double scale = width * pixelRatio / list.size.width.value();
    QPixmap picture(qRound(width * pixelRatio), qMax(1, qRound(list.size.height.value() * scale)));
    picture.fill(Qt::white);
    QPainter painter(&picture);
    painter.setRenderHints(QPainter::Antialiasing | QPainter::SmoothPixmapTransform);
    painter.scale(scale, scale);
    // Nothing fails on a screen: what is not there yet shows as a tone.
    (void)paint(painter, list, pictures, PaintPurpose::Screen);
    return picture;
}

} // namespace wainscot::ui
