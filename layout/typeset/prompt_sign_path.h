// The small drawing beside a question, for those who do not read.
#pragma once

#include "core/model/prompt.h"

#include <QPainterPath>

namespace wainscot {

inline constexpr double kSignField = 40; // the lines stand on a field of 40 x 40
inline constexpr double kSignLine = 2.4; // how wide they are drawn, round at ends and joins

// Open lines, to be stroked; empty for no sign.
[[nodiscard]] QPainterPath promptSignPath(PromptSign sign);

} // namespace wainscot
