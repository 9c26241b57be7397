// What a proposed group is called and why it was proposed, both in the children's own words.
#pragma once

#include "core/voice/compared_words.h"
#include "core/voice/grouping.h"

#include <map>
#include <vector>

namespace wainscot {

struct GroupWords {
    // The two words that most tell this group from the others, joined by a middle dot, each as most
    // children of the group said or wrote it; without such a word the answer most like the others,
    // shortened, in quotation marks.
    QString label;
    // For each answer, where the words stand that another answer of the group has too, in any of
    // their forms; everyday words are left out. Empty where the likeness was of another kind.
    std::map<QuoteId, std::vector<WordSpan>> shared;
};

// A word counts for a label when two answers of the group have it: the harmonic mean of the share
// of the group's answers that have it and the share of the answers having it that are in the group.
// In the order of `groups`. REQUIRES: every member of a group is among the answers.
[[nodiscard]] std::vector<GroupWords> wordsOfGroups(
    const std::vector<Answer>& answers, const std::vector<ProposedGroup>& groups);

} // namespace wainscot
