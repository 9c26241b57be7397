// How fills, shapes, pictures and glyphs are written into a page's content.
#include "layout/paper/page_content.h"

#include "layout/paper/pdf_syntax.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace wainscot::pdf {

namespace {

// Glyphs nearer than this to where the font's own widths put them are not moved: 0.0035 mm, a sixth
// of a dot at 1200 dpi. The error does not add up.
constexpr double kNudgePt = 0.01;

} // namespace

void PageContent::setColour(QRgb colour)
{
    if (colour == m_colour)
        return;
    m_stream += rgb(colour) + " rg\n";
    m_colour = colour;
}

void PageContent::draw(const Fill& fill, SizeMm panel)
{
    if (qAlpha(fill.colour) == 0 || fill.rect.isEmpty())
        return;
    setColour(fill.colour);
    m_stream += box(bledOut(fill.rect, panel, m_bleed)) + " re f\n";
}

// A circle as four cubic curves, off by less than 0.03 % of its radius: 4/3 (sqrt 2 - 1).
std::string PageContent::circle(PointMm centre, Mm radius) const
{
    constexpr double kHandle = 0.5522847498;
    const auto at = [&](double across, double down) {
        return x(centre.x + across * radius) + " " + y(centre.y + down * radius) + " ";
    };
    std::string path = at(1, 0) + "m ";
    const std::array<std::array<double, 2>, 5> corners{{{1, 0}, {0, 1}, {-1, 0}, {0, -1}, {1, 0}}};
    for (std::size_t k = 0; k + 1 < corners.size(); ++k) {
        const auto [ax, ay] = corners[k];
        const auto [bx, by] = corners[k + 1];
        path += at(ax + kHandle * bx, ay + kHandle * by) + at(bx + kHandle * ax, by + kHandle * ay)
            + at(bx, by) + "c ";
    }
    return path + "h ";
}

void PageContent::draw(const Disc& disc)
{
    setColour(disc.colour);
    m_stream += circle(disc.centre, disc.radius);
    if (disc.ring > Mm())
        m_stream += circle(disc.centre, disc.radius - disc.ring);
    m_stream += "f*\n"; // even-odd: a ring is open inside
}

void PageContent::draw(const Shape& shape)
{
    setColour(shape.colour);
    const auto point = [&](int index) {
        const QPainterPath::Element at = shape.area.elementAt(index);
        return x(Mm(at.x)) + " " + y(Mm(at.y)) + " ";
    };
    for (int i = 0; i < shape.area.elementCount(); ++i) {
        const QPainterPath::Element element = shape.area.elementAt(i);
        if (element.isCurveTo()) { // with the two elements after it
            m_stream += point(i) + point(i + 1) + point(i + 2) + "c ";
            i += 2;
        } else {
            m_stream += point(i) + (element.isMoveTo() ? "m " : "l ");
        }
    }
    m_stream += "f\n";
}

void PageContent::draw(const PlacedPicture& picture, SizeMm panel)
{
    const int index = m_shared.plan.indexOf(picture);
    const std::string name = "/Im" + std::to_string(index + 1);
    m_resources.getKey("/XObject")
        .replaceKey(name, m_shared.pictures[static_cast<std::size_t>(index)]);
    const RectMm area = bledOut(picture.place, panel, m_bleed);
    RectMm place = picture.place;
    m_stream += "q ";
    if (!(area == place)) {
        // There are no pixels beyond the part that may be seen, so into the bleed the picture is
        // enlarged a little instead, keeping its shape.
        place = covering(area, place.size());
        m_stream += box(area) + " re W n ";
    }
    m_stream += points(place.width) + " 0 0 " + points(place.height) + " " + x(place.x) + " "
        + y(place.bottom()) + " cm " + name + " Do Q\n";
}

void PageContent::draw(const GlyphRun& run, int element)
{
    if (run.glyphs.empty())
        return;
    FontObjects::Entry& font = m_shared.fonts.entry(run.font);
    m_resources.getKey("/Font").replaceKey(font.name, font.object);
    const auto begin = [&] {
        setColour(run.colour);
        m_stream += "BT " + font.name + " " + number(run.sizeUnits / kUnitsPerPt) + " Tf\n";
    };
    std::vector<CodedGlyph> pending; // glyphs of words in a row that need no telling
    const auto flush = [&] {
        if (pending.empty())
            return;
        enter(element);
        begin();
        showGlyphs(run, font.face, pending);
        m_stream += "ET\n";
        pending.clear();
    };
    for (const Word& word : wordsOf(run, font.face)) {
        if (!word.told) {
            pending.insert(pending.end(), word.glyphs.begin(), word.glyphs.end());
            continue;
        }
        flush();
        enterSpan(element, word.text);
        begin();
        showGlyphs(run, font.face, word.glyphs);
        m_stream += "ET\n";
        leave();
    }
    flush();
    if (run.endsLine) {
        enter(element);
        begin();
        showSoftSpace(run, font.face);
        m_stream += "ET\n";
    }
}

void PageContent::showGlyphs(
    const GlyphRun& run, FontFace& face, const std::vector<CodedGlyph>& glyphs)
{
    const double em = run.sizeUnits / kUnitsPerPt;
    const double left = toPt(run.origin.x + m_origin.x).value();
    const double base = toPt(m_media.height - m_origin.y - run.origin.y).value();
    std::string codes;
    std::string array;
    double expected = 0; // where the pen is by the font's widths
    double line = 0;
    bool open = false;
    const auto closeCodes = [&] {
        if (!codes.empty())
            array += "<" + codes + ">";
        codes.clear();
    };
    const auto closeArray = [&] {
        closeCodes();
        if (open)
            m_stream += "[" + array + "] TJ\n";
        array.clear();
    };
    for (const CodedGlyph& glyph : glyphs) {
        const QPointF at = run.positions[glyph.index];
        const double penX = left + at.x() / kUnitsPerPt;
        const double penY = base - at.y() / kUnitsPerPt;
        if (!open || std::abs(penY - line) > 1e-4) {
            closeArray();
            m_stream += "1 0 0 1 " + number(penX) + " " + number(penY) + " Tm ";
            open = true;
            line = penY;
            expected = penX;
        } else if (std::abs(penX - expected) > kNudgePt) {
            closeCodes();
            array += number((expected - penX) * 1000 / em);
            expected = penX;
        }
        codes += face.spelled(glyph.code);
        expected += face.advance(run.glyphs[glyph.index]) / 1000 * em;
    }
    closeArray();
}

// Where a line ends at a space the space itself is not set; without one, a reader of the PDF would
// join the words on both sides.
void PageContent::showSoftSpace(const GlyphRun& run, FontFace& face)
{
    const quint32 space = face.glyphOf(U' ');
    const bool alreadyThere =
        !run.clusters.empty() && run.clusters.back().text.endsWith(QChar::Space);
    if (space == 0 || alreadyThere)
        return;
    const FontFace::Code code = face.anyCode(space, QStringLiteral(" "));
    const double em = run.sizeUnits / kUnitsPerPt;
    const auto [least, most] = std::minmax_element(run.positions.begin(),
        run.positions.end(),
        [](const QPointF& a, const QPointF& b) { return a.x() < b.x(); });
    double at = 0;
    if (run.rightToLeft) {
        at = least->x() / kUnitsPerPt - face.advance(space) / 1000 * em;
    } else {
        const auto last = static_cast<std::size_t>(most - run.positions.begin());
        at = most->x() / kUnitsPerPt + face.advance(run.glyphs[last]) / 1000 * em;
    }
    m_stream += "1 0 0 1 " + number(toPt(run.origin.x + m_origin.x).value() + at) + " "
        + number(toPt(m_media.height - m_origin.y - run.origin.y).value()
            - run.positions.back().y() / kUnitsPerPt)
        + " Tm <" + face.spelled(code) + "> Tj\n";
}

} // namespace wainscot::pdf
