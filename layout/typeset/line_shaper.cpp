#include "layout/typeset/line_shaper.h"

#include <QGlyphRun>

#include <algorithm>

namespace wainscot {

namespace {

constexpr double kEndless = 1e6; // units; wider than any panel, well inside Qt's fixed point

bool samePlace(const QPointF& a, const QPointF& b)
{
    return (a - b).manhattanLength() < 0.01;
}

} // namespace

LineShaper::LineShaper(const TextBlock& block, const std::vector<LineRange>& lines)
    : m_block(block)
    , m_lines(lines)
{
    // One layout for all lines, parted by line separators: what runs from right to left is told
    // over the whole paragraph.
    QString text;
    QList<QTextLayout::FormatRange> formats;
    for (const LineRange& line : lines) {
        if (!text.isEmpty())
            text += QChar(QChar::LineSeparator);
        const int offset = static_cast<int>(text.size()) - line.start;
        m_starts.push_back(static_cast<int>(text.size()));
        text += block.m_text.mid(line.start, line.length);
        for (const Stretch& stretch : block.m_stretches) {
            const int from = std::max(stretch.start, line.start);
            const int to = std::min(stretch.start + stretch.length, line.start + line.length);
            if (from >= to)
                continue;
            QTextCharFormat format;
            format.setFont(layoutFont(stretch.face, stretch.tracking));
            const int start = from + offset;
            // Neighbours in one font are shaped together, so that kerning reaches across colours.
            // A mark that is drawn in stands by itself.
            if (!formats.isEmpty() && stretch.shift == 0
                && formats.back().start + formats.back().length == start
                && formats.back().format == format)
                formats.back().length += to - from;
            else
                formats.push_back({start, to - from, format});
        }
    }
    if (!block.m_stretches.empty())
        m_layout.setFont(layoutFont(block.m_stretches.front().face));
    m_layout.setText(text);
    m_layout.setFormats(formats);
    QTextOption option(Qt::AlignLeft | Qt::AlignAbsolute);
    option.setTextDirection(
        block.m_direction == Direction::RightToLeft ? Qt::RightToLeft : Qt::LeftToRight);
    option.setWrapMode(QTextOption::ManualWrap);
    option.setUseDesignMetrics(true);
    m_layout.setTextOption(option);
    m_layout.beginLayout();
    for (QTextLine line = m_layout.createLine(); line.isValid(); line = m_layout.createLine()) {
        line.setLineWidth(kEndless);
        line.setPosition({0, 0});
    }
    m_layout.endLayout();
}

double LineShaper::width(std::size_t line) const
{
    return m_layout.lineAt(static_cast<int>(line)).naturalTextWidth();
}

std::vector<LineShaper::Glyph> LineShaper::glyphs(int start, int length) const
{
    std::vector<Glyph> result;
    for (const QGlyphRun& run : m_layout.glyphRuns(start, length)) {
        const QList<quint32> indexes = run.glyphIndexes();
        const QList<QPointF> positions = run.positions();
        for (qsizetype i = 0; i < indexes.size(); ++i)
            result.push_back({run.rawFont(), indexes[i], positions[i], run.isRightToLeft()});
    }
    return result;
}

// Letters that never join, reorder or carry marks: one glyph each, in order.
bool LineShaper::isPlain(int start, int length) const
{
    const QString text = m_layout.text().mid(start, length);
    return std::all_of(text.begin(), text.end(), [](QChar c) {
        return c.unicode() < 0x0300 || (c.unicode() >= 0x1E00 && c.unicode() < 0x2066);
    });
}

std::vector<LineShaper::Piece> LineShaper::onePieceALetter(int start, int length) const
{
    std::vector<Piece> result;
    const std::vector<Glyph> all = glyphs(start, length);
    if (static_cast<int>(all.size()) != length)
        return result;
    for (int i = 0; i < length; ++i)
        result.push_back({start + i, 1, {all[static_cast<std::size_t>(i)]}});
    return result;
}

// Qt does not say which letters a glyph stands for. Asked letter by letter it gives glyphs of the
// cluster the letter is in (not always all of them), so letters that share a glyph in one place are
// one cluster.
std::vector<LineShaper::Piece> LineShaper::pieces(int start, int length) const
{
    if (isPlain(start, length)) {
        std::vector<Piece> plain = onePieceALetter(start, length);
        if (!plain.empty())
            return plain;
    }
    std::vector<Piece> result;
    const QString text = m_layout.text();
    for (int at = start; at < start + length;) {
        const int letters = text.at(at).isHighSurrogate() && at + 1 < start + length ? 2 : 1;
        std::vector<Glyph> found = glyphs(at, letters);
        if (!result.empty() && (found.empty() || sharesGlyph(result.back(), found))) {
            result.back().length += letters;
            for (Glyph& glyph : found) {
                if (!sharesGlyph(result.back(), {glyph}))
                    result.back().glyphs.push_back(std::move(glyph));
            }
        } else {
            result.push_back({at, letters, std::move(found)});
        }
        at += letters;
    }
    return result;
}

bool LineShaper::sharesGlyph(const Piece& piece, const std::vector<Glyph>& glyphs)
{
    return std::any_of(glyphs.begin(), glyphs.end(), [&](const Glyph& one) {
        return std::any_of(piece.glyphs.begin(), piece.glyphs.end(), [&](const Glyph& other) {
            return one.index == other.index && samePlace(one.at, other.at);
        });
    });
}

void LineShaper::report(const Stretch& stretch, const Piece& piece, TextBlock::Drawn& drawn) const
{
    const QString text = m_layout.text().mid(piece.start, piece.length);
    for (const Glyph& glyph : piece.glyphs) {
        const bool drawnAtAll = glyph.index != 0;
        const QString used = drawnAtAll ? glyph.font.familyName() : QString();
        // The spare face only helps out with letters, never instead of a face that is missing.
        const bool expected = used == stretch.face.family
            || (used == stretch.face.spare && isInstalled(stretch.face.family));
        if (expected)
            continue;
        if (!drawn.gaps.empty() && drawn.gaps.back().used == used
            && drawn.gaps.back().wanted == stretch.face.family)
            drawn.gaps.back().text += text;
        else
            drawn.gaps.push_back({{}, stretch.face.family, used, text});
        return;
    }
}

void LineShaper::appendStretch(const Stretch& stretch,
    int start,
    int length,
    double baseline,
    PointMm origin,
    TextBlock::Drawn& drawn) const
{
    GlyphRun run;
    const auto finish = [&] {
        if (!run.clusters.empty())
            drawn.runs.push_back(run);
        run = {};
    };
    const QString text = m_layout.text();
    for (const Piece& piece : pieces(start, length)) {
        report(stretch, piece, drawn);
        if (!piece.glyphs.empty()) {
            const Glyph& glyph = piece.glyphs.front();
            if (!run.glyphs.empty()
                && (!(run.font == glyph.font) || run.rightToLeft != glyph.rightToLeft))
                finish();
            run.font = glyph.font;
            run.rightToLeft = glyph.rightToLeft;
        }
        run.sizeUnits = stretch.face.emUnits;
        run.colour = stretch.colour;
        run.origin = origin;
        const double shift = run.rightToLeft ? -stretch.shift : stretch.shift;
        run.clusters.push_back({static_cast<int>(run.glyphs.size()),
            static_cast<int>(piece.glyphs.size()),
            text.mid(piece.start, piece.length)});
        for (const Glyph& glyph : piece.glyphs) {
            run.glyphs.push_back(glyph.index);
            run.positions.emplace_back(glyph.at.x() + shift, glyph.at.y() - baseline);
        }
    }
    finish();
}

void LineShaper::append(
    std::size_t line, PointMm origin, bool endsLine, TextBlock::Drawn& drawn) const
{
    const LineRange range = m_lines[line];
    const int offset = m_starts[line] - range.start;
    const QTextLine set = m_layout.lineAt(static_cast<int>(line));
    const std::size_t before = drawn.runs.size();
    for (const Stretch& stretch : m_block.m_stretches) {
        const int from = std::max(stretch.start, range.start);
        const int to = std::min(stretch.start + stretch.length, range.start + range.length);
        if (from < to)
            appendStretch(stretch, from + offset, to - from, set.y() + set.ascent(), origin, drawn);
    }
    if (drawn.runs.size() > before)
        drawn.runs.back().endsLine = endsLine;
}

} // namespace wainscot
