// The edits of whole panels of a display, made from the book without touching it.
#pragma once

#include "core/edit/edit.h"
#include "core/model/book.h"

namespace wainscot::ui {

// The same pieces in the same places on a new panel right after it. `added` receives its id.
[[nodiscard]] Edit duplicatePanel(
    const Book& book, PanelId panel, const QString& label, PanelId& added);
// To another place in the display, 1-based; the others close up.
[[nodiscard]] Edit movePanel(const Book& book, PanelId panel, int number, const QString& label);
// With its pieces; what they show stays in the book.
[[nodiscard]] Edit removePanel(const Book& book, PanelId panel, const QString& label);

// The piece, what it is kept with and all that is read after it begin a new panel right after this
// one, without places there yet. Empty when nothing would stay behind. `added` receives the panel.
[[nodiscard]] Edit startPanelAt(
    const Book& book, PieceId piece, const QString& label, PanelId& added);
[[nodiscard]] Edit lockPanel(const Book& book, PanelId panel, bool locked, const QString& label);
// Pieces of one display are kept in one block, or no longer.
[[nodiscard]] Edit keepTogether(
    const Book& book, const std::vector<PieceId>& pieces, bool together, const QString& label);

// Pieces carried to the end of another panel of the same display, without a place there yet.
[[nodiscard]] Edit carryPieces(
    const Book& book, const std::vector<Piece>& placed, PanelId to, const QString& label);

// A display, its panels and pieces as they were in `then`, as far as what they show is still there.
[[nodiscard]] Edit displayAsIn(
    const Book& book, const Book& then, DisplayId display, const QString& label);

// The piece whose words are the panel's title; null when it has none.
[[nodiscard]] const Piece* titleOf(const Book& book, PanelId panel);

} // namespace wainscot::ui
