#include "layout/typeset/piece_text.h"

#include <algorithm>
#include <cmath>

namespace wainscot {

namespace {

Mm columnOf(const TextPart& part, Mm width)
{
    // Rounding an em to whole units may widen a line by less than anyone can see.
    constexpr double kHair = 1.002;
    const Mm column = kHair * (width - part.inset);
    return part.widest > Mm() ? std::min(column, part.widest) : column;
}

} // namespace

PieceLines pieceLines(const PieceText& text, Mm width)
{
    PieceLines result;
    const Mm inner = width - 2 * text.padding;
    result.fits = width >= text.narrowest;
    for (const TextPart& part : text.parts) {
        LineBreaks breaks = part.block.lines(part.breaking, columnOf(part, inner), part.characters);
        const auto count = breaks.ends.size();
        result.fits = result.fits && breaks.fits;
        result.lines += static_cast<int>(count);
        for (std::size_t i = 0; i < count; ++i)
            result.usedWidth = std::max(result.usedWidth, part.block.widthOf(breaks, i));
        if (count > 0)
            result.height += part.above + part.cap + static_cast<double>(count - 1) * part.lead;
        result.parts.push_back(std::move(breaks));
    }
    if (text.writing)
        result.height += text.writing->height();
    if (!text.parts.empty()) {
        result.height += 2 * text.padding;
        result.usedWidth += 2 * text.padding;
    }
    return result;
}

TitleTexts::TitleTexts(const ClearedPiece& title, const PanelStyle& style, const QString& language)
    : m_steps(titleSteps(style.grid.panel))
    , m_styleStep(style.scale.titleStep)
    , m_mostLines(style.titleLines)
{
    for (const int step : m_steps)
        m_texts.push_back(pieceText(title, style, language, step));
}

const PieceText& TitleTexts::at(int step) const
{
    const auto found = std::find(m_steps.begin(), m_steps.end(), step);
    const auto last = m_steps.size() - 1;
    return m_texts[found == m_steps.end() ? last
                                          : static_cast<std::size_t>(found - m_steps.begin())];
}

int TitleTexts::wantedStep(Mm width) const
{
    for (const int step : m_steps) {
        const PieceLines lines = pieceLines(at(step), width);
        if (step <= m_styleStep && lines.fits && lines.lines <= m_mostLines)
            return step;
    }
    return m_steps.back();
}

int TitleTexts::stepFor(SizeMm room) const
{
    const int wanted = wantedStep(room.width);
    for (const int step : m_steps) {
        if (step <= wanted)
            break;
        const PieceText& text = at(step);
        const PieceLines lines = pieceLines(text, room.width);
        if (lines.fits && lines.lines <= m_mostLines
            && lines.height + text.clearBelow <= room.height)
            return step;
    }
    return wanted;
}

Mm huggedHeight(Mm height, const Grid& grid)
{
    // A hair less than a whole row is a whole row: the sum of many lengths is never exact.
    const double rows = std::ceil((height + grid.gutter) / grid.rowUnit - 1e-6);
    return rows * grid.rowUnit - grid.gutter;
}

} // namespace wainscot
