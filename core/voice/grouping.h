// Proposed groups of answers for a class to talk about. Proposals only: what an adult has made by
// hand stays, and an answer that is like no other stays on its own.
#pragma once

#include "core/model/meeting.h"
#include "core/voice/joining.h"
#include "core/voice/word_likeness.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace wainscot {

// The first two were chosen on adults' texts, so they are a start, not a truth.
struct GroupingWish {
    double leastLikeness = 0.08; // 0..1; two sets less alike on average are not put together
    std::size_t mostAnswers = 8; // a group one circle can talk about; 1 or more
    // Fewer or more: the same steps of putting together, stopped or gone on with until there are so
    // many groups, or as near to it as can be. None = stopped at the least likeness.
    std::optional<std::size_t> groups;
};

inline constexpr std::size_t leastAnswersInGroup = 3;

// Three answers or more that are alike, or two and more that are held together by hand.
struct ProposedGroup {
    std::vector<QuoteId> answers; // by id
    friend bool operator==(const ProposedGroup&, const ProposedGroup&) = default;
};

struct Proposal {
    std::vector<ProposedGroup> groups; // by their first answer
    std::vector<QuoteId> onTheirOwn; // by id
    friend bool operator==(const Proposal&, const Proposal&) = default;
};

// The order of the answers does not matter, nor that of the pairs. Answers in `madeByHand` are left
// where they are and are not proposed again; of the others those held together are in one group,
// those held apart never are. Ids must differ from one another.
[[nodiscard]] Proposal proposeGroups(std::vector<Answer> answers,
    const std::vector<ProposedGroup>& madeByHand,
    const std::vector<KeptPair>& pairs,
    const GroupingWish& wish);

// The pairs by the places of their answers; those of other answers are left out.
[[nodiscard]] HeldPairs heldPairs(
    const std::vector<KeptPair>& pairs, const std::vector<Answer>& answers);

} // namespace wainscot
