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

// "the next step", "Mina's words", "the photo jars.jpg": a piece within a sentence to the teacher.
[[nodiscard]] QString calledFor(const Piece& piece, const Book& book);

} // namespace wainscot
