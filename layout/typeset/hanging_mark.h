// The mark that opens a child's words hangs outside the edge of the text.
#pragma once

#include "layout/typeset/text_block.h"

namespace wainscot {

// 0.06 em beside the edge the lines have at `place`; a mark that stands high has its top on the cap
// line, others stay where their face has them. `cap`: capital height of the words.
[[nodiscard]] TextBlock::Drawn hangingMark(
    const TextBlock& mark, const QString& voiceFamily, Mm cap, TextBlock::Place place);

} // namespace wainscot
