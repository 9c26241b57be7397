// How large each picture should be, and how many pages the pieces ask for.
#pragma once

#include "layout/engine/leaf.h"

namespace wainscot::engine {

// The pieces of `items`, with text numbers, without targets.
[[nodiscard]] std::vector<Piece> piecesOf(const std::vector<Item>& items, TextMemo& text);

// Pages the pieces fill at comfortable sizes; at least 1.
[[nodiscard]] int pagesWanted(
    const std::vector<Piece>& pieces, const PageSpec& page, TextMemo& text);

// Shares the room that the texts leave on `pages` pages among the pictures. On one page one picture
// becomes the dominant one when none is marked, and the others stay below half its size.
// `leader`: the one that dominates; -1 = the likeliest.
void setTargets(
    std::vector<Piece>& pieces, const PageSpec& page, int pages, TextMemo& text, int leader = -1);

// The place in `pieces` of the picture that should dominate, or of a further one by rank; -1 =
// there is none, or somebody has marked another.
[[nodiscard]] int dominantOf(const std::vector<Piece>& pieces, int rank = 0);

} // namespace wainscot::engine
