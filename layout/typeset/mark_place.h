// Where a mark lies on its panel.
#pragma once

#include "layout/typeset/display_list.h"

#include <optional>

namespace wainscot {

// The box a mark fills, in mm. Nothing for a run of glyphs: how far it reaches is asked of its
// font, or guessed, by who needs it.
[[nodiscard]] std::optional<RectMm> placeOf(const Mark& mark);

} // namespace wainscot
