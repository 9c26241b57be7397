#include "layout/check/panel_facts.h"

#include <QPainterPath>
#include <QTransform>

#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>

namespace wainscot::check {

namespace {

constexpr double kMmPerUnit = kMmPerInch / kPtPerInch / kUnitsPerPt;

struct RunSpan {
    double left = 0; // mm on the panel
    double right = 0;
};

RunSpan spanOf(const GlyphRun& run)
{
    const QList<quint32> glyphs(run.glyphs.begin(), run.glyphs.end());
    const QList<QPointF> advances = run.font.advancesForGlyphIndexes(glyphs);
    double left = 1e9;
    double right = -1e9;
    for (std::size_t i = 0; i < run.positions.size(); ++i) {
        const double at = run.positions[i].x();
        const auto index = static_cast<qsizetype>(i);
        const double advance = index < advances.size() ? advances[index].x() : 0;
        left = std::min(left, at);
        right = std::max(right, at + advance);
    }
    return {run.origin.x.value() + left * kMmPerUnit, run.origin.x.value() + right * kMmPerUnit};
}

QString textOf(const GlyphRun& run)
{
    QString text;
    for (const Cluster& cluster : run.clusters)
        text += cluster.text;
    return text;
}

bool isOnlyMarks(const QString& text)
{
    static const QString marks =
        QStringLiteral("\u201c\u201d\u201e\u00ab\u00bb\u2018\u2019\u202f ");
    return !text.isEmpty()
        && std::all_of(text.begin(), text.end(), [](QChar c) { return marks.contains(c); });
}

// Letters beyond the first in a cluster that one glyph stands for: a ligature took them.
int joinedLettersOf(const GlyphRun& run)
{
    int joined = 0;
    for (const Cluster& cluster : run.clusters) {
        const auto letters = std::count_if(cluster.text.begin(), cluster.text.end(), [](QChar c) {
            return c.isLetter() && (c.script() == QChar::Script_Latin);
        });
        joined += std::max(0, static_cast<int>(letters) - std::max(1, cluster.glyphCount));
    }
    return joined;
}

QRgb groundAt(const std::vector<FillFact>& fills, PointMm point)
{
    QRgb ground = 0xffffffff;
    for (const FillFact& fill : fills) {
        if (fill.rect.contains(point))
            ground = fill.colour;
    }
    return ground;
}

class LineCollector {
public:
    LineCollector(const DisplayList& list, const ClearedPanel& panel)
        : m_list(list)
    {
        for (const ClearedPiece& piece : panel.pieces())
            m_kinds[piece.id] = piece.kind;
    }

    void add(const Mark& mark, const GlyphRun& run, const std::vector<FillFact>& fills)
    {
        if (mark.element < 0 || run.glyphs.empty())
            return;
        const QString text = textOf(run);
        const double baseline = run.origin.y.value() + run.positions.front().y() * kMmPerUnit;
        const auto key =
            std::tuple(mark.piece, mark.element, static_cast<int>(std::lround(baseline * 10)));
        auto [at, isNew] = m_index.try_emplace(key, m_lines.size());
        if (isNew)
            m_lines.push_back(begun(mark, baseline));
        TextLine& line = m_lines[at->second];
        line.endsParagraph = !run.endsLine;
        if (isOnlyMarks(text))
            return;
        extend(line, run, text, fills);
    }

    std::vector<TextLine> take()
    {
        std::erase_if(m_lines, [](const TextLine& line) { return line.text.trimmed().isEmpty(); });
        return std::move(m_lines);
    }

private:
    TextLine begun(const Mark& mark, double baseline) const
    {
        TextLine line;
        line.piece = mark.piece;
        const auto kind = m_kinds.find(mark.piece);
        if (kind != m_kinds.end())
            line.kind = kind->second;
        line.role = m_list.elements[static_cast<std::size_t>(mark.element)].role;
        line.baseline = Mm(baseline);
        return line;
    }

    void extend(TextLine& line,
        const GlyphRun& run,
        const QString& text,
        const std::vector<FillFact>& fills)
    {
        const RunSpan span = spanOf(run);
        const bool first = line.text.isEmpty();
        line.left = first ? Mm(span.left) : std::min(line.left, Mm(span.left));
        line.right = first ? Mm(span.right) : std::max(line.right, Mm(span.right));
        line.joinedLetters += joinedLettersOf(run);
        const qsizetype longest = m_longest[&line - m_lines.data()];
        if (text.size() > longest) {
            m_longest[&line - m_lines.data()] = text.size();
            line.colour = run.colour;
            line.family = run.font.familyName();
            line.em = Mm(run.sizeUnits * kMmPerUnit);
            line.cap = line.em * drawnHeight(run.font, u'H');
            line.smallLetters = line.em * drawnHeight(run.font, u'x');
            line.ground = groundAt(fills, {line.left, line.baseline - line.cap / 2});
        }
        line.text += text;
    }

    const DisplayList& m_list;
    std::map<PieceId, PieceKind> m_kinds;
    std::map<std::tuple<PieceId, int, int>, std::size_t> m_index;
    std::map<std::ptrdiff_t, qsizetype> m_longest;
    std::vector<TextLine> m_lines;
};

// In a quote the largest letters are the child's; what is clearly smaller is the name below, in
// any script.
void setUses(PanelFacts& facts)
{
    constexpr double kClearlySmaller = 0.75;
    std::map<PieceId, Mm> largest;
    for (const TextLine& line : facts.lines)
        largest[line.piece] = std::max(largest[line.piece], line.em);
    const auto isName = [&](const TextLine& line) {
        return line.em < kClearlySmaller * largest[line.piece];
    };
    for (TextLine& line : facts.lines) {
        switch (line.kind) {
        case PieceKind::Title:
            line.use = Use::Title;
            break;
        case PieceKind::Quote:
            line.use = isName(line) ? Use::Small : Use::Voice;
            break;
        case PieceKind::Label:
        case PieceKind::Credits:
        case PieceKind::Photo:
        case PieceKind::Work:
            line.use = Use::Small;
            break;
        default:
            line.use = line.role == Role::Heading2 ? Use::Small : Use::Body;
        }
    }
}

} // namespace

double drawnHeight(const QRawFont& font, QChar letter)
{
    const QList<quint32> glyphs = font.glyphIndexesForString(QString(letter));
    if (glyphs.isEmpty() || glyphs.front() == 0 || font.pixelSize() <= 0)
        return 0;
    return font.pathForGlyph(glyphs.front()).boundingRect().height() / font.pixelSize();
}

double PictureFact::ppi() const
{
    if (place.isEmpty())
        return 0;
    const double across = picture.size.width * picture.visible.width / place.width.value();
    const double down = picture.size.height * picture.visible.height / place.height.value();
    return std::min(across, down) * kMmPerInch;
}

const ClearedPiece* PanelFacts::piece(PieceId id) const
{
    const auto at = std::find_if(
        pieces.begin(), pieces.end(), [&](const ClearedPiece& one) { return one.id == id; });
    return at == pieces.end() ? nullptr : &*at;
}

std::vector<const TextLine*> PanelFacts::linesOf(PieceId id) const
{
    std::vector<const TextLine*> found;
    for (const TextLine& line : lines) {
        if (line.piece == id)
            found.push_back(&line);
    }
    return found;
}

bool PanelFacts::isLandscape() const
{
    return display.panelSize.width > display.panelSize.height;
}

PanelFacts factsOf(const ClearedPanel& panel, const PanelStyle& style, const DisplayList& list)
{
    PanelFacts facts;
    facts.panelId = panel.id();
    facts.number = panel.number();
    facts.display = panel.display();
    facts.style = style;
    facts.pieces = panel.pieces();
    facts.leftOut = panel.leftOut();
    for (const Mark& mark : list.marks) {
        if (const auto* fill = std::get_if<Fill>(&mark.shape))
            facts.fills.push_back({mark.piece, fill->rect, fill->colour});
    }
    LineCollector lines(list, panel);
    for (const Mark& mark : list.marks) {
        if (const auto* run = std::get_if<GlyphRun>(&mark.shape))
            lines.add(mark, *run, facts.fills);
        if (const auto* placed = std::get_if<PlacedPicture>(&mark.shape)) {
            const ClearedPiece* piece = facts.piece(mark.piece);
            const PieceKind kind = piece != nullptr ? piece->kind : PieceKind::Photo;
            facts.pictures.push_back({mark.piece, kind, placed->place, placed->picture});
        }
    }
    facts.lines = lines.take();
    setUses(facts);
    return facts;
}

} // namespace wainscot::check
