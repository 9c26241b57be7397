// The best choice, proven: depth-first branch and bound over the relaxation. Private to core/voice.
#pragma once

#include "core/voice/cover_greedy.h"

#include <atomic>

namespace wainscot::cover {

struct Limits {
    Amount nodes = 200'000;
    const std::atomic<bool>* cancel = nullptr;
    // Give up, unproven, when the work at the first node has brought no choice yet: rooms that are
    // too small are then told apart by a search of their own.
    bool onlyIfFoundSoon = false;
};

struct Answer {
    std::optional<Choice> best; // nothing: there is none, or none was found before the limit
    Amount bound = 0; // no choice is worth more
    bool proven = false; // best.value == bound, or proven that there is none
    bool cancelled = false;
    Amount nodes = 0;
};

// `start`: items of a choice known to keep all conditions; may be empty.
[[nodiscard]] Answer search(
    const Model& model, const Limits& limits, const std::vector<int>& start = {});

} // namespace wainscot::cover
