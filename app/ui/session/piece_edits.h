// The edits of Compose, made from the book without touching it. Labels are what undo would undo.
#pragma once

#include <set>

#include "core/edit/edit.h"
#include "core/model/book.h"

namespace wainscot::ui {

// The piece as given replaces the one with its id.
[[nodiscard]] Edit replacePiece(
    const Book& book, const Piece& piece, const QString& label, int gesture = 0);
[[nodiscard]] Edit replacePieces(
    const Book& book, const std::vector<Piece>& pieces, const QString& label, int gesture = 0);
[[nodiscard]] Edit removePiece(const Book& book, PieceId piece, const QString& label);

// A new piece at the end of the panel's reading order. `added` receives its id.
[[nodiscard]] Edit addPiece(const Book& book, Piece piece, const QString& label, PieceId& added);

// Another palette or pairing, by its name; a piece that takes the display's own keeps none.
[[nodiscard]] Edit paletteEdit(const Book& book, DisplayId display, const QString& name);
[[nodiscard]] Edit paletteEdit(const Book& book, PieceId piece, const QString& name);
[[nodiscard]] Edit pairingEdit(const Book& book, DisplayId display, const QString& name);
[[nodiscard]] Edit pairingEdit(const Book& book, PieceId piece, const QString& name);

// An empty panel after the others of the display.
[[nodiscard]] Edit addPanel(
    const Book& book, DisplayId display, const QString& label, PanelId& added);

// "Photo", "A child's words", ... for headings and labels.
[[nodiscard]] QString wordFor(PieceKind kind);
// "Photo: Wren's wet hand"; for words the child's name: "Wren: My wet hand went off the wall."
[[nodiscard]] QString nameFor(const Book& book, const Piece& piece);
// Whole words of a longer text, at most `letters` of it, with an ellipsis for the rest.
[[nodiscard]] QString beginningOf(const QString& text, int letters);
// Every word of the children's names, folded: right in any text.
[[nodiscard]] std::set<QString> wordsOfNames(const Book& book);
// What one writes in a piece: an adult's text, a caption, or what is shown of a child's words.
[[nodiscard]] QString writtenText(const Book& book, const Piece& piece);
// A translation is not the child's words: it is changed where it was written.
[[nodiscard]] bool isWritable(const Book& book, const Piece& piece);
// The piece with what somebody typed into it. Of a child's words it keeps the child's own in their
// order, with an ellipsis for what is left out and brackets around what an adult put in.
[[nodiscard]] Piece asWritten(const Book& book, const Piece& piece, const QString& typed);

} // namespace wainscot::ui
