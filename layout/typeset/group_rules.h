// Hairlines where one group of pieces follows another down the panel.
#pragma once

#include "core/permit/cleared.h"
#include "layout/typeset/style.h"

#include <vector>

namespace wainscot {

// Told from the cells alone, so that a panel from the book has the same lines as a fresh
// arrangement: wherever a cut through the panel (or through one of its columns) parts groups with a
// whole row free above the lower one. 0.35 mm high, 0.65 rows above the new group.
[[nodiscard]] std::vector<RectMm> groupRules(
    const std::vector<ClearedPiece>& pieces, const Grid& grid, Parting parting = Parting::Groups);

} // namespace wainscot
