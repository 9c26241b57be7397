#include "app/jobs/seen_from.h"

#include <algorithm>

namespace wainscot {

namespace {

RectMm placeOf(const check::TextLine& line)
{
    return {line.left, line.capLine(), line.right - line.left, line.cap};
}

RectMm around(const RectMm& a, const RectMm& b)
{
    const Mm left = std::min(a.x, b.x);
    const Mm top = std::min(a.y, b.y);
    return {
        left, top, std::max(a.right(), b.right()) - left, std::max(a.bottom(), b.bottom()) - top};
}

} // namespace

std::vector<SeenText> seenFrom(
    const check::PanelFacts& facts, const SizeMm& panel, const wall::Standing& standing)
{
    std::vector<SeenText> texts;
    for (const check::TextLine& line : facts.lines) {
        if (line.cap <= Mm(0))
            continue;
        const RectMm place = placeOf(line);
        const PointMm middle{place.x + place.width / 2, place.y + place.height / 2};
        const double seen = wall::arcminutesOf(line.cap, middle, panel, standing);
        auto at = std::find_if(texts.begin(), texts.end(), [&](const SeenText& text) {
            return text.piece == line.piece && text.use == line.use;
        });
        if (at == texts.end()) {
            SeenText text;
            text.piece = line.piece;
            text.kind = line.kind;
            text.use = line.use;
            text.begins = line.text.trimmed();
            text.place = place;
            text.arcminutes = seen + 1;
            at = texts.insert(texts.end(), text);
        }
        at->place = around(at->place, place);
        if (seen >= at->arcminutes)
            continue;
        at->arcminutes = seen;
        at->cap = line.cap;
        at->easyCap = line.cap * (wall::easyFrom(standing.acuity) / seen);
        at->legibility = wall::legibilityOf(seen, standing.acuity);
    }
    return texts;
}

} // namespace wainscot
