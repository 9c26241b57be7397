// Several cells brought into line or spread evenly. The first cell is the one the others come to.
#pragma once

#include <Qt>

#include <vector>

#include "core/base/geometry.h"

namespace wainscot::ui {

enum class Line { Left, Centre, Right, Top, Middle, Foot };

// The same cells in the same order, in their own sizes.
[[nodiscard]] std::vector<RectMm> aligned(std::vector<RectMm> cells, Line line);

// The outermost two stay; between neighbours there is the same room. Fewer than three stay as they
// are; where there is too little room they overlap evenly.
[[nodiscard]] std::vector<RectMm> spread(std::vector<RectMm> cells, Qt::Orientation along);

} // namespace wainscot::ui
