#include "layout/screen/piece_picture.h"

#include <algorithm>

#include "layout/typeset/mark_place.h"

namespace wainscot {

namespace {

constexpr double kMmPerUnit = kMmPerInch / kPtPerInch / kUnitsPerPt;

RectMm inkOf(const GlyphRun& run)
{
    QRectF ink;
    for (std::size_t i = 0; i < run.glyphs.size(); ++i)
        ink |= run.font.boundingRect(run.glyphs[i]).translated(run.positions[i]);
    return {run.origin.x + Mm(ink.x() * kMmPerUnit),
        run.origin.y + Mm(ink.y() * kMmPerUnit),
        Mm(ink.width() * kMmPerUnit),
        Mm(ink.height() * kMmPerUnit)};
}

RectMm inkOf(const Mark& mark)
{
    const auto place = placeOf(mark);
    return place ? *place : inkOf(std::get<GlyphRun>(mark.shape));
}

RectMm around(const RectMm& a, const RectMm& b)
{
    if (a.isEmpty() || b.isEmpty())
        return a.isEmpty() ? b : a;
    const Mm left = std::min(a.x, b.x);
    const Mm top = std::min(a.y, b.y);
    return {
        left, top, std::max(a.right(), b.right()) - left, std::max(a.bottom(), b.bottom()) - top};
}

void move(Mark& mark, Mm right, Mm down)
{
    if (auto* fill = std::get_if<Fill>(&mark.shape)) {
        fill->rect.x += right;
        fill->rect.y += down;
    } else if (auto* placed = std::get_if<PlacedPicture>(&mark.shape)) {
        placed->place.x += right;
        placed->place.y += down;
    } else if (auto* disc = std::get_if<Disc>(&mark.shape)) {
        disc->centre.x += right;
        disc->centre.y += down;
    } else if (auto* shape = std::get_if<Shape>(&mark.shape)) {
        shape->area.translate(right.value(), down.value());
    } else {
        auto& run = std::get<GlyphRun>(mark.shape);
        run.origin.x += right;
        run.origin.y += down;
    }
}

} // namespace

DisplayList pieceAlone(const DisplayList& list, PieceId piece, Mm air)
{
    DisplayList alone;
    alone.title = list.title;
    alone.language = list.language;
    RectMm ink;
    for (const Mark& mark : list.marks) {
        if (mark.piece != piece)
            continue;
        alone.marks.push_back(mark);
        alone.marks.back().element = -1;
        ink = around(ink, inkOf(mark));
    }
    if (ink.isEmpty())
        return alone;
    for (Mark& mark : alone.marks)
        move(mark, air - ink.x, air - ink.y);
    alone.size = {ink.width + 2 * air, ink.height + 2 * air};
    return alone;
}

} // namespace wainscot
