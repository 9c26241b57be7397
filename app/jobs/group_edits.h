// The edits of groups of answers, made from the book without touching it. `label` is what undo
// would undo. A group that a hand has named or split is kept by hand from then on, so no proposal
// moves it; single answers that a hand has moved are held by pairs (answers_in_hand.h).
#pragma once

#include "app/jobs/listen_job.h"
#include "core/edit/edit.h"

#include <optional>
#include <vector>

namespace wainscot {

// By their order, then by id.
[[nodiscard]] std::vector<const Group*> groupsOf(const Book& book, ExperienceId experience);
// The answers of an experience that are in no group, by id.
[[nodiscard]] std::vector<QuoteId> onTheirOwn(const Book& book, const Experience& experience);
// The group an answer is in; null = none.
[[nodiscard]] const Group* groupWith(const Book& book, QuoteId answer);
// The words each group shares, in the order of groupsOf.
[[nodiscard]] std::vector<GroupWords> wordsOfGroupsIn(
    const Book& book, const Experience& experience);

// Proposes groups for all answers that are in no group kept by hand, as the pairs allow. `proposed`
// wishes for so many; none = as alike as is usual. A group that goes on from one before keeps its
// id and place, and its label when most of it was there before.
[[nodiscard]] Edit proposeGroupsEdit(const Book& book,
    const Experience& experience,
    const QString& label,
    std::optional<std::size_t> proposed = {});
// How many of the groups are proposed ones.
[[nodiscard]] std::size_t proposedCount(const Book& book, ExperienceId experience);
// How many answers change their company between two books.
[[nodiscard]] int answersMoved(const Book& before, const Book& after, const Experience& experience);

[[nodiscard]] Edit renameGroupEdit(
    const Book& book, GroupId group, const QString& name, const QString& label);
// In two, where the answers are least alike. Empty for a group of less than two.
[[nodiscard]] Edit splitGroupEdit(const Book& book, GroupId group, const QString& label);
[[nodiscard]] Edit keepGroupEdit(
    const Book& book, GroupId group, bool byHand, const QString& label);
// Puts answers that are on their own with the group most like them, if one is alike enough; no
// other answer moves. Empty when none is.
[[nodiscard]] Edit placeNewcomersEdit(
    const Book& book, const Experience& experience, const QString& label);
// The same for these answers alone, of whatever experience, as a part of `gesture`: what was just
// taken down joins its like, and goes again with one step of undo.
[[nodiscard]] Edit joinLikeOnesEdit(
    const Book& book, const std::vector<QuoteId>& taken, const QString& label, int gesture);

} // namespace wainscot
