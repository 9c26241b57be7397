// Edits of whole panels, and the history of a display.
#include "app/ui/session/panel_edits.h"

#include <gmock/gmock.h>

#include "app/ui/session/display_history.h"
#include "core/permit/cleared.h"
#include "tests/support/book_equality.h"
#include "tests/support/class_book.h"

namespace wainscot::ui {
namespace {

using ::testing::SizeIs;

// A display with one panel of two quotes.
struct Made {
    ClassBook made;
    DisplayId display;
    PanelId panel;
    PieceId first;
    PieceId second;
    Made()
    {
        const ChildId child = made.child("Wren", Permissions::all());
        display = made.display(Audience::Classroom);
        first = made.hang(display, made.quote(child, QStringLiteral("One.")));
        second = made.hang(display, made.quote(child, QStringLiteral("Two.")));
        panel = made.panelOf(display).id;
    }
    Book& book() { return made.book; }
};

std::vector<int> numbers(const Book& book, DisplayId display)
{
    std::vector<int> all;
    for (const Panel* panel : panelsOf(book, display))
        all.push_back(panel->number);
    return all;
}

TEST(PanelEdits, ACopyHangsRightAfterAndIsReadInTheSameOrder)
{
    Made at;
    PanelId added;
    apply(duplicatePanel(at.book(), at.panel, QStringLiteral("Copy"), added), at.book());
    EXPECT_EQ(numbers(at.book(), at.display), (std::vector<int>{1, 2}));
    EXPECT_EQ(panelsOf(at.book(), at.display)[1]->id, added);
    ASSERT_THAT(piecesOf(at.book(), added), SizeIs(2));
    EXPECT_EQ(piecesOf(at.book(), added)[0]->quote, at.book().pieces.find(at.first)->quote);
}

TEST(PanelEdits, MovingClosesUpAndStaysInTheRow)
{
    Made at;
    PanelId second;
    apply(duplicatePanel(at.book(), at.panel, QStringLiteral("Copy"), second), at.book());
    apply(movePanel(at.book(), at.panel, 99, QStringLiteral("Last")), at.book());
    EXPECT_EQ(panelsOf(at.book(), at.display)[1]->id, at.panel);
    EXPECT_EQ(numbers(at.book(), at.display), (std::vector<int>{1, 2}));
    EXPECT_TRUE(movePanel(at.book(), at.panel, 2, QStringLiteral("Stays")).isEmpty());
}

TEST(PanelEdits, RemovingTakesThePiecesAndNothingThatWasGathered)
{
    Made at;
    const std::size_t quotes = at.book().quotes.size();
    apply(removePanel(at.book(), at.panel, QStringLiteral("Down")), at.book());
    EXPECT_TRUE(at.book().pieces.isEmpty());
    EXPECT_EQ(at.book().quotes.size(), quotes);
}

TEST(DisplayHistory, TellsTheStepsOfThisDisplayNewestFirstAndBringsOneBack)
{
    Made at;
    const Book start = at.book();
    std::vector<Edit> edits;
    const auto moved = [&](PieceId id, double by, const char* label) {
        EditBuilder builder(at.book(), QString::fromLatin1(label));
        Piece piece = *at.book().pieces.find(id);
        piece.cell = piece.cell.movedBy(Mm(by), Mm(0));
        builder.put(piece);
        edits.push_back(builder.take());
        apply(edits.back(), at.book());
    };
    moved(at.first, 10, "First");
    EditBuilder other(at.book(), QStringLiteral("Child"));
    Child child = at.book().children.rows().begin()->second;
    child.name = QStringLiteral("Wrenna");
    other.put(child);
    edits.push_back(other.take());
    apply(edits.back(), at.book());
    moved(at.second, 20, "Second");
    std::vector<const Edit*> steps;
    for (const Edit& edit : edits)
        steps.push_back(&edit);
    const auto history = historyOf(at.book(), steps, at.display, 10);
    ASSERT_THAT(history, SizeIs(3)) << "the child's name is no step of the display";
    EXPECT_EQ(history[0].label, QStringLiteral("Second"));
    EXPECT_EQ(history[1].label, QStringLiteral("First"));
    EXPECT_TRUE(history[2].label.isEmpty());
    EXPECT_TRUE(sameBook(history[2].book, start));
    apply(displayAsIn(at.book(), history[2].book, at.display, QStringLiteral("Back")), at.book());
    EXPECT_EQ(*at.book().pieces.find(at.first), *start.pieces.find(at.first));
    EXPECT_EQ(at.book().children.rows().begin()->second.name, QStringLiteral("Wrenna"))
        << "only the display goes back";
    EXPECT_THAT(historyOf(history[0].book, steps, at.display, 1), SizeIs(2))
        << "one step, and how it was before";
}

TEST(DisplayHistory, ShowsAnEarlierStateByThePermissionsOfToday)
{
    Made at;
    const auto wordsShown = [&at](const Book& book) {
        const PermissionRules rules(book, *book.displays.find(at.display), kTestDay);
        return rules.clear(*book.panels.find(at.panel)).pieces().size();
    };
    const Book then = at.book();
    ASSERT_EQ(wordsShown(then), 2U);
    Child child = at.book().children.rows().begin()->second;
    child.permissions = Permissions();
    at.book().children.put(child);
    const Piece gone = *at.book().pieces.find(at.second);
    at.book().pieces.remove(gone.id);
    const Book shown = todayWith(at.book(), then, at.display);
    EXPECT_TRUE(shown.pieces.contains(gone.id)) << "the display is as it was";
    EXPECT_EQ(wordsShown(shown), 0U) << "the family has taken its permission back";
}

TEST(DisplayHistory, LeavesOutWhatIsNoLongerThere)
{
    Made at;
    const Book then = at.book();
    EditBuilder builder(at.book(), QStringLiteral("Gone"));
    const QuoteId quote = at.book().pieces.find(at.first)->quote;
    builder.remove<Piece>(at.first);
    builder.remove<Quote>(quote);
    apply(builder.take(), at.book());
    apply(displayAsIn(at.book(), then, at.display, QStringLiteral("Back")), at.book());
    EXPECT_FALSE(at.book().pieces.contains(at.first));
    EXPECT_TRUE(at.book().pieces.contains(at.second));
}

} // namespace
} // namespace wainscot::ui
