#include "app/ui/session/picture_edits.h"

#include <algorithm>
#include <cmath>

#include "core/media/plane_map.h"

namespace wainscot::ui {

namespace {

FourPoints pointsOf(const Corners& corners)
{
    FourPoints points;
    for (std::size_t i = 0; i < 4; ++i)
        points.at(i) = {corners.at(i).x, corners.at(i).y};
    return points;
}

constexpr Corners kWhole{{{0, 0}, {1, 0}, {1, 1}, {0, 1}}};

// Between places of the treated and of the upright picture, both ways in fractions.
class Way {
public:
    explicit Way(const Picture& picture)
    {
        if (const auto& straight = picture.treatment.straightening) {
            m_out = PlaneMap::between(pointsOf(straight->corners), pointsOf(kWhole));
            m_in = PlaneMap::between(pointsOf(kWhole), pointsOf(straight->corners));
        }
    }
    [[nodiscard]] PointFraction toUpright(PointFraction p) const { return through(m_in, p); }
    [[nodiscard]] PointFraction toTreated(PointFraction p) const { return through(m_out, p); }

private:
    static PointFraction through(const std::optional<PlaneMap>& map, PointFraction p)
    {
        if (!map)
            return p;
        const QPointF at = map->at(p.x, p.y);
        return {std::clamp(at.x(), 0.0, 1.0), std::clamp(at.y(), 0.0, 1.0)};
    }
    std::optional<PlaneMap> m_in;
    std::optional<PlaneMap> m_out;
};

PointFraction followed(PointFraction point, const Picture& before, const Picture& after)
{
    PointFraction upright = Way(before).toUpright(point);
    for (int i = quartersBetween(before.orientation, after.orientation); i > 0; --i)
        upright = wainscot::quarterTurned(upright);
    return Way(after).toTreated(upright);
}

// The rectangle around where the corners of another have gone; nothing when nothing is left.
std::optional<RectFraction> followed(
    const RectFraction& rect, const Picture& before, const Picture& after)
{
    double left = 1;
    double top = 1;
    double right = 0;
    double bottom = 0;
    for (const PointFraction& corner : {PointFraction{rect.x, rect.y},
             PointFraction{rect.x + rect.width, rect.y},
             PointFraction{rect.x + rect.width, rect.y + rect.height},
             PointFraction{rect.x, rect.y + rect.height}}) {
        const PointFraction at = followed(corner, before, after);
        left = std::min(left, at.x);
        right = std::max(right, at.x);
        top = std::min(top, at.y);
        bottom = std::max(bottom, at.y);
    }
    if (right - left < 1e-3 || bottom - top < 1e-3)
        return std::nullopt;
    return RectFraction{left, top, right - left, bottom - top};
}

// Work in its cell: as large as fits above its caption, on the line where it stood.
RectMm refitted(const Piece& piece, SizePx size)
{
    const RectMm& cell = piece.cell;
    const RectMm& place = piece.picturePlace;
    const Mm mat = std::max(Mm(0), std::min(place.x - cell.x, place.y - cell.y));
    const SizeMm room{cell.width - 2 * mat, place.bottom() - cell.y - mat};
    if (room.isEmpty() || size.isEmpty())
        return place;
    const Mm width = std::min(room.width, room.height * size.aspect());
    const Mm height = width / size.aspect();
    return {cell.x + mat, place.bottom() - height, width, height};
}

} // namespace

int quartersBetween(int from, int to)
{
    for (int quarters = 0; quarters < 4; ++quarters) {
        if (from == to)
            return quarters;
        from = wainscot::quarterTurned(from);
    }
    return 0;
}

SizePx uprightSize(const Picture& picture)
{
    const auto& straight = picture.treatment.straightening;
    return straight ? straight->from : picture.size;
}

Picture quarterTurned(const Picture& picture)
{
    Picture turned = picture;
    turned.orientation = wainscot::quarterTurned(picture.orientation);
    turned.size = {picture.size.height, picture.size.width};
    turned.treatment = wainscot::quarterTurned(picture.treatment);
    if (picture.mustStay)
        turned.mustStay = wainscot::quarterTurned(*picture.mustStay);
    return turned;
}

Picture treatedAs(const Picture& picture, const Treatment& treatment)
{
    Picture treated = picture;
    const SizePx upright = uprightSize(picture);
    treated.treatment = treatment;
    treated.size = upright;
    if (auto& straight = treated.treatment.straightening) {
        straight->from = upright;
        treated.size = straightenedSize(straight->corners, upright);
    }
    if (picture.mustStay)
        treated.mustStay = followed(*picture.mustStay, picture, treated);
    return treated;
}

Edit changePicture(const Book& book, const Picture& after, const QString& label, int gesture)
{
    EditBuilder builder(book, label, gesture);
    const Picture* before = book.pictures.find(after.id);
    if (before == nullptr)
        return builder.take();
    builder.put(after);
    for (const auto& [id, piece] : book.pieces.rows()) {
        if (!isPicture(piece.kind) || piece.picture != after.id)
            continue;
        Piece changed = piece;
        changed.framing.focus = followed(piece.framing.focus, *before, after);
        const bool whole = piece.kind == PieceKind::Work || after.kind == PictureKind::Work;
        if (whole && !piece.picturePlace.isEmpty() && !(before->size == after.size))
            changed.picturePlace = refitted(piece, after.size);
        builder.put(changed);
    }
    return builder.take();
}

} // namespace wainscot::ui
