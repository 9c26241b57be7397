// What a teacher reads about a template: which of its wishes an arrangement dropped, and why.
#pragma once

#include "core/model/book.h"
#include "layout/engine/arrangement.h"

#include <QString>
#include <QStringList>

namespace wainscot {

// "The template "thread" is not kept: it holds 4 groups, and here are 6. The panel is arranged
// freely." `pieces` names what was left out.
[[nodiscard]] QString sentenceFor(const engine::DroppedWish& wish, const QStringList& pieces);

// Wishes for single pieces that had no effect, and pins that only a makeshift goes around: whole
// sentences with a small letter first.
[[nodiscard]] QStringList wishSentences(
    const engine::Arrangement& arrangement, const std::vector<Piece>& pieces, const Book& book);

// As in sentences.h, naming the pieces.
[[nodiscard]] QString whyNoRoom(
    const engine::Failure& failure, const std::vector<Piece>& pieces, const Book& book);

// "the next step", "Mina's words", "the photo jars.jpg": a piece within a sentence to the teacher.
[[nodiscard]] QString calledFor(const Piece& piece, const Book& book);

} // namespace wainscot
