// A pinned piece in a place that is no cell of the grid.
#pragma once

#include "layout/engine/leaf.h"
#include "layout/engine/pages.h"

namespace wainscot::engine {

// The piece exactly in its pin's place: a picture fills what its caption leaves, a sample is whole.
[[nodiscard]] Placement placeExactly(
    const Piece& piece, const Pin& pin, const PageSpec& page, TextMemo& text);

} // namespace wainscot::engine
