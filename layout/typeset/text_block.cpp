#include "layout/typeset/text_block.h"

#include "layout/typeset/line_shaper.h"

#include <algorithm>

namespace wainscot {

namespace {

int charactersIn(const QString& text)
{
    return static_cast<int>(std::count_if(
        text.begin(), text.end(), [](QChar c) { return !c.isLowSurrogate() && !c.isMark(); }));
}

} // namespace

TextBlock::TextBlock(const Pairing& pairing, std::vector<TextSpan> spans, QString language)
    : m_language(std::move(language))
{
    for (const TextSpan& span : spans)
        m_text += span.text;
    m_direction = directionOf(m_text, m_language);
    // Scripts are told over the whole paragraph: a mark in its own colour belongs to the letters it
    // stands at.
    const std::vector<ScriptStretch> scripts = scriptStretches(m_text);
    int start = 0;
    for (TextSpan& span : spans) {
        const int end = start + static_cast<int>(span.text.size());
        if (span.face.language.isEmpty())
            span.face.language = m_language;
        for (const ScriptStretch& script : scripts) {
            const int from = std::max(start, script.start);
            const int to = std::min(end, script.start + script.length);
            if (from >= to)
                continue;
            Stretch stretch;
            stretch.start = from;
            stretch.length = to - from;
            stretch.face = chooseFace(pairing, span.face, span.script.value_or(script.script));
            stretch.tracking = span.trackingEm * stretch.face.emUnits;
            stretch.colour = span.colour;
            stretch.shift = -span.drawnInEm * stretch.face.emUnits;
            m_stretches.push_back(stretch);
        }
        start = end;
    }
    m_places = lineUnits(m_text);
    for (const Unit& place : m_places) {
        BreakUnit unit;
        unit.text = m_text.mid(place.start, place.length);
        unit.width = measure(place.start, place.length);
        unit.characters = charactersIn(unit.text);
        unit.spaces = place.spaces;
        unit.insidePhrase = place.insidePhrase;
        unit.noBreak = place.noBreak;
        m_units.push_back(unit);
    }
    measureSpaces();
}

double TextBlock::measure(int start, int length) const
{
    if (length == 0)
        return 0;
    double width = LineShaper(*this, {{start, length}}).width(0);
    for (const Stretch& stretch : m_stretches) {
        if (stretch.start >= start && stretch.start < start + length)
            width += stretch.shift;
    }
    return width;
}

// Faces kern across spaces, so a space is what two words take together over what they take alone.
void TextBlock::measureSpaces()
{
    for (std::size_t i = 0; i + 1 < m_units.size(); ++i) {
        if (m_places[i].spaces == 0)
            continue;
        const int start = m_places[i].start;
        const int end = m_places[i + 1].start + m_places[i + 1].length;
        m_units[i].space = measure(start, end - start) - m_units[i].width - m_units[i + 1].width;
    }
}

Mm TextBlock::widestUnit() const
{
    double widest = 0;
    for (const BreakUnit& unit : m_units)
        widest = std::max(widest, unit.width);
    return unitsToMm(widest);
}

LineBreaks TextBlock::lines(Breaking how, Mm column, int characters) const
{
    const Measure measure{mmToUnits(column), characters};
    return how == Breaking::Sense ? breakBySense(m_units, measure, m_language)
                                  : breakParagraph(m_units, measure);
}

Mm TextBlock::widthOf(const LineBreaks& breaks, std::size_t line) const
{
    return unitsToMm(lineWidth(m_units, line == 0 ? 0 : breaks.ends[line - 1], breaks.ends[line]));
}

int TextBlock::charactersOf(const LineBreaks& breaks, std::size_t line) const
{
    return lineCharacters(m_units, line == 0 ? 0 : breaks.ends[line - 1], breaks.ends[line]);
}

TextBlock::Drawn TextBlock::draw(const LineBreaks& breaks, const Place& place, LineSpan which) const
{
    const std::size_t end = std::min(which.end, breaks.ends.size());
    std::vector<LineRange> ranges;
    std::size_t unit =
        which.first == 0 ? 0 : static_cast<std::size_t>(breaks.ends[which.first - 1]);
    for (std::size_t line = which.first; line < end; ++line) {
        const auto next = static_cast<std::size_t>(breaks.ends[line]);
        const Unit& last = m_places[next - 1];
        const int start = m_places[unit].start;
        ranges.push_back({start, last.start + last.length - start});
        unit = next;
    }
    const LineShaper shaper(*this, ranges);
    Drawn drawn;
    for (std::size_t i = 0; i < ranges.size(); ++i) {
        const std::size_t line = which.first + i;
        const Mm width = unitsToMm(shaper.width(i));
        const Mm left = place.edgeIsRight ? place.edge - width : place.edge;
        const PointMm origin{left, place.firstBaseline + static_cast<double>(i) * place.lead};
        const bool atSpace = line + 1 < breaks.ends.size()
            && m_places[static_cast<std::size_t>(breaks.ends[line]) - 1].spaces > 0;
        shaper.append(i, origin, atSpace, drawn);
    }
    return drawn;
}

} // namespace wainscot
