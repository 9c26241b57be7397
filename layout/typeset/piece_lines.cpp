#include "layout/typeset/piece_text.h"

#include <algorithm>
#include <cmath>

namespace wainscot {

namespace {

constexpr int kMostTitleLines = 3;

Mm columnOf(const TextPart& part, Mm width)
{
    const Mm column = width - part.inset;
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

std::size_t fittingTitle(const std::vector<PieceText>& bySteps, Mm width)
{
    for (std::size_t i = 0; i < bySteps.size(); ++i) {
        const PieceLines lines = pieceLines(bySteps[i], width);
        if (lines.fits && lines.lines <= kMostTitleLines)
            return i;
    }
    return bySteps.empty() ? 0 : bySteps.size() - 1;
}

Mm huggedHeight(Mm height, const Grid& grid)
{
    // A hair less than a whole row is a whole row: the sum of many lengths is never exact.
    const double rows = std::ceil((height + grid.gutter) / grid.rowUnit - 1e-6);
    return rows * grid.rowUnit - grid.gutter;
}

} // namespace wainscot
