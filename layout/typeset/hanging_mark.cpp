#include "layout/typeset/hanging_mark.h"

#include <QPainterPath>

#include <algorithm>

namespace wainscot {

namespace {

constexpr double kMarkDistance = 0.06; // em between a hanging mark and the text edge

// Units, y down from the baseline.
double inkTop(const GlyphRun& run)
{
    double top = 0;
    for (const quint32 glyph : run.glyphs)
        top = std::min(top, run.font.pathForGlyph(glyph).boundingRect().top());
    return top;
}

} // namespace

TextBlock::Drawn hangingMark(
    const TextBlock& mark, const QString& voiceFamily, Mm cap, TextBlock::Place place)
{
    const LineBreaks one{{static_cast<int>(mark.units().size())}, true};
    const auto metrics = faceMetrics(voiceFamily, Weight::Regular);
    const Mm em = cap / (metrics ? metrics->capHeight : 0.714);
    const Mm distance = kMarkDistance * em;
    place.edge += place.edgeIsRight ? distance : -distance;
    place.edgeIsRight = !place.edgeIsRight;
    TextBlock::Drawn drawn = mark.draw(one, place);
    for (GlyphRun& run : drawn.runs) {
        const Mm above = unitsToMm(-inkTop(run)) - cap;
        if (above > -0.2 * cap)
            run.origin.y += above;
    }
    return drawn;
}

} // namespace wainscot
