#include "app/ui/compose/panel_picture.h"

#include <QPainter>

#include "app/jobs/drawn_display.h"
#include "layout/typeset/typesetter.h"

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

QPixmap panelPicture(const Book& book, PanelId panel, int width, PictureProvider& pictures)
{
    const Panel* own = book.panels.find(panel);
    const Display* display = own != nullptr ? book.displays.find(own->display) : nullptr;
    if (display == nullptr)
        return {};
    const PermissionRules rules(book, *display, QDate::currentDate());
    const ClearedPanel cleared = rules.clear(*own);
    return panelPicture(typeset(cleared, styleFor(cleared)), width, 1.0, pictures);
}

} // namespace wainscot::ui
