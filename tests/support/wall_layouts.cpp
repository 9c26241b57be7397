#include "tests/support/wall_layouts.h"

#include "app/jobs/drawn_display.h"
#include "app/jobs/engine_request.h"

#include <map>

namespace wainscot::walls {

Sheet::Sheet(const Document& document)
    : m_document(document)
{
    const ClearedPanel panel = cleared(document, document.pieces);
    m_style = styleFor(panel);
    m_text = std::make_unique<PanelMeasurer>(panel.pieces(), m_style, document.display.language);
    m_request = requestFor(panel, m_style, *m_text);
    m_request.pages.reset();
}

ClearedPanel Sheet::page(const std::vector<Place>& places) const
{
    std::map<PieceId, const Place*> at;
    for (const Place& place : places)
        at[place.piece] = &place;
    std::vector<Piece> pieces;
    for (Piece piece : m_document.pieces) {
        const auto found = at.find(piece.id);
        if (found == at.end())
            continue;
        piece.cell = found->second->cell;
        piece.picturePlace = found->second->picture;
        pieces.push_back(std::move(piece));
    }
    return cleared(m_document, std::move(pieces));
}

Layout engineLayout(const Sheet& sheet)
{
    Layout out{QStringLiteral("Wainscot"), {}, true};
    const engine::Outcome outcome = engine::arrange(sheet.request(), sheet.text());
    const auto* arrangement = std::get_if<engine::Arrangement>(&outcome);
    if (arrangement == nullptr)
        return out;
    out.pages.resize(std::size_t(arrangement->pages));
    for (const engine::Placement& one : arrangement->items)
        out.pages[std::size_t(one.at.page)].push_back(
            {PieceId(one.id), sheet.request().page.cell(one.at), one.cell, one.picture});
    return out;
}

} // namespace wainscot::walls
