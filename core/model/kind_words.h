// What a piece is called in a sentence.
#pragma once

#include "core/model/display.h"

namespace wainscot {

// "the photo", "the next step": with its article, which languages choose by the word.
[[nodiscard]] QString inSentence(PieceKind kind);

} // namespace wainscot
