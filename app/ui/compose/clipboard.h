// Pieces on the clipboard: whole for this program, plain text for every other.
#pragma once

#include <vector>

#include "core/model/book.h"
#include "core/permit/cleared.h"

class QMimeData;

namespace wainscot::ui {

// Other programs get the text that is cleared for the audience and nothing else: no pictures, no
// words that wait. The caller owns what is returned.
[[nodiscard]] QMimeData* mimeFor(const QString& folder,
    const std::vector<Piece>& pieces,
    const std::vector<ClearedPiece>& cleared);

// What was copied, as far as this book has it: a child's words and pictures come only from the same
// book. Ids, panel and order are the receiver's matter; nothing comes pinned.
[[nodiscard]] std::vector<Piece> piecesFrom(
    const QByteArray& bytes, const Book& book, const QString& folder);

} // namespace wainscot::ui
