#include "app/jobs/quote_room.h"

#include "app/jobs/drawn_display.h"
#include "layout/typeset/measurer.h"

#include <algorithm>
#include <cmath>

namespace wainscot {

namespace {

// The least that pieces may take by the plans of layout/engine: rather too little than too much,
// because the arrangement finds what does not fit, but never what was left away for nothing.
constexpr int kMomentColumns = 3;
constexpr int kAdultColumns = 5;
constexpr int kLeadColumns = 5;
constexpr double kPictureAspect = 1.5; // of most cameras
constexpr double kWidestCrop = 1.9;
constexpr double kMm2InCm2 = 100;

std::int64_t wholeCm2(double mm2)
{
    return static_cast<std::int64_t>(std::ceil(mm2 / kMm2InCm2));
}

// Every cleared quote and the adult's texts as pieces with numbers of their own.
std::vector<Piece> piecesToMeasure(const Material& material)
{
    std::vector<Piece> pieces;
    const auto add = [&](PieceKind kind, const QString& text, QuoteId quote) {
        if (text.isEmpty())
            return;
        Piece piece;
        piece.id = PieceId(static_cast<std::int64_t>(pieces.size()) + 1);
        piece.kind = kind;
        piece.quote = quote;
        piece.text = quote.isValid() ? QString() : text;
        pieces.push_back(piece);
    };
    for (const Quote* quote : material.quotes)
        add(PieceKind::Quote, quote->words, quote->id);
    const Experience& told = material.experience;
    add(PieceKind::Title, told.title, {});
    add(PieceKind::Context, told.context, {});
    add(PieceKind::Interpretation, told.interpretation, {});
    add(PieceKind::NextStep, told.nextSteps, {});
    return pieces;
}

} // namespace

QuoteRoom quoteRoom(const Material& material, const PermissionRules& rules, int panels)
{
    const std::vector<Piece> pieces = piecesToMeasure(material);
    Panel panel;
    panel.display = material.display.id;
    const ClearedPanel cleared = rules.clear(panel, pieces);
    const PanelStyle style = styleFor(cleared);
    const PanelMeasurer text(cleared.pieces(), style, material.display.language);
    const Grid& grid = style.grid;
    const auto areaOf = [&](const Piece& piece, int columns, Mm more) {
        const Mm width = grid.width(columns);
        const Mm height = text.measure(piece.id.number(), width).height + more + grid.gutter;
        return (width + grid.gutter).value() * height.value();
    };
    const Mm picture = grid.width(kMomentColumns) / kWidestCrop + grid.gutter;
    const Mm lead = grid.width(kLeadColumns);
    double adult = lead.value() * lead.value() / kPictureAspect * panels;
    QuoteRoom room;
    for (const Piece& piece : pieces) {
        if (piece.quote.isValid())
            room.momentCm2[piece.quote] = wholeCm2(areaOf(piece, kMomentColumns, picture));
        else
            adult += areaOf(piece, kAdultColumns, Mm(0));
    }
    const Mm across = grid.panel.width - 2 * grid.margin;
    const Mm down = grid.panel.height - 2 * grid.margin;
    const double inside = across.value() * down.value() * panels;
    room.roomCm2 = std::max<std::int64_t>(1, wholeCm2(inside - adult));
    return room;
}

} // namespace wainscot
