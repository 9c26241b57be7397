// A good choice soon, so that the search can leave most branches out. Private to core/voice.
#pragma once

#include "core/voice/cover_bound.h"

#include <optional>

namespace wainscot::cover {

struct Choice {
    std::vector<int> items; // ascending
    Amount value = 0;
};

// Keeps to what the node has decided; covers rows by gain for the area, fills the room by value for
// the area, then swaps one for one while that is worth more. Nothing when a row stays uncovered.
// `start`: items to begin with, as far as they fit.
[[nodiscard]] std::optional<Choice> greedyChoice(
    const Model& model, const Node& node, const Prices& prices, const std::vector<int>& start = {});

} // namespace wainscot::cover
