// A teacher's own template applied: items take its places in order, kind by kind, with the places'
// wishes. Where the whole of it makes no good page, wishes go in a fixed order: optional pieces,
// then where pieces begin, then how wide they are, then fixed places.
#pragma once

#include "layout/engine/solve.h"

namespace wainscot::engine {

// The request's items in the form's order with its wishes; items without a place come last, without
// wishes. `step` 0 = all wishes are hard, 1 = pieces begin anywhere, 2 = widths are aimed at,
// 3 = fixed places are let go as well.
[[nodiscard]] std::vector<Item> formedItems(const Form& form, const Request& request, int step);

// The best page by the form; nothing when none keeps to it. REQUIRES: request.form
[[nodiscard]] std::optional<Arrangement> arrangeByForm(
    const Request& request, TextMemo& text, std::vector<DroppedWish>& dropped);

} // namespace wainscot::engine
