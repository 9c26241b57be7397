// "Bigger" and "smaller": what a teacher asks of single pieces, against the size they would have.
#pragma once

#include "layout/engine/arrangement.h"

#include <functional>

namespace wainscot::engine {

// Arranges without the sizes asked for, then with them as areas to aim at. What had no effect is
// said in Arrangement::unmetWishes; a wish that would leave no page is let go. Without such wishes
// it arranges once.
[[nodiscard]] Outcome arrangeWithSizes(
    const Request& request, const std::function<Outcome(const Request&)>& arrangeOnce);

} // namespace wainscot::engine
