// The sheet for the adult who writes down what the children say: all of them, a box for each
// question.
#pragma once

#include "layout/typeset/answer_sheet.h"

namespace wainscot {

// On paper laid across, as many pages as the class needs; `paper` upright.
[[nodiscard]] std::vector<DisplayList> scribeSheets(const ClearedSheets& sheets, SizeMm paper);

// What a sheet belongs to: "Where does the puddle go?  ·  2 November 2026".
[[nodiscard]] QString aboutSheets(const ClearedSheets& sheets);

} // namespace wainscot
