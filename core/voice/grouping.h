// Proposed groups of answers for a class to talk about. Proposals only: what an adult has made by
// hand stays, and an answer that is like no other stays on its own.
#pragma once

#include "core/model/ids.h"
#include "core/voice/word_likeness.h"

#include <QString>

#include <cstddef>
#include <vector>

namespace wainscot {

struct Answer {
    QuoteId id;
    QString words;
};

// Both were chosen on adults' texts, so they are a start, not a truth.
struct GroupingWish {
    double leastLikeness = 0.10; // 0..1; higher makes more and smaller groups
    std::size_t mostAnswers = 8; // a group one circle can talk about; 1 or more
};

// Two sets of answers put together; named by their lowest member.
struct Joining {
    std::size_t kept;
    std::size_t joined;
    double likeness; // mean over all pairs between the two
};

// Average linkage: again and again the two sets most alike on average, ties to the lowest members,
// never past the wished size and never below the wished likeness. In the order they were made.
[[nodiscard]] std::vector<Joining> joinings(
    const LikenessTable& likeness, const GroupingWish& wish);

struct ProposedGroup {
    std::vector<QuoteId> answers; // by id
    friend bool operator==(const ProposedGroup&, const ProposedGroup&) = default;
};

struct Proposal {
    std::vector<ProposedGroup> groups; // three answers or more, by their first
    std::vector<QuoteId> onTheirOwn; // by id
    friend bool operator==(const Proposal&, const Proposal&) = default;
};

// The order of the answers does not matter. Answers in `madeByHand` are left where they are and are
// not proposed again. Ids must differ from one another.
[[nodiscard]] Proposal proposeGroups(std::vector<Answer> answers,
    const std::vector<ProposedGroup>& madeByHand,
    const GroupingWish& wish);

} // namespace wainscot
