#include "layout/engine/pinned_place.h"

#include <algorithm>

namespace wainscot::engine {

Placement placeExactly(const Piece& piece, const Pin& pin, const PageSpec& page, TextMemo& text)
{
    Placement out;
    out.id = piece.item.id;
    out.at = pin.at;
    out.cell = pin.exact;
    if (!piece.isPicture())
        return out;
    const Mm border = piece.isSample() ? kMatBorder * page.gutter : Mm(0);
    const Mm caption = text.measure(piece.item.id, pin.exact.width).height;
    const Mm below = caption > Mm(0) ? caption + piece.spec.captionGap : Mm(0);
    const Mm width = std::max(Mm(1), pin.exact.width - 2 * border);
    const Mm height = std::max(Mm(1), pin.exact.height - 2 * border - below);
    const SizePx size = piece.item.picture->size;
    const double own = size.aspect();
    const double aspect = piece.isSample() ? own : width / height;
    out.picture.x = pin.exact.x + border;
    out.picture.y = pin.exact.y + border;
    out.picture.width = std::min(width, aspect * height);
    out.picture.height = out.picture.width / aspect;
    if (piece.isSample())
        out.mat = out.picture.grown(border);
    out.keep = std::min(aspect / own, own / aspect);
    out.ppi = (aspect < own ? size.height * aspect : size.width)
        / (out.picture.width.value() / kMmPerInch);
    return out;
}

} // namespace wainscot::engine
