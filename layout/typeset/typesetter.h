// From a cleared panel to what is drawn: pieces set in their cells, with the structure behind them.
#pragma once

#include "core/permit/cleared.h"
#include "layout/typeset/display_list.h"
#include "layout/typeset/style.h"

namespace wainscot {

// Everything on the panel, laid out once. Pieces without a cell are left out. Text that does not
// fit its cell runs out of it at the foot; it is never shrunk or cut.
//
// REQUIRES: played in the thread that made it. Qt's font engines belong to a thread and end with
// it.
[[nodiscard]] DisplayList typeset(const ClearedPanel& panel, const PanelStyle& style);

// Step of the type scale for a title in a cell: the largest of 7, 6, 5 (4 on A3 and smaller) that
// sets in at most three lines without breaking a word and keeps 1.5 rows free below. The style's
// own step counts as asked for: it needs no more than its three lines. The smallest if none does.
[[nodiscard]] int titleStep(const ClearedPiece& title, const PanelStyle& style);

} // namespace wainscot
