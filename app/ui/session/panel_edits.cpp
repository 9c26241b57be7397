#include "app/ui/session/panel_edits.h"

#include <algorithm>
#include <set>

namespace wainscot::ui {

namespace {

// Numbers 1, 2, 3 ... in the order given.
void renumber(EditBuilder& builder, const std::vector<Panel>& panels)
{
    int number = 0;
    for (Panel panel : panels) {
        panel.number = ++number;
        builder.put(panel);
    }
}

std::vector<Panel> copiesOf(const Book& book, DisplayId display)
{
    std::vector<Panel> panels;
    for (const Panel* panel : panelsOf(book, display))
        panels.push_back(*panel);
    return panels;
}

auto placeOf(std::vector<Panel>& panels, PanelId id)
{
    return std::find_if(
        panels.begin(), panels.end(), [id](const Panel& panel) { return panel.id == id; });
}

bool stillShows(const Book& book, const Piece& piece)
{
    return (!piece.quote.isValid() || book.quotes.contains(piece.quote))
        && (!piece.picture.isValid() || book.pictures.contains(piece.picture));
}

} // namespace

Edit duplicatePanel(const Book& book, PanelId panel, const QString& label, PanelId& added)
{
    EditBuilder builder(book, label);
    const Panel* own = book.panels.find(panel);
    if (own == nullptr)
        return builder.take();
    std::vector<Panel> panels = copiesOf(book, own->display);
    Panel copy = *own;
    copy.id = builder.newId<Panel>();
    added = copy.id;
    panels.insert(placeOf(panels, panel) + 1, copy);
    renumber(builder, panels);
    for (const Piece* piece : piecesOf(book, panel)) {
        Piece twin = *piece;
        twin.id = builder.newId<Piece>();
        twin.panel = copy.id;
        builder.put(twin);
    }
    return builder.take();
}

Edit movePanel(const Book& book, PanelId panel, int number, const QString& label)
{
    EditBuilder builder(book, label);
    const Panel* own = book.panels.find(panel);
    if (own == nullptr)
        return builder.take();
    std::vector<Panel> panels = copiesOf(book, own->display);
    const Panel moved = *own;
    panels.erase(placeOf(panels, panel));
    const auto at = std::clamp<std::ptrdiff_t>(number - 1, 0, std::ptrdiff_t(panels.size()));
    panels.insert(panels.begin() + at, moved);
    renumber(builder, panels);
    return builder.take();
}

Edit removePanel(const Book& book, PanelId panel, const QString& label)
{
    EditBuilder builder(book, label);
    const Panel* own = book.panels.find(panel);
    if (own == nullptr)
        return builder.take();
    for (const Piece* piece : piecesOf(book, panel))
        builder.remove<Piece>(piece->id);
    std::vector<Panel> panels = copiesOf(book, own->display);
    panels.erase(placeOf(panels, panel));
    builder.remove<Panel>(panel);
    renumber(builder, panels);
    return builder.take();
}

Edit lockPanel(const Book& book, PanelId panel, bool locked, const QString& label)
{
    EditBuilder builder(book, label);
    if (const Panel* own = book.panels.find(panel)) {
        Panel changed = *own;
        changed.locked = locked;
        builder.put(changed);
    }
    return builder.take();
}

Edit keepTogether(
    const Book& book, const std::vector<PieceId>& pieces, bool together, const QString& label)
{
    EditBuilder builder(book, label);
    int number = 0;
    for (const auto& [id, piece] : book.pieces.rows())
        number = std::max(number, piece.together);
    for (const PieceId id : pieces) {
        if (const Piece* own = book.pieces.find(id)) {
            Piece changed = *own;
            changed.together = together ? number + 1 : 0;
            builder.put(changed);
        }
    }
    return builder.take();
}

Edit startPanelAt(const Book& book, PieceId piece, const QString& label, PanelId& added)
{
    EditBuilder builder(book, label);
    const Piece* first = book.pieces.find(piece);
    const Panel* own = first != nullptr ? book.panels.find(first->panel) : nullptr;
    if (own == nullptr)
        return builder.take();
    const std::vector<const Piece*> pieces = piecesOf(book, own->id);
    const auto isWith = [&](const Piece* one) {
        return one->id == piece || (first->group > 0 && one->group == first->group)
            || (first->together > 0 && one->together == first->together);
    };
    const auto from = std::find_if(pieces.begin(), pieces.end(), isWith);
    if (from == pieces.begin())
        return builder.take();
    std::vector<Panel> panels = copiesOf(book, own->display);
    Panel next;
    next.id = builder.newId<Panel>();
    next.display = own->display;
    added = next.id;
    panels.insert(placeOf(panels, own->id) + 1, next);
    renumber(builder, panels);
    for (auto at = from; at != pieces.end(); ++at) {
        Piece moved = **at;
        moved.panel = next.id;
        moved.cell = {};
        moved.picturePlace = {};
        moved.pinned = false;
        moved.startsPanel = at == from;
        builder.put(moved);
    }
    return builder.take();
}

Edit carryPieces(
    const Book& book, const std::vector<Piece>& placed, PanelId to, const QString& label)
{
    EditBuilder builder(book, label);
    int last = 0;
    for (const Piece* other : piecesOf(book, to))
        last = std::max(last, other->order);
    for (Piece piece : placed) {
        piece.panel = to;
        piece.order = ++last;
        piece.group = 0; // what it stood together with stays behind
        builder.put(piece);
    }
    return builder.take();
}

Edit displayAsIn(const Book& book, const Book& then, DisplayId display, const QString& label)
{
    EditBuilder builder(book, label);
    if (const Display* before = then.displays.find(display))
        builder.put(*before);
    std::set<PanelId> panels;
    std::set<PieceId> pieces;
    for (const Panel* panel : panelsOf(then, display)) {
        builder.put(*panel);
        panels.insert(panel->id);
        for (const Piece* piece : piecesOf(then, panel->id)) {
            if (!stillShows(book, *piece))
                continue;
            builder.put(*piece);
            pieces.insert(piece->id);
        }
    }
    for (const Panel* panel : panelsOf(book, display)) {
        for (const Piece* piece : piecesOf(book, panel->id)) {
            if (pieces.count(piece->id) == 0)
                builder.remove<Piece>(piece->id);
        }
        if (panels.count(panel->id) == 0)
            builder.remove<Panel>(panel->id);
    }
    return builder.take();
}

const Piece* titleOf(const Book& book, PanelId panel)
{
    for (const Piece* piece : piecesOf(book, panel)) {
        if (piece->kind == PieceKind::Title)
            return piece;
    }
    return nullptr;
}

} // namespace wainscot::ui
