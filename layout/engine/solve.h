// One request solved with given column systems: the engine without templates.
#pragma once

#include "layout/engine/columns.h"
#include "layout/engine/leaf.h"

namespace wainscot::engine {

// The cheapest arrangement over the column systems; earlier systems win ties.
[[nodiscard]] Outcome solve(
    const Request& request, const std::vector<ColumnSystem>& systems, TextMemo& text);

} // namespace wainscot::engine
