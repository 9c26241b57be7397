#include "app/jobs/goal_edits.h"

#include <algorithm>

namespace wainscot {

namespace {

bool has(const std::vector<GoalId>& goals, GoalId goal)
{
    return std::find(goals.begin(), goals.end(), goal) != goals.end();
}

void setShows(std::vector<GoalId>& goals, GoalId goal, bool shows)
{
    const bool shown = has(goals, goal);
    if (shows && !shown)
        goals.push_back(goal);
    else if (!shows && shown)
        std::erase(goals, goal);
}

} // namespace

std::vector<const Goal*> goalsOf(const Book& book)
{
    std::vector<const Goal*> goals;
    goals.reserve(book.goals.size());
    for (const auto& [id, goal] : book.goals.rows())
        goals.push_back(&goal);
    std::stable_sort(goals.begin(), goals.end(), [](const Goal* a, const Goal* b) {
        return a->order < b->order;
    });
    return goals;
}

Edit addGoalEdit(const Book& book, const QString& text, const QString& source, const QString& label)
{
    EditBuilder edit(book, label);
    Goal goal;
    goal.text = text.simplified();
    goal.source = source.simplified();
    goal.order = 1;
    bool known = goal.text.isEmpty();
    for (const auto& [id, other] : book.goals.rows()) {
        known = known || other.text.compare(goal.text, Qt::CaseInsensitive) == 0;
        goal.order = std::max(goal.order, other.order + 1);
    }
    if (!known) {
        goal.id = edit.newId<Goal>();
        edit.put(goal);
    }
    return edit.take();
}

Edit goalTextEdit(
    const Book& book, GoalId goal, const QString& text, const QString& source, const QString& label)
{
    const Goal* found = book.goals.find(goal);
    if (found != nullptr && text.simplified().isEmpty())
        return removeGoalEdit(book, goal, label);
    EditBuilder edit(book, label);
    if (found != nullptr) {
        Goal changed = *found;
        changed.text = text.simplified();
        changed.source = source.simplified();
        edit.put(changed);
    }
    return edit.take();
}

Edit removeGoalEdit(const Book& book, GoalId goal, const QString& label)
{
    EditBuilder edit(book, label);
    const ShowsGoal shown = whatShows(book, goal);
    for (const QuoteId id : shown.quotes) {
        Quote quote = *book.quotes.find(id);
        setShows(quote.goals, goal, false);
        edit.put(quote);
    }
    for (const PanelId id : shown.panels) {
        Panel panel = *book.panels.find(id);
        setShows(panel.goals, goal, false);
        edit.put(panel);
    }
    if (book.goals.contains(goal))
        edit.remove<Goal>(goal);
    return edit.take();
}

Edit quoteShowsGoalEdit(
    const Book& book, QuoteId quote, GoalId goal, bool shows, const QString& label)
{
    EditBuilder edit(book, label);
    const Quote* found = book.quotes.find(quote);
    if (found != nullptr && book.goals.contains(goal)) {
        Quote changed = *found;
        setShows(changed.goals, goal, shows);
        edit.put(changed);
    }
    return edit.take();
}

Edit panelShowsGoalEdit(
    const Book& book, PanelId panel, GoalId goal, bool shows, const QString& label)
{
    EditBuilder edit(book, label);
    const Panel* found = book.panels.find(panel);
    if (found != nullptr && book.goals.contains(goal)) {
        Panel changed = *found;
        setShows(changed.goals, goal, shows);
        edit.put(changed);
    }
    return edit.take();
}

ShowsGoal whatShows(const Book& book, GoalId goal)
{
    ShowsGoal shows;
    for (const auto& [id, quote] : book.quotes.rows()) {
        if (has(quote.goals, goal))
            shows.quotes.push_back(id);
    }
    for (const auto& [id, panel] : book.panels.rows()) {
        if (has(panel.goals, goal))
            shows.panels.push_back(id);
    }
    return shows;
}

} // namespace wainscot
