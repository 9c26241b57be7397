#include "core/voice/participation.h"

#include <algorithm>

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

std::vector<const Display*> displaysWith(const Book& book, ChildId child)
{
    std::set<DisplayId> on;
    for (const auto& [id, piece] : book.pieces.rows()) {
        const Quote* quote = book.quotes.find(piece.quote);
        const Picture* picture = book.pictures.find(piece.picture);
        const bool seen = picture != nullptr
            && std::count(picture->people.children.begin(), picture->people.children.end(), child)
                > 0;
        const Panel* panel = book.panels.find(piece.panel);
        if (panel != nullptr && (seen || (quote != nullptr && quote->child == child)))
            on.insert(panel->display);
    }
    std::vector<const Display*> displays;
    displays.reserve(on.size());
    for (const DisplayId id : on) {
        if (const Display* display = book.displays.find(id))
            displays.push_back(display);
    }
    return displays;
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
