// One thing on a panel as a picture of its own.
#pragma once

#include "layout/typeset/display_list.h"

namespace wainscot {

// What a list draws of one piece, on paper that holds it with `air` on all sides. Of no size when
// nothing is drawn of it. Its structure is not kept: a picture has none.
[[nodiscard]] DisplayList pieceAlone(const DisplayList& list, PieceId piece, Mm air);

} // namespace wainscot
