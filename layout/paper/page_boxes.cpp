#include "layout/paper/page_boxes.h"

#include <algorithm>

namespace wainscot::pdf {

namespace {

// Sides this near to the edge of the panel are meant to lie on it.
constexpr Mm kTouches{0.05};

} // namespace

bool PageBoxes::fitsPdf() const
{
    const Mm least = toMm(kLeastSide);
    const Mm greatest = toMm(kGreatestSide);
    return media.width >= least && media.height >= least && media.width <= greatest
        && media.height <= greatest;
}

PageBoxes pageBoxes(SizeMm panel, Mm bleed, bool cropMarks)
{
    Mm around = bleed;
    if (cropMarks)
        around = std::max(bleed, kCropMarkLeastOffset) + kCropMarkLength + kCropMarkEdge;
    const RectMm trim{around, around, panel.width, panel.height};
    return {{panel.width + 2 * around, panel.height + 2 * around}, trim, trim.grown(bleed)};
}

std::vector<Line> cropMarks(const PageBoxes& boxes, Mm bleed)
{
    const RectMm near = boxes.trim.grown(std::max(bleed, kCropMarkLeastOffset));
    const RectMm far = near.grown(kCropMarkLength);
    std::vector<Line> marks;
    for (const Mm x : {boxes.trim.x, boxes.trim.right()}) {
        marks.push_back({{x, far.y}, {x, near.y}});
        marks.push_back({{x, near.bottom()}, {x, far.bottom()}});
    }
    for (const Mm y : {boxes.trim.y, boxes.trim.bottom()}) {
        marks.push_back({{far.x, y}, {near.x, y}});
        marks.push_back({{near.right(), y}, {far.right(), y}});
    }
    return marks;
}

RectMm bledOut(const RectMm& rect, SizeMm panel, Mm bleed)
{
    const Mm left = rect.x <= kTouches ? -bleed : rect.x;
    const Mm top = rect.y <= kTouches ? -bleed : rect.y;
    const Mm right = rect.right() >= panel.width - kTouches ? panel.width + bleed : rect.right();
    const Mm bottom =
        rect.bottom() >= panel.height - kTouches ? panel.height + bleed : rect.bottom();
    return {left, top, right - left, bottom - top};
}

RectMm covering(const RectMm& area, SizeMm shape)
{
    const double scale = std::max(area.width / shape.width, area.height / shape.height);
    const SizeMm size{shape.width * scale, shape.height * scale};
    return {area.x + (area.width - size.width) / 2,
        area.y + (area.height - size.height) / 2,
        size.width,
        size.height};
}

} // namespace wainscot::pdf
