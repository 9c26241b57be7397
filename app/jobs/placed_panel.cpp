#include "app/jobs/placed_panel.h"

#include "app/jobs/drawn_display.h"
#include "app/jobs/engine_request.h"

#include <map>

namespace wainscot {

Result<PlacedPanel> placedPanel(const Book& book, PanelId panel, QDate today)
{
    const Panel* own = book.panels.find(panel);
    const Display* display = own != nullptr ? book.displays.find(own->display) : nullptr;
    if (display == nullptr) {
        return Error{ErrorCode::NotFound,
            QStringLiteral("The panel"),
            QStringLiteral("this book does not have it")};
    }
    std::vector<Piece> pieces;
    for (const Piece* piece : piecesOf(book, panel))
        pieces.push_back(*piece);
    ClearedPanel cleared = PermissionRules(book, *display, today).clear(*own);
    PanelStyle style = styleFor(cleared);
    auto text = std::make_unique<PanelMeasurer>(cleared.pieces(), style, display->language);
    engine::Request request = requestFor(cleared, style, *text);
    request.pages = 1;
    std::vector<engine::Placement> places;
    for (const ClearedPiece& piece : cleared.pieces()) {
        if (piece.cell.isEmpty())
            continue;
        engine::Placement place;
        place.id = piece.id.number();
        place.at = gridRectFor(style.grid, piece.cell);
        place.cell = piece.cell;
        place.picture = piece.picturePlace;
        places.push_back(place);
    }
    return PlacedPanel{std::move(pieces),
        std::move(cleared),
        std::move(style),
        std::move(text),
        std::move(request),
        std::move(places)};
}

std::vector<Piece> piecesAt(std::vector<Piece> pieces, const engine::Arrangement& arrangement)
{
    std::map<std::int64_t, const engine::Placement*> places;
    for (const engine::Placement& place : arrangement.items)
        places[place.id] = &place;
    for (Piece& piece : pieces) {
        const auto at = places.find(piece.id.number());
        if (piece.pinned || at == places.end())
            continue;
        piece.cell = at->second->cell;
        piece.picturePlace = at->second->picture;
    }
    return pieces;
}

} // namespace wainscot
