// What becomes of groups when answers come in, or when groups are proposed once more.
#pragma once

#include "core/voice/grouping.h"

#include <optional>
#include <vector>

namespace wainscot {

// Where an answer that is in no group belongs by its words: the group most alike on average to what
// was in it, if at least the wished likeness; none = on its own. One held together with an answer
// of a group goes there, one held apart from an answer of it never does. Nothing else moves,
// newcomers do not draw one another along, and a full group takes one more. Answers by id; groups
// by their place in `groups`. REQUIRES: every member of a group is among the answers.
struct Newcomer {
    QuoteId answer;
    std::optional<std::size_t> group;
    friend bool operator==(const Newcomer&, const Newcomer&) = default;
};
[[nodiscard]] std::vector<Newcomer> placeNewcomers(std::vector<Answer> answers,
    const std::vector<ProposedGroup>& groups,
    const std::vector<KeptPair>& pairs,
    const GroupingWish& wish);

// For each new group the old one it goes on from, so that its name and place last: pairs with the
// most answers in common first, each old group once; none = a new beginning.
[[nodiscard]] std::vector<std::optional<std::size_t>> goesOnFrom(
    const std::vector<ProposedGroup>& newGroups, const std::vector<ProposedGroup>& oldGroups);

} // namespace wainscot
