// One piece in one cell: how it sits there and what that costs. Text is measured once per width.
#pragma once

#include "layout/engine/cost.h"
#include "layout/engine/piece.h"

#include <map>
#include <memory>

namespace wainscot::engine {

// How a piece sits in a cell; lengths in mm.
struct LeafFit {
    bool possible = false;
    double textHeight = 0; // of text, or of a caption with the gap above it
    double textWidth = 0; // the width given to the text
    double pictureWidth = 0;
    double pictureHeight = 0;
    double keep = 1;
    double ppi = 0;
    CostTerms cost;
};

// Text of the items by width, asked for once. The measurer must outlive it.
class TextMemo {
public:
    explicit TextMemo(const TextMeasurer& text)
        : m_text(text)
    {
    }
    [[nodiscard]] const TextMetrics& measure(ItemId item, Mm width);
    [[nodiscard]] const TextSpec& spec(ItemId item);

private:
    const TextMeasurer& m_text;
    using Metrics = std::map<std::pair<ItemId, double>, TextMetrics>;
    Metrics m_metrics;
    Metrics::const_iterator m_latest = m_metrics.end();
    std::map<ItemId, TextSpec> m_specs;
};

// The costs of a sequence of pieces on one page format, computed where asked for.
class LeafTable {
public:
    LeafTable(const PageSpec& page,
        std::vector<Piece> pieces,
        TextMemo& text,
        const Weights& weights = {});

    [[nodiscard]] int size() const { return int(m_pieces.size()); }
    [[nodiscard]] const PageSpec& page() const { return m_page; }
    [[nodiscard]] const Weights& weights() const { return m_weights; }
    [[nodiscard]] const std::vector<Piece>& pieces() const { return m_pieces; }
    [[nodiscard]] TextMemo& text() { return m_text; }
    [[nodiscard]] const Piece& piece(int i) const { return m_pieces[std::size_t(i)]; }

    // Costs of piece `i` in columns x .. x+w-1 for every height 0..rows; kNever where impossible.
    [[nodiscard]] const std::vector<Cost>& costs(int i, int x, int w);
    [[nodiscard]] LeafFit fit(int i, int x, int w, int h);
    // From now on piece `i` pays up to `price` for each of `shown[i]`, cells of arrangements
    // already shown, that it resembles. What was computed without them is kept.
    void avoid(std::vector<std::vector<GridRect>> shown, std::vector<Cost> prices);
    // Lowest height that piece `i` can have in columns x .. x+w-1; rows + 1 = none.
    [[nodiscard]] int leastRows(int i, int x, int w);
    // Smallest area in cells that piece `i` can have anywhere.
    [[nodiscard]] int leastCells(int i);
    // The caption (gap included) or text height at the width of the cell, mm.
    [[nodiscard]] double captionHeight(int i, int x, int w);

private:
    [[nodiscard]] bool allowed(const Piece& piece, int x, int w) const;
    [[nodiscard]] double textWidth(const Piece& piece, double cellWidth) const;
    void fitText(const Piece& piece, double width, int h, LeafFit& out);
    void fitPicture(const Piece& piece, double width, int h, LeafFit& out);
    void priceWishes(const Piece& piece, const GridRect& cell, LeafFit& out) const;
    [[nodiscard]] LeafFit ownFit(int i, int x, int w, int h);
    [[nodiscard]] const std::vector<Cost>& ownCosts(int i, int x, int w);
    [[nodiscard]] Cost likeness(int i, int x, int w, int h) const;
    [[nodiscard]] std::size_t place(int i, int x, int w) const;
    // The first column in which the piece costs the same as in column x at this width.
    [[nodiscard]] int shapeColumn(int i, int x, int w) const;

    PageSpec m_page;
    std::vector<Piece> m_pieces;
    TextMemo& m_text;
    Weights m_weights;
    double m_usable; // area between the margins, mm2
    std::vector<std::vector<Cost>> m_costs; // by piece, x, w; empty = not computed yet
    std::vector<std::vector<GridRect>> m_shown; // by piece; empty = nothing to avoid
    std::vector<Cost> m_likeness; // price of each piece
    std::vector<std::vector<Cost>> m_avoiding; // as m_costs, with likeness
};

// What a piece in columns x .. x+w-1 keeps free beside the edge of its lines.
[[nodiscard]] Mm indentOf(const Item& item, int x, int w, const PageSpec& page);

// White that must stay between the last baseline of a text and the next piece, mm.
[[nodiscard]] double clearBelow(const Piece& piece, const PageSpec& page);

} // namespace wainscot::engine
