// Answers moved between groups by hand, and the pairs that hold them where they were put, as edits
// made from the book. `label` is what undo would undo. A hand's last word counts: a pair that would
// be against it goes in the same step, so that the groups and the pairs of a book always agree.
#pragma once

#include "core/edit/edit.h"
#include "core/model/book.h"

#include <vector>

namespace wainscot {

// By id. `pairsWith`: those that hold this answer.
[[nodiscard]] std::vector<KeptPair> keptPairsOf(const Book& book);
[[nodiscard]] std::vector<KeptPair> pairsWith(const Book& book, QuoteId answer);
// Answers of an experience that a hand has put somewhere.
[[nodiscard]] std::size_t answersHeld(const Book& book, ExperienceId experience);

// Into a group, or on its own with an invalid id. A group left empty goes. From then on the answer
// is held together with `beside`, or with the answer there most like it, and apart from those it
// was with; the groups stay proposed, or kept, as they were.
[[nodiscard]] Edit moveAnswerEdit(
    const Book& book, QuoteId answer, GroupId into, const QString& label, QuoteId beside = {});
// A new group of one answer, at the end, kept by hand. `added` receives its id.
[[nodiscard]] Edit newGroupEdit(
    const Book& book, QuoteId answer, const QString& label, GroupId& added);

// Two answers in one group from now on: the first goes to the other's group, or where only the
// first is in one the other comes; two on their own are a new group.
[[nodiscard]] Edit keepTogetherEdit(
    const Book& book, QuoteId answer, QuoteId other, const QString& label);
// Never in one group from now on: where they are, the first goes on its own.
[[nodiscard]] Edit keepApartEdit(
    const Book& book, QuoteId answer, QuoteId other, const QString& label);
// Nothing moves; proposing again is free to.
[[nodiscard]] Edit letGoEdit(
    const Book& book, const std::vector<KeptPairId>& pairs, const QString& label);

} // namespace wainscot
