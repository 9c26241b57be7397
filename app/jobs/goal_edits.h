// Goals of the school's or the teacher's own list, and what shows them, as edits made from the
// book. `label` is what undo would undo.
#pragma once

#include "core/edit/edit.h"
#include "core/model/book.h"

#include <vector>

namespace wainscot {

[[nodiscard]] std::vector<const Goal*> goalsOf(const Book& book); // in the order of the list

// At the end of the list; empty for an empty text or one that is in it already.
[[nodiscard]] Edit addGoalEdit(
    const Book& book, const QString& text, const QString& source, const QString& label);
// An empty text takes the goal out of the list.
[[nodiscard]] Edit goalTextEdit(const Book& book,
    GoalId goal,
    const QString& text,
    const QString& source,
    const QString& label);
// Out of the list, and away from all that showed it.
[[nodiscard]] Edit removeGoalEdit(const Book& book, GoalId goal, const QString& label);

[[nodiscard]] Edit quoteShowsGoalEdit(
    const Book& book, QuoteId quote, GoalId goal, bool shows, const QString& label);
[[nodiscard]] Edit panelShowsGoalEdit(
    const Book& book, PanelId panel, GoalId goal, bool shows, const QString& label);

// What shows a goal, over all experiences.
struct ShowsGoal {
    std::vector<QuoteId> quotes;
    std::vector<PanelId> panels;
};
[[nodiscard]] ShowsGoal whatShows(const Book& book, GoalId goal);

} // namespace wainscot
