// Who was heard, counted again by the plainest means on a thousand seeded classes.
#include "core/voice/answers.h"
#include "core/voice/participation.h"
#include "core/voice/term.h"

#include <algorithm>
#include <random>

#include <gtest/gtest.h>

namespace wainscot {
namespace {

const QDate kFrom(2025, 9, 1);
const QDate kTo(2025, 11, 28);

class RandomClass {
public:
    explicit RandomClass(unsigned seed)
        : m_random(seed)
    {
        addPeople();
        for (int i = number(0, 60); i > 0; --i)
            addQuote();
        for (int i = number(0, 12); i > 0; --i)
            addReason();
        addWalls();
    }
    Book book;

private:
    int number(int from, int to) { return std::uniform_int_distribution<int>(from, to)(m_random); }
    ChildId anyChild() { return ChildId(number(1, int(book.children.size()))); }
    ExperienceId anyExperience() { return ExperienceId(number(1, 2)); }
    QString anyPrompt()
    {
        const QStringList keys{QStringLiteral("notice"),
            QStringLiteral("Think"), // keys are found in any letter case
            QStringLiteral("wonder"),
            QStringLiteral("taste"), // not asked
            QString()};
        return keys.at(number(0, 4));
    }

    void addPeople()
    {
        for (int i = number(1, 16); i > 0; --i) {
            Child child;
            child.id = book.children.newId();
            book.children.put(child);
        }
        PromptSet set = defaultPromptSet();
        set.id = book.promptSets.newId();
        set.prompts.resize(std::size_t(number(1, 3)));
        book.promptSets.put(set);
        for (int i = 0; i < 2; ++i) {
            Experience experience;
            experience.id = book.experiences.newId();
            experience.promptSet = i == 0 ? set.id : PromptSetId();
            experience.on = kFrom.addDays(number(-10, 100));
            book.experiences.put(experience);
        }
        Meeting meeting;
        meeting.id = book.meetings.newId();
        meeting.experience = ExperienceId(1);
        meeting.on = kFrom.addDays(number(0, 80));
        book.meetings.put(meeting);
    }
    void addQuote()
    {
        Quote quote;
        quote.id = book.quotes.newId();
        quote.child = anyChild();
        quote.experience = anyExperience();
        quote.prompt = anyPrompt();
        quote.telling = Telling(number(0, 4));
        if (number(0, 2) > 0)
            quote.on = kFrom.addDays(number(-20, 110));
        else if (number(0, 1) == 1)
            quote.meeting = MeetingId(1);
        book.quotes.put(quote);
    }
    void addReason()
    {
        NoAnswer missing;
        missing.id = book.noAnswers.newId();
        missing.child = anyChild();
        missing.experience = anyExperience();
        missing.prompt = anyPrompt();
        missing.why = WhyNoAnswer(number(0, 1));
        book.noAnswers.put(missing);
    }
    void addWalls()
    {
        for (int i = 0; i < 3; ++i) {
            Picture picture;
            picture.id = book.pictures.newId();
            picture.people.children = {anyChild()};
            picture.kind = PictureKind(number(0, 1));
            book.pictures.put(picture);
        }
        Display display;
        display.id = book.displays.newId();
        book.displays.put(display);
        book.panels.put({book.panels.newId(), display.id, 1});
        for (int i = number(0, 6); i > 0; --i) {
            Piece piece;
            piece.id = book.pieces.newId();
            piece.panel = PanelId(1);
            if (!book.quotes.isEmpty() && number(0, 1) == 1)
                piece.quote = QuoteId(number(1, int(book.quotes.size())));
            else
                piece.picture = PictureId(number(1, 3));
            book.pieces.put(piece);
        }
    }
    std::mt19937 m_random;
};

bool asksFor(const QString& key, const Prompt& prompt)
{
    return prompt.key == key.toLower();
}

Heard naivelyHeard(const Book& book, ExperienceId experience, ChildId child, const Prompt& prompt)
{
    for (const auto& [id, quote] : book.quotes.rows()) {
        if (quote.experience == experience && quote.child == child && asksFor(quote.prompt, prompt))
            return Heard::Answered;
    }
    for (const auto& [id, missing] : book.noAnswers.rows()) {
        const bool meant = missing.prompt.isEmpty() || asksFor(missing.prompt, prompt);
        if (missing.experience == experience && missing.child == child && meant)
            return missing.why == WhyNoAnswer::Passes ? Heard::Passed : Heard::Noted;
    }
    return Heard::NotYet;
}

TEST(Answers, AreWhatANaiveRecountFinds)
{
    for (unsigned seed = 1; seed <= 1000; ++seed) {
        SCOPED_TRACE(seed);
        const RandomClass made(seed);
        for (const auto& [id, experience] : made.book.experiences.rows()) {
            const AnswersOfClass answers = answersIn(made.book, experience);
            ASSERT_EQ(answers.children.size(), made.book.children.size());
            int answered = 0;
            int complete = 0;
            for (const ChildAnswers& row : answers.children) {
                int open = 0;
                for (std::size_t i = 0; i < answers.prompts.size(); ++i) {
                    const Heard heard = naivelyHeard(made.book, id, row.child, answers.prompts[i]);
                    ASSERT_EQ(row.marks[i].heard, heard);
                    answered += heard == Heard::Answered ? 1 : 0;
                    open += heard == Heard::NotYet ? 1 : 0;
                }
                ASSERT_EQ(row.open(), open);
                complete += open == 0 ? 1 : 0;
            }
            ASSERT_EQ(answers.answered(), answered);
            ASSERT_EQ(answers.complete(), complete);
        }
    }
}

TEST(Answers, NextToHearVisitsEveryOpenChildOnce)
{
    for (unsigned seed = 1; seed <= 1000; ++seed) {
        SCOPED_TRACE(seed);
        const RandomClass made(seed);
        const AnswersOfClass answers =
            answersIn(made.book, *made.book.experiences.find(ExperienceId(1)));
        std::set<ChildId> open;
        for (const ChildAnswers& row : answers.children) {
            if (!row.isComplete())
                open.insert(row.child);
        }
        std::set<ChildId> visited;
        ChildId at;
        for (std::size_t i = 0; i < open.size(); ++i) {
            at = nextToHear(answers, at);
            if (open.size() > 1) {
                ASSERT_TRUE(at.isValid());
            }
            visited.insert(at);
        }
        ASSERT_EQ(visited, open);
    }
}

// Straight from the definition, a day and a child at a time.
ChildInTerm naiveTerm(const Book& book, ChildId child, const std::vector<Week>& weeks)
{
    ChildInTerm row;
    row.child = child;
    for (const Week& week : weeks) {
        std::map<Telling, int> uses;
        for (const auto& [id, quote] : book.quotes.rows()) {
            const auto day = dayOf(book, quote);
            const bool within = day && *day >= week.monday && *day < week.monday.addDays(7)
                && *day >= kFrom && *day <= kTo;
            if (quote.child == child && within) {
                ++uses[quote.telling];
                row.lastHeard = std::max(row.lastHeard.value_or(*day), *day);
            }
        }
        std::optional<Telling> most;
        for (const auto& [telling, count] : uses) {
            if (!most || count > uses[*most])
                most = telling;
        }
        row.heard.push_back(most);
    }
    std::set<QuoteId> quoted;
    for (const auto& [id, piece] : book.pieces.rows()) {
        const Quote* quote = book.quotes.find(piece.quote);
        if (quote != nullptr && quote->child == child)
            quoted.insert(quote->id);
    }
    row.quoted = int(quoted.size());
    for (const auto& [id, picture] : book.pictures.rows())
        row.pictured += picture.people.children.front() == child ? 1 : 0;
    row.walls = wallsOfChildren(book, {}).at(child);
    return row;
}

TEST(Term, IsWhatANaiveRecountFinds)
{
    for (unsigned seed = 1; seed <= 1000; ++seed) {
        SCOPED_TRACE(seed);
        const RandomClass made(seed);
        const Term term = termOf(made.book, kFrom, kTo);
        ASSERT_EQ(term.weeks.size(), 13U);
        ASSERT_EQ(term.children.size(), made.book.children.size());
        for (const ChildInTerm& row : term.children)
            ASSERT_EQ(row, naiveTerm(made.book, row.child, term.weeks));
    }
}

TEST(Term, NamesWhoWasHeardInTheFewestWeeksInTheClassesOrder)
{
    for (unsigned seed = 1; seed <= 1000; ++seed) {
        SCOPED_TRACE(seed);
        const RandomClass made(seed);
        const Term term = termOf(made.book, kFrom, kTo);
        const auto least = heardLeast(term, 3);
        ASSERT_LE(least.size(), 3U);
        ASSERT_TRUE(std::is_sorted(least.begin(), least.end()));
        for (const ChildInTerm& row : term.children) {
            const bool named = std::count(least.begin(), least.end(), row.child) > 0;
            for (const ChildId one : least) {
                if (!named) {
                    ASSERT_LE(term.of(one)->weeksHeard(), row.weeksHeard());
                }
            }
        }
    }
}

// ISO 8601 weeks begin on Monday; the first holds the year's first Thursday.
TEST(Term, NumbersItsWeeksByIso8601)
{
    const Term term = termOf(Book(), QDate(2025, 12, 24), QDate(2026, 1, 9));
    ASSERT_EQ(term.weeks.size(), 3U);
    EXPECT_EQ(term.weeks[0].number(), 52);
    EXPECT_EQ(term.weeks[1].number(), 1);
    EXPECT_EQ(term.weeks[2].number(), 2);
    EXPECT_EQ(term.weeks[1].monday, QDate(2025, 12, 29));
}

} // namespace
} // namespace wainscot
