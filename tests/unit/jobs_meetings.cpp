// Meetings: planning, taking down, threads under ideas, letters for seats.
#include "app/jobs/meeting_edits.h"
#include "app/jobs/wall_draft_job.h"

#include <gtest/gtest.h>

#include "tests/support/class_book.h"

namespace wainscot {
namespace {

struct Met : testing::Test {
    Met()
    {
        const Permissions inTheHallway =
            only(Audience::Building, {Permission::FirstName, Permission::Words});
        wren = small.child("Wren", inTheHallway);
        will = small.child("Will", inTheHallway);
        idea = small.quote(wren, QStringLiteral("The sun drinks it"));
        Group made;
        made.id = small.book.groups.newId();
        made.experience = small.experience;
        made.quotes = {idea};
        small.book.groups.put(made);
        group = made.id;
        perform(planMeetingEdit(small.book, small.experience, {group}, kTestDay, {}));
        meeting = small.book.meetings.rows().begin()->first;
    }
    void perform(const Edit& edit)
    {
        ASSERT_TRUE(fits(edit, small.book));
        apply(edit, small.book);
    }
    QuoteId reply(QuoteId to, ChildId who, const char* words)
    {
        perform(replyEdit(small.book, meeting, to, who, QString::fromLatin1(words), {}));
        return QuoteId(small.book.quotes.lastNumber());
    }
    const Meeting& held() { return *small.book.meetings.find(meeting); }
    ClassBook small;
    ChildId wren;
    ChildId will;
    QuoteId idea;
    GroupId group;
    MeetingId meeting;
};

TEST_F(Met, PlansOneMeetingAtATime)
{
    EXPECT_EQ(plannedMeeting(small.book, small.experience), &held());
    EXPECT_EQ(held().readOut, std::vector<QuoteId>{idea});
    perform(planMeetingEdit(small.book, small.experience, {group}, kTestDay, {}));
    EXPECT_EQ(small.book.meetings.size(), 1U);
    EXPECT_EQ(held().groups.size(), 1U);
    perform(groupInMeetingEdit(small.book, meeting, group, false, {}));
    EXPECT_TRUE(held().groups.empty());
    EXPECT_TRUE(held().readOut.empty());
    perform(heldEdit(small.book, meeting, {}));
    EXPECT_EQ(plannedMeeting(small.book, small.experience), nullptr);
}

TEST_F(Met, AnswersThreadUnderTheIdeaTheyAnswer)
{
    const QuoteId no = reply(idea, will, "No");
    const QuoteId also = reply(idea, wren, "Yes");
    const QuoteId why = reply(no, wren, "Why");
    EXPECT_EQ(threadUnder(small.book, idea), (std::vector<Reply>{{no, 1}, {why, 2}, {also, 1}}));
    EXPECT_EQ(spokenIn(small.book, meeting), (std::set<ChildId>{wren, will}));
    EXPECT_EQ(small.book.quotes.find(no)->on, held().on);
    EXPECT_TRUE(replyEdit(small.book, meeting, idea, will, QStringLiteral("  "), {}).isEmpty());
}

TEST_F(Met, GroupsChangePlacesAndAreCarriedOver)
{
    Group second = *small.book.groups.find(group);
    second.id = small.book.groups.newId();
    small.book.groups.put(second);
    perform(groupInMeetingEdit(small.book, meeting, second.id, true, {}));
    perform(groupOrderEdit(small.book, meeting, second.id, -1, {}));
    EXPECT_EQ(held().groups, (std::vector<GroupId>{second.id, group}));
    EXPECT_TRUE(groupOrderEdit(small.book, meeting, second.id, -1, {}).isEmpty());
    perform(carryOverEdit(small.book, meeting, group, true, {}));
    EXPECT_EQ(held().carriedOver, std::vector<GroupId>{group});
    perform(carryOverEdit(small.book, meeting, group, false, {}));
    EXPECT_TRUE(held().carriedOver.empty());
}

TEST_F(Met, WhatIsCarriedToAnotherDayBeginsTheNextMeeting)
{
    perform(carryOverEdit(small.book, meeting, group, true, {}));
    EXPECT_EQ(carriedGroups(small.book, small.experience), std::vector<GroupId>{group});
    perform(heldEdit(small.book, meeting, {}));
    const QDate day = held().on.addDays(1);
    perform(planMeetingEdit(small.book, small.experience, {}, day, {}));
    const Meeting* next = plannedMeeting(small.book, small.experience);
    ASSERT_NE(next, nullptr);
    EXPECT_NE(next->id, meeting);
    EXPECT_EQ(next->groups, std::vector<GroupId>{group});
    EXPECT_EQ(next->readOut, small.book.groups.find(group)->quotes);
    EXPECT_TRUE(carriedGroups(small.book, small.experience).empty()) << "it is taken up again";
    perform(heldEdit(small.book, next->id, {}));
    perform(planMeetingEdit(small.book, small.experience, {}, day.addDays(1), {}));
    EXPECT_TRUE(plannedMeeting(small.book, small.experience)->groups.empty());
}

TEST_F(Met, SeatsHaveTheFirstFreeLetterOfTheName)
{
    const ChildId third = small.child("WILL", {});
    const auto letters = seatLetters(small.book);
    EXPECT_EQ(letters.at(wren), QLatin1Char('W'));
    EXPECT_EQ(letters.at(will), QLatin1Char('I'));
    EXPECT_EQ(letters.at(third), QLatin1Char('L'));
    for (int more = 0; more < 30; ++more)
        (void)small.child("Will", {});
    EXPECT_EQ(seatLetters(small.book).size(), 26U);
}

TEST_F(Met, LookingBackBecomesTheInterpretationInTheOrderOfTheQuestions)
{
    for (const int order : {2, 1, 3}) {
        Reflection one;
        one.id = small.book.reflections.newId();
        one.experience = small.experience;
        one.order = order;
        one.answer = order == 3 ? QStringLiteral(" ") : QStringLiteral("Answer %1.").arg(order);
        small.book.reflections.put(one);
    }
    EXPECT_EQ(
        interpretationFrom(small.book, small.experience), QStringLiteral("Answer 1.\nAnswer 2."));
}

TEST_F(Met, ADraftNeedsAGroup)
{
    WallDraftJob job{small.experience, {}, QStringLiteral("Draft")};
    EXPECT_EQ(job.run(small.book, {}).error().code, ErrorCode::WrongUse);
    job.experience = ExperienceId(99);
    EXPECT_EQ(job.run(small.book, {}).error().code, ErrorCode::NotFound);
}

TEST_F(Met, ADraftStandsByIdeaWithItsAnswersAndHearsEverybody)
{
    Group other = *small.book.groups.find(group);
    other.id = small.book.groups.newId();
    other.label = QStringLiteral("wind");
    Group first = *small.book.groups.find(group);
    first.label = QStringLiteral("sun");
    other.quotes = {small.quote(wren, QStringLiteral("The wind eats it"))};
    small.book.groups.put(other);
    small.book.groups.put(first);
    const QuoteId answer = reply(idea, will, "Then the sun would be full");
    WallDraftJob job{small.experience, {other.id, group, other.id}, QStringLiteral("Draft")};
    const auto made = job.run(small.book, {});
    ASSERT_TRUE(made.ok());
    std::map<QuoteId, int> places;
    std::map<QuoteId, int> ideas;
    QStringList labels;
    int at = 0;
    for (const ArrangedPiece& one : std::get<ArrangeOutcome>(*made).pieces) {
        ++at;
        if (one.piece.kind == PieceKind::Label)
            labels << one.piece.text;
        if (one.piece.quote.isValid()) {
            places[one.piece.quote] = at;
            ideas[one.piece.quote] = one.piece.group;
        }
    }
    EXPECT_EQ(labels, (QStringList{QStringLiteral("wind"), QStringLiteral("sun")}));
    ASSERT_EQ(places.size(), 3U);
    EXPECT_LT(places[other.quotes.front()], places[idea]) << "in the order of the groups";
    EXPECT_EQ(places[answer], places[idea] + 1) << "after what it answers";
    EXPECT_EQ(ideas[answer], ideas[idea]);
    EXPECT_NE(ideas[idea], ideas[other.quotes.front()]);
}

// Four short quotes and no picture: half of an A1 would hang there white.
TEST_F(Met, ADraftOfFewWordsTakesThePaperThatTheyFill)
{
    for (const char* words : {"The wind eats it", "It goes under the stones", "The sun is thirsty"})
        (void)reply(idea, will, words);
    WallDraftJob job{small.experience, {group}, QStringLiteral("Draft")};
    const auto free = job.run(small.book, {});
    ASSERT_TRUE(free.ok());
    const auto& filled = std::get<ArrangeOutcome>(*free);
    EXPECT_LT(filled.display.panelSize.width, Mm(841));
    EXPECT_TRUE(filled.leftOut.empty());
    job.panelSize = SizeMm{Mm(841), Mm(594)};
    const auto chosen = job.run(small.book, {});
    ASSERT_TRUE(chosen.ok());
    EXPECT_EQ(std::get<ArrangeOutcome>(*chosen).display.panelSize, *job.panelSize) << "as asked";
}

} // namespace
} // namespace wainscot
