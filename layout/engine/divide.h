// How the space around pinned pieces can be divided into rectangles: by straight cuts where they
// part the pins; else by rings of four around a middle, or with pins taken as one block.
#pragma once

#include "layout/engine/arrangement.h"

#include <array>
#include <set>
#include <vector>

namespace wainscot::engine {

[[nodiscard]] bool overlap(const GridRect& a, const GridRect& b); // pages aside
[[nodiscard]] bool sameCell(const GridRect& a, const GridRect& b);
[[nodiscard]] bool contains(const GridRect& outer, const GridRect& inner);
[[nodiscard]] GridRect around(const GridRect& a, const GridRect& b); // the smallest with both

// Edges of the blocks along one axis; `across` = edges of rows.
[[nodiscard]] std::set<int> edgesOf(const std::vector<GridRect>& blocks, bool across);
// Whether a cut at a row or column goes through a block.
[[nodiscard]] bool crosses(const std::vector<GridRect>& blocks, bool across, int at);

// Whether straight cuts, each through the whole rest, can part the blocks from one another.
[[nodiscard]] bool partable(const std::vector<GridRect>& blocks);

// Blocks that overlap become one.
[[nodiscard]] std::vector<GridRect> withoutOverlaps(const std::vector<GridRect>& blocks);
// Joins blocks, the two that waste least first, until straight cuts part what is left.
[[nodiscard]] std::vector<GridRect> joinedBlocks(std::vector<GridRect> blocks);

// Four rectangles in a ring and the one in its middle, in reading order: the smallest division
// that straight cuts cannot make.
using Ring = std::array<GridRect, 5>;
// All rings of a part whose lines run along edges of blocks and cut none.
[[nodiscard]] std::vector<Ring> ringsIn(const GridRect& part, const std::vector<GridRect>& blocks);

} // namespace wainscot::engine
