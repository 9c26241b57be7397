// Goals with what shows them, and notes of what was seen, as edits.
#include "app/jobs/goal_edits.h"
#include "app/jobs/observation_edits.h"
#include "tests/support/class_book.h"

#include <gmock/gmock.h>

namespace wainscot {

namespace {

using ::testing::ElementsAre;

const QString kLabel = QStringLiteral("A goal");

class Goals : public ::testing::Test {
protected:
    Goals() { m_display = m_made.display(Audience::Building); }
    void perform(const Edit& edit) { apply(edit, m_made.book); }
    GoalId add(const char* text)
    {
        perform(addGoalEdit(m_made.book, QString::fromUtf8(text), {}, kLabel));
        return GoalId(m_made.book.goals.lastNumber());
    }

    ClassBook m_made;
    ChildId m_wren = m_made.child("Wren", Permissions::all());
    QuoteId m_said = m_made.quote(m_wren, QStringLiteral("the sun drinks it"));
    DisplayId m_display;
};

TEST_F(Goals, AreAListInTheOrderTheyWereWritten)
{
    add("Asks how to find out");
    add("  Tells   what changes ");
    EXPECT_TRUE(
        addGoalEdit(m_made.book, QStringLiteral("asks HOW to find out"), {}, kLabel).isEmpty());
    EXPECT_TRUE(addGoalEdit(m_made.book, QStringLiteral("  "), {}, kLabel).isEmpty());
    const auto goals = goalsOf(m_made.book);
    ASSERT_EQ(goals.size(), 2U);
    EXPECT_EQ(goals[0]->text, QStringLiteral("Asks how to find out"));
    EXPECT_EQ(goals[1]->text, QStringLiteral("Tells what changes"));
    perform(goalTextEdit(m_made.book,
        goals[1]->id,
        QStringLiteral("Tells what changed"),
        QStringLiteral("our plan"),
        kLabel));
    EXPECT_EQ(goalsOf(m_made.book)[1]->source, QStringLiteral("our plan"));
}

TEST_F(Goals, AreShownByWordsAndPanels)
{
    const GoalId goal = add("Asks how to find out");
    m_made.hang(m_display, m_said);
    const PanelId panel = m_made.panelOf(m_display).id;
    perform(quoteShowsGoalEdit(m_made.book, m_said, goal, true, kLabel));
    perform(quoteShowsGoalEdit(m_made.book, m_said, goal, true, kLabel));
    perform(panelShowsGoalEdit(m_made.book, panel, goal, true, kLabel));
    EXPECT_THAT(whatShows(m_made.book, goal).quotes, ElementsAre(m_said));
    EXPECT_THAT(whatShows(m_made.book, goal).panels, ElementsAre(panel));
    EXPECT_EQ(m_made.book.quotes.find(m_said)->goals.size(), 1U);
    perform(quoteShowsGoalEdit(m_made.book, m_said, goal, false, kLabel));
    EXPECT_TRUE(whatShows(m_made.book, goal).quotes.empty());
}

TEST_F(Goals, LeaveNothingBehindWhenTheyAreTakenOutAndComeBackByUndo)
{
    const GoalId goal = add("Asks how to find out");
    perform(quoteShowsGoalEdit(m_made.book, m_said, goal, true, kLabel));
    const Edit out = goalTextEdit(m_made.book, goal, {}, {}, kLabel);
    perform(out);
    EXPECT_TRUE(m_made.book.goals.isEmpty());
    EXPECT_TRUE(m_made.book.quotes.find(m_said)->goals.empty());
    revert(out, m_made.book);
    EXPECT_THAT(whatShows(m_made.book, goal).quotes, ElementsAre(m_said));
}

TEST_F(Goals, OfNothingThatIsThereChangeNothing)
{
    EXPECT_TRUE(quoteShowsGoalEdit(m_made.book, m_said, GoalId(7), true, kLabel).isEmpty());
    EXPECT_TRUE(goalTextEdit(m_made.book, GoalId(7), kLabel, {}, kLabel).isEmpty());
    EXPECT_TRUE(removeGoalEdit(m_made.book, GoalId(7), kLabel).isEmpty());
}

TEST(WhatWasSeen, IsKeptChangedAndListedByTime)
{
    ClassBook made;
    const auto at = [](int minute) { return QDateTime(kTestDay, QTime(9, minute)); };
    const auto keep = [&](Observation seen) {
        seen.experience = made.experience;
        apply(keepObservationEdit(made.book, seen, kLabel), made.book);
        return ObservationId(made.book.observations.lastNumber());
    };
    Observation later;
    later.words = QStringLiteral(" She stirs. ");
    later.at = at(42);
    Observation sooner;
    sooner.words = QStringLiteral("He kneels.");
    sooner.at = at(5);
    Observation sometime;
    sometime.words = QStringLiteral("They wait.");
    const ObservationId first = keep(sometime);
    const ObservationId second = keep(later);
    const ObservationId third = keep(sooner);
    std::vector<ObservationId> order;
    for (const Observation* seen : observationsOf(made.book, made.experience))
        order.push_back(seen->id);
    EXPECT_THAT(order, ElementsAre(third, second, first));
    EXPECT_EQ(made.book.observations.find(second)->words, QStringLiteral("She stirs."));
    EXPECT_TRUE(keepObservationEdit(made.book, Observation{}, kLabel).isEmpty());
    apply(removeObservationEdit(made.book, second, kLabel), made.book);
    EXPECT_FALSE(made.book.observations.contains(second));
}

} // namespace
} // namespace wainscot
