#include "app/jobs/placed_panel.h"

#include "app/jobs/drawn_display.h"
#include "app/jobs/engine_request.h"
#include "core/base/says.h"

#include <map>

namespace wainscot {

namespace {

bool waits(const PermissionRules& rules, const Book& book, const Piece& piece)
{
    if (piece.kind == PieceKind::Quote) {
        const Quote* quote = book.quotes.find(piece.quote);
        return quote != nullptr && rules.refusal(*quote);
    }
    const Picture* picture = isPicture(piece.kind) ? book.pictures.find(piece.picture) : nullptr;
    return picture != nullptr && rules.refusal(*picture);
}

} // namespace

ClearedPanel clearedWithPlaces(
    const PermissionRules& rules, const Book& book, const Panel& panel, std::vector<Piece> pieces)
{
    for (Piece& piece : pieces) {
        if (!waits(rules, book, piece))
            continue;
        Piece empty;
        empty.id = piece.id;
        empty.panel = piece.panel;
        empty.kind = PieceKind::Context;
        empty.order = piece.order;
        empty.cell = piece.cell;
        empty.pinned = true;
        piece = empty;
    }
    return rules.clear(panel, std::move(pieces));
}

std::vector<engine::Placement> placementsOf(
    const std::vector<ClearedPiece>& pieces, const Grid& grid)
{
    std::vector<engine::Placement> places;
    for (const ClearedPiece& piece : pieces) {
        if (piece.cell.isEmpty())
            continue;
        engine::Placement place;
        place.id = piece.id.number();
        place.at = gridRectFor(grid, piece.cell);
        place.cell = piece.cell;
        place.picture = piece.picturePlace;
        places.push_back(place);
    }
    return places;
}

Result<PlacedPanel> placedPanel(const Book& book, PanelId panel, QDate today)
{
    const Panel* own = book.panels.find(panel);
    const Display* display = own != nullptr ? book.displays.find(own->display) : nullptr;
    if (display == nullptr) {
        return Error{
            ErrorCode::NotFound, Says::tr("The panel"), Says::tr("this book does not have it")};
    }
    std::vector<Piece> pieces;
    for (const Piece* piece : piecesOf(book, panel))
        pieces.push_back(*piece);
    const PermissionRules rules(book, *display, today);
    PanelStyle style = styleFor(rules.clear(*own));
    ClearedPanel cleared = clearedWithPlaces(rules, book, *own, pieces);
    auto text = std::make_unique<PanelMeasurer>(cleared.pieces(), style, display->language);
    engine::Request request = requestFor(cleared, style, *text);
    request.pages = 1;
    std::vector<engine::Placement> places = placementsOf(cleared.pieces(), style.grid);
    return PlacedPanel{std::move(pieces),
        std::move(cleared),
        std::move(style),
        std::move(text),
        std::move(request),
        std::move(places)};
}

std::vector<Piece> piecesAt(std::vector<Piece> pieces, const std::vector<engine::Placement>& places)
{
    std::map<std::int64_t, const engine::Placement*> byPiece;
    for (const engine::Placement& place : places)
        byPiece[place.id] = &place;
    for (Piece& piece : pieces) {
        const auto at = byPiece.find(piece.id.number());
        if (piece.pinned || at == byPiece.end())
            continue;
        piece.cell = at->second->cell;
        piece.picturePlace = at->second->picture;
    }
    return pieces;
}

} // namespace wainscot
