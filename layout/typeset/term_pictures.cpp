// Pictures in a term's file: rows of one height, each picture whole.
#include "layout/typeset/term_blocks.h"

#include <algorithm>
#include <memory>

namespace wainscot {

namespace {

constexpr Mm kRowHeight{64}; // about; a full row fills the width exactly
constexpr Mm kLeastRow{40};
constexpr Mm kGreatestRow{84};
constexpr Mm kBetween{5};
constexpr Mm kBeforeRow{7};
constexpr Mm kBeforeCaption{2.2}; // picture's edge to the cap line
constexpr std::size_t kMostInRow = 3;

Mm widthAt(const ClearedPiece& piece, Mm height)
{
    return aspectOf(*piece.picture) * height;
}

} // namespace

void TermBlocks::pictures(const std::vector<ClearedPiece>& pieces)
{
    std::vector<const ClearedPiece*> row;
    const auto heightFor = [&](const auto& some) {
        double aspects = 0;
        for (const ClearedPiece* piece : some)
            aspects += aspectOf(*piece->picture);
        const Mm room = m_style.width() - static_cast<double>(some.size() - 1) * kBetween;
        return room / std::max(aspects, 0.1);
    };
    for (const ClearedPiece& piece : pieces) {
        if (!piece.picture)
            continue;
        row.push_back(&piece);
        if (row.size() == kMostInRow || heightFor(row) <= kRowHeight) {
            pictureRow(row, std::clamp(heightFor(row), kLeastRow, kGreatestRow));
            row.clear();
        }
    }
    if (!row.empty())
        pictureRow(row, std::min(heightFor(row), kRowHeight));
}

void TermBlocks::pictureRow(const std::vector<const ClearedPiece*>& row, Mm height)
{
    struct Cell {
        const ClearedPiece* piece;
        std::shared_ptr<const TextBlock> caption;
        LineBreaks lines;
        Mm width;
    };
    const Mm cap = m_style.scale.caption();
    const Mm lead = m_text.captionLead();
    // A wide picture alone may be wider than the page at the row's least height.
    Mm total = static_cast<double>(row.size() - 1) * kBetween;
    for (const ClearedPiece* piece : row)
        total += widthAt(*piece, height);
    const double fit = std::min(1.0, m_style.width() / total);
    auto cells = std::make_shared<std::vector<Cell>>();
    std::size_t most = 0;
    for (const ClearedPiece* piece : row) {
        Cell cell{piece,
            std::make_shared<const TextBlock>(
                m_text.caption(piece->text.simplified(), m_style.palette.adult)),
            {},
            fit * widthAt(*piece, height)};
        cell.lines = m_text.lines(*cell.caption, std::max(cell.width, Mm(34)));
        if (!cell.caption->isEmpty())
            most = std::max(most, cell.lines.ends.size());
        cells->push_back(std::move(cell));
    }
    const Mm tall = fit * height;
    FlowBlock flow;
    flow.before = kBeforeRow;
    flow.height = tall;
    if (most > 0)
        flow.height += kBeforeCaption + cap + static_cast<double>(most - 1) * lead;
    flow.draw = [this, cells, tall, cap, lead](PageDrawing& page, Mm top) {
        Mm left = m_style.side;
        for (const Cell& cell : *cells) {
            const int figure = page.picture(*cell.piece->picture, {left, top, cell.width, tall});
            if (!cell.caption->isEmpty()) {
                page.text(page.add(Role::Caption, m_text.language(), figure),
                    *cell.caption,
                    cell.lines,
                    {left, false, top + tall + kBeforeCaption + cap, lead});
            }
            left += cell.width + kBetween;
        }
    };
    m_flow.add(std::move(flow));
}

void TermBlocks::largePicture(const ClearedPiece& piece, Mm greatestHeight)
{
    if (piece.picture)
        pictureRow({&piece}, std::min(greatestHeight, m_style.width() / aspectOf(*piece.picture)));
}

} // namespace wainscot
