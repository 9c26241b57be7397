#include "core/voice/participation.h"

namespace wainscot {

std::set<ChildId> voicesIn(const Book& book, const Piece& piece)
{
    std::set<ChildId> voices;
    if (const Quote* quote = book.quotes.find(piece.quote))
        voices.insert(quote->child);
    const Picture* picture = book.pictures.find(piece.picture);
    if (picture != nullptr && picture->kind == PictureKind::Work)
        voices.insert(picture->people.children.begin(), picture->people.children.end());
    return voices;
}

std::map<ChildId, int> wallsOfChildren(const Book& book, DisplayId except)
{
    std::map<DisplayId, std::set<ChildId>> heardOn;
    for (const auto& [id, piece] : book.pieces.rows()) {
        const Panel* panel = book.panels.find(piece.panel);
        if (panel != nullptr && panel->display != except)
            heardOn[panel->display].merge(voicesIn(book, piece));
    }
    std::map<ChildId, int> walls;
    for (const auto& [id, child] : book.children.rows())
        walls[id] = 0;
    for (const auto& [display, children] : heardOn) {
        for (const ChildId child : children)
            ++walls[child];
    }
    return walls;
}

} // namespace wainscot
