#include "layout/typeset/mark_place.h"

namespace wainscot {

std::optional<RectMm> placeOf(const Mark& mark)
{
    if (const auto* fill = std::get_if<Fill>(&mark.shape))
        return fill->rect;
    if (const auto* placed = std::get_if<PlacedPicture>(&mark.shape))
        return placed->place;
    if (const auto* disc = std::get_if<Disc>(&mark.shape))
        return RectMm{disc->centre.x, disc->centre.y, Mm(), Mm()}.grown(disc->radius);
    if (const auto* shape = std::get_if<Shape>(&mark.shape)) {
        const QRectF box = shape->area.boundingRect();
        return RectMm{Mm(box.x()), Mm(box.y()), Mm(box.width()), Mm(box.height())};
    }
    return std::nullopt;
}

} // namespace wainscot
