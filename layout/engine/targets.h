// How large each picture should be, and how many pages the pieces ask for.
#pragma once

#include "layout/engine/leaf.h"

namespace wainscot::engine {

// The pieces of `items`, with text numbers, without targets.
[[nodiscard]] std::vector<Piece> piecesOf(const std::vector<Item>& items, TextMemo& text);

// Pages the pieces fill at comfortable sizes; at least 1.
[[nodiscard]] int pagesWanted(
    const std::vector<Piece>& pieces, const PageSpec& page, TextMemo& text);

// Which picture the others stay below.
struct Leader {
    int piece = -1; // -1 = the likeliest
    double pinnedMm2 = 0; // area of one that stands already; > 0 = it leads, none of the pieces
    double takenMm2 = 0; // room that pinned pieces take, gaps included
};

// Shares the room that the texts leave on `pages` pages among the pictures. On one page one picture
// becomes the dominant one when none is marked, and the others stay below half its size. A picture
// that is to be bigger or smaller than it was has its own bound.
void setTargets(std::vector<Piece>& pieces,
    const PageSpec& page,
    int pages,
    TextMemo& text,
    const Leader& leader = {});

// The place in `pieces` of the picture that should dominate, or of a further one by rank; -1 =
// there is none, or somebody has marked another.
[[nodiscard]] int dominantOf(const std::vector<Piece>& pieces, int rank = 0);

} // namespace wainscot::engine
