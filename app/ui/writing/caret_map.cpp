#include "app/ui/writing/caret_map.h"

#include <algorithm>
#include <cmath>

#include "app/ui/writing/caret_match.h"
#include "layout/typeset/faces.h"

namespace wainscot::ui {

namespace {

// Of the em: how far the caret reaches above and below the baseline, and what a space without a
// letter behind it takes (it is not drawn, but the hand must see that it was typed).
constexpr double kAbove = 0.86;
constexpr double kBelow = 0.26;
constexpr double kSpace = 0.26;

// Runs that set what is written: not a heading above it, not the name below a child's words.
std::vector<const GlyphRun*> runsOf(const DisplayList& list, const Piece& piece)
{
    std::vector<const GlyphRun*> runs;
    int largest = 0;
    for (const Mark& mark : list.marks) {
        const auto* run = std::get_if<GlyphRun>(&mark.shape);
        if (run == nullptr || mark.piece != piece.id)
            continue;
        const bool heading =
            mark.element >= 0 && list.elements[std::size_t(mark.element)].role == Role::Heading2;
        if (heading && piece.kind != PieceKind::Label)
            continue;
        runs.push_back(run);
        largest = std::max(largest, run->sizeUnits);
    }
    if (piece.kind == PieceKind::Quote)
        std::erase_if(runs, [&](const GlyphRun* run) { return run->sizeUnits != largest; });
    return runs;
}

double advanceOf(const GlyphRun& run, const Cluster& cluster)
{
    const auto first = run.glyphs.begin() + cluster.firstGlyph;
    const QList<quint32> glyphs(first, first + cluster.glyphCount);
    double advance = 0;
    for (const QPointF& one : run.font.advancesForGlyphIndexes(glyphs))
        advance += one.x();
    return advance;
}

} // namespace

CaretMap::CaretMap(const DisplayList& list, const Piece& piece, const QString& text, Mm emptyHeight)
{
    for (const GlyphRun* run : runsOf(list, piece))
        readRun(*run);
    QString drawn;
    drawn.reserve(qsizetype(m_letters.size()));
    for (const Letter& letter : m_letters)
        drawn += letter.letter;
    QString written;
    std::vector<std::size_t> offsets;
    for (qsizetype i = 0; i < text.size(); ++i) {
        if (text[i].isSpace())
            continue;
        written += text[i];
        offsets.push_back(std::size_t(i));
    }
    m_letterAt.assign(std::size_t(text.size()), -1);
    const std::vector<int> match = matchLetters(written, drawn);
    for (std::size_t i = 0; i < match.size(); ++i)
        m_letterAt[offsets[i]] = match[i];
    if (m_lines.empty())
        m_lines.push_back({piece.cell.y + emptyHeight,
            piece.cell.y,
            piece.cell.y + 1.2 * emptyHeight,
            piece.cell.x});
    placeStops(text);
}

void CaretMap::readRun(const GlyphRun& run)
{
    const Mm em = unitsToMm(run.sizeUnits);
    if (m_lines.empty() || m_lines.back().baseline != run.origin.y)
        m_lines.push_back(
            {run.origin.y, run.origin.y - kAbove * em, run.origin.y + kBelow * em, Mm(0)});
    const int line = int(m_lines.size()) - 1;
    for (const Cluster& cluster : run.clusters) {
        if (cluster.glyphCount == 0 || cluster.text.isEmpty())
            continue;
        double left = run.positions[std::size_t(cluster.firstGlyph)].x();
        for (int i = 1; i < cluster.glyphCount; ++i)
            left =
                std::min(left, run.positions[std::size_t(cluster.firstGlyph) + std::size_t(i)].x());
        const double share = advanceOf(run, cluster) / double(cluster.text.size());
        for (qsizetype i = 0; i < cluster.text.size(); ++i) {
            if (cluster.text[i].isSpace())
                continue;
            const auto place = double(run.rightToLeft ? cluster.text.size() - 1 - i : i);
            const Mm from = run.origin.x + unitsToMm(left + place * share);
            m_letters.push_back(
                {cluster.text[i], from, from + unitsToMm(share), line, run.rightToLeft});
        }
    }
}

// What is typed and not drawn yet: a space moves on a little, a new paragraph goes one line down.
CaretMap::Stop CaretMap::stopAfterGap(QChar gap, const Stop& before, bool rightToLeft)
{
    const Line line = m_lines[std::size_t(before.line)];
    const Mm height = line.bottom - line.top;
    if (gap != QLatin1Char('\n')) {
        const Mm step = gap.isSpace() ? kSpace / (kAbove + kBelow) * height : Mm(0);
        return {rightToLeft ? before.x - step : before.x + step, before.line};
    }
    const Mm down = 1.25 * height;
    m_lines.insert(m_lines.begin() + before.line + 1,
        {line.baseline + down, line.top + down, line.bottom + down, line.start});
    for (Letter& letter : m_letters)
        letter.line += letter.line > before.line ? 1 : 0;
    return {line.start, before.line + 1};
}

void CaretMap::placeStops(const QString& text)
{
    for (auto letter = m_letters.rbegin(); letter != m_letters.rend(); ++letter)
        m_lines[std::size_t(letter->line)].start = letter->lead();
    Stop now{m_lines.front().start, 0};
    bool rightToLeft = !m_letters.empty() && m_letters.front().rightToLeft;
    m_stops.reserve(std::size_t(text.size()) + 1);
    for (qsizetype i = 0; i <= text.size(); ++i) {
        const int next = i < text.size() ? m_letterAt[std::size_t(i)] : -1;
        const int last = i > 0 ? m_letterAt[std::size_t(i - 1)] : -1;
        if (next >= 0) {
            const Letter& letter = m_letters[std::size_t(next)];
            now = {letter.lead(), letter.line};
            rightToLeft = letter.rightToLeft;
        } else if (last >= 0) {
            const Letter& letter = m_letters[std::size_t(last)];
            now = {letter.end(), letter.line};
        } else if (i > 0) {
            now = stopAfterGap(text[i - 1], now, rightToLeft);
        }
        m_stops.push_back(now);
    }
}

int CaretMap::limited(int offset) const
{
    return std::clamp(offset, 0, std::max(0, int(m_stops.size()) - 1));
}

RectMm CaretMap::caretAt(int offset) const
{
    if (m_stops.empty())
        return {};
    const Stop& stop = m_stops[std::size_t(limited(offset))];
    const Line& line = m_lines[std::size_t(stop.line)];
    return {stop.x, line.top, Mm(0), line.bottom - line.top};
}

int CaretMap::offsetInLine(int offset, int by, Mm x) const
{
    if (m_stops.empty())
        return 0;
    const int line = m_stops[std::size_t(limited(offset))].line + by;
    if (line < 0)
        return 0;
    if (line >= int(m_lines.size()))
        return int(m_stops.size()) - 1;
    int best = -1;
    for (std::size_t i = 0; i < m_stops.size(); ++i) {
        if (m_stops[i].line != line)
            continue;
        if (best < 0
            || std::abs((m_stops[i].x - x).value())
                < std::abs((m_stops[std::size_t(best)].x - x).value()))
            best = int(i);
    }
    return best < 0 ? limited(offset) : best;
}

int CaretMap::offsetAt(PointMm at) const
{
    if (m_stops.empty())
        return 0;
    std::size_t nearest = 0;
    const auto distance = [&](std::size_t line) {
        const Mm middle = (m_lines[line].top + m_lines[line].bottom) / 2;
        return std::abs((middle - at.y).value());
    };
    for (std::size_t line = 1; line < m_lines.size(); ++line)
        nearest = distance(line) < distance(nearest) ? line : nearest;
    const auto on = std::find_if(m_stops.begin(), m_stops.end(), [&](const Stop& stop) {
        return stop.line == int(nearest);
    });
    return on == m_stops.end() ? 0 : offsetInLine(int(on - m_stops.begin()), 0, at.x);
}

int CaretMap::lineStart(int offset) const
{
    const int at = limited(offset);
    int start = at;
    while (start > 0 && m_stops[std::size_t(start) - 1].line == m_stops[std::size_t(at)].line)
        --start;
    return start;
}

int CaretMap::lineEnd(int offset) const
{
    const int at = limited(offset);
    int end = at;
    while (end + 1 < int(m_stops.size())
        && m_stops[std::size_t(end) + 1].line == m_stops[std::size_t(at)].line)
        ++end;
    return end;
}

std::vector<RectMm> CaretMap::between(int from, int to) const
{
    std::vector<RectMm> covered;
    const int first = limited(std::min(from, to));
    const int last = limited(std::max(from, to));
    for (int i = first; i < last; ++i) {
        const int letter = m_letterAt[std::size_t(i)];
        const Stop& stop = m_stops[std::size_t(i)];
        Mm left = stop.x;
        Mm right = m_stops[std::size_t(i) + 1].x;
        if (letter >= 0) {
            left = m_letters[std::size_t(letter)].left;
            right = m_letters[std::size_t(letter)].right;
        } else if (m_stops[std::size_t(i) + 1].line != stop.line) {
            continue;
        }
        const Line& line = m_lines[std::size_t(stop.line)];
        const RectMm box{std::min(left, right),
            line.top,
            std::max(left, right) - std::min(left, right),
            line.bottom - line.top};
        const Mm hair(0.01);
        if (!covered.empty() && covered.back().y == box.y && covered.back().right() + hair >= box.x
            && covered.back().x <= box.right() + hair) {
            const Mm end = std::max(covered.back().right(), box.right());
            covered.back().x = std::min(covered.back().x, box.x);
            covered.back().width = end - covered.back().x;
        } else {
            covered.push_back(box);
        }
    }
    return covered;
}

RectMm CaretMap::bounds() const
{
    if (m_stops.empty())
        return {};
    RectMm all = caretAt(0);
    Mm right = all.x;
    Mm bottom = all.bottom();
    for (std::size_t i = 1; i < m_stops.size(); ++i) {
        const RectMm one = caretAt(int(i));
        right = std::max(right, one.x);
        bottom = std::max(bottom, one.bottom());
        all.x = std::min(all.x, one.x);
        all.y = std::min(all.y, one.y);
    }
    all.width = right - all.x;
    all.height = bottom - all.y;
    return all;
}

} // namespace wainscot::ui
