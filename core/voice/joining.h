// Puts the answers most alike together, step by step.
#pragma once

#include "core/voice/likeness_table.h"

#include <cstddef>
#include <utility>
#include <vector>

namespace wainscot {

// Two sets of answers put together; named by their lowest member.
struct Joining {
    std::size_t kept = 0;
    std::size_t joined = 0;
    double likeness = 0; // mean over all pairs between the two
    bool held = false; // by hand, whatever the likeness
    friend bool operator==(const Joining&, const Joining&) = default;
};

// Answers, by their places, that an adult holds together or apart.
struct HeldPairs {
    std::vector<std::pair<std::size_t, std::size_t>> together;
    std::vector<std::pair<std::size_t, std::size_t>> apart;
};

// Average linkage: again and again the two sets most alike on average, ties to the lowest members,
// never past `mostAnswers` in one set and never below `leastLikeness`. In the order they were made;
// with a size cap the likeness may rise again on the way. What is held together is joined first, by
// its places, past both limits; no set ever has two answers that are held apart. Where both cannot
// be, apart counts.
[[nodiscard]] std::vector<Joining> joinings(const LikenessTable& likeness,
    double leastLikeness,
    std::size_t mostAnswers,
    const HeldPairs& held = {});

// The sets after the first `steps` joinings of `answers` answers; members and sets in order, sets
// by their lowest member.
[[nodiscard]] std::vector<std::vector<std::size_t>> setsAfter(
    const std::vector<Joining>& made, std::size_t steps, std::size_t answers);

} // namespace wainscot
