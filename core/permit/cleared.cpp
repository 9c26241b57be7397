#include "core/permit/cleared.h"

#include "core/permit/piece_clearing.h"

#include <algorithm>

namespace wainscot {

namespace {

QString titleOf(const std::vector<ClearedPiece>& pieces)
{
    for (const ClearedPiece& piece : pieces) {
        if (piece.kind == PieceKind::Title && !piece.text.trimmed().isEmpty())
            return piece.text.simplified();
    }
    return {};
}

} // namespace

ClearedPanel PermissionRules::clear(const Panel& panel) const
{
    std::vector<Piece> pieces;
    for (const Piece* piece : piecesOf(m_book, panel.id))
        pieces.push_back(*piece);
    return clear(panel, std::move(pieces));
}

ClearedPanel PermissionRules::clear(const Panel& panel, std::vector<Piece> pieces) const
{
    PermissionRules rules = *this;
    std::erase_if(pieces, [this](const Piece& piece) {
        const Picture* picture = m_book.pictures.find(piece.picture);
        return picture != nullptr && picture->display.isValid();
    });
    for (const Piece& piece : pieces)
        rules.seePieceOf(piece);
    std::stable_sort(pieces.begin(), pieces.end(), [](const Piece& a, const Piece& b) {
        return a.order < b.order;
    });

    ClearedPanel cleared;
    PieceClearing clearing(rules, cleared.m_leftOut);
    for (const Piece& piece : pieces) {
        if (auto shown = clearing.clear(piece))
            cleared.m_pieces.push_back(std::move(*shown));
    }
    cleared.m_display = m_display;
    cleared.m_display.name = rules.withPermittedNames(m_display.name, false);
    cleared.m_id = panel.id;
    cleared.m_number = panel.number;
    cleared.m_title = titleOf(cleared.m_pieces);
    if (cleared.m_title.isEmpty()) {
        const Experience* happened = m_book.experiences.find(m_display.experience);
        cleared.m_title =
            happened ? rules.withPermittedNames(happened->title, false) : cleared.m_display.name;
    }
    return cleared;
}

} // namespace wainscot
