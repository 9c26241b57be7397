// Groups in the hand: what is proposed, what a hand keeps, what goes where.
#include "app/jobs/answers_in_hand.h"
#include "app/jobs/group_edits.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>

#include "tests/support/class_book.h"

namespace wainscot {
namespace {

struct Grouped : testing::Test {
    Grouped()
    {
        Experience happened = *small.book.experiences.find(small.experience);
        happened.language = QStringLiteral("en");
        small.book.experiences.put(happened);
        const ChildId child = small.child("Wren", {});
        for (const char* words : {"The sun drinks it with a straw",
                 "I think the sun drinked it all",
                 "If the sun is thirsty it drinks the sea",
                 "We carried water home on our boots",
                 "My boots carried some to my home",
                 "Nine wet boots carried it",
                 "Maybe a bird had it"})
            small.quote(child, QString::fromLatin1(words));
        apply(proposeGroupsEdit(small.book, experience(), {}), small.book);
    }
    const Experience& experience() { return *small.book.experiences.find(small.experience); }
    std::vector<const Group*> groups() { return groupsOf(small.book, small.experience); }
    void perform(const Edit& edit)
    {
        ASSERT_TRUE(fits(edit, small.book));
        apply(edit, small.book);
    }
    // Two kept together are in one group, two kept apart are not.
    void expectAgree()
    {
        for (const KeptPair& pair : keptPairsOf(small.book)) {
            const Group* one = groupWith(small.book, pair.answer);
            const bool same = one != nullptr && one == groupWith(small.book, pair.other);
            EXPECT_EQ(same, !pair.apart) << pair.answer.number() << ' ' << pair.other.number()
                                         << (pair.apart ? " apart" : "");
        }
    }
    ClassBook small;
};

TEST_F(Grouped, AreProposedWithLabelsAndAreNotKeptByHand)
{
    ASSERT_EQ(groups().size(), 2U);
    EXPECT_EQ(groups()[0]->quotes.size(), 3U);
    EXPECT_FALSE(groups()[0]->label.isEmpty());
    EXPECT_EQ(proposedCount(small.book, small.experience), 2U);
    EXPECT_EQ(onTheirOwn(small.book, experience()), std::vector<QuoteId>{QuoteId(7)});
}

TEST_F(Grouped, ProposingOnceMoreChangesNothing)
{
    EXPECT_TRUE(proposeGroupsEdit(small.book, experience(), {}).isEmpty());
}

TEST_F(Grouped, AnAnswerMovedByHandStaysWhereItWasPutAndTheGroupsStayProposed)
{
    const GroupId sun = groups()[0]->id;
    perform(moveAnswerEdit(small.book, QuoteId(4), sun, {}));
    EXPECT_EQ(small.book.groups.find(sun)->quotes.size(), 4U);
    EXPECT_EQ(proposedCount(small.book, small.experience), 2U);
    expectAgree();
    perform(proposeGroupsEdit(small.book, experience(), {}));
    EXPECT_EQ(groupWith(small.book, QuoteId(4))->id, sun);
    expectAgree();
    perform(moveAnswerEdit(small.book, QuoteId(4), {}, {}));
    EXPECT_EQ(onTheirOwn(small.book, experience()),
        (std::vector<QuoteId>{QuoteId(4), QuoteId(5), QuoteId(6), QuoteId(7)}))
        << "two that are left of three are no group";
    perform(proposeGroupsEdit(small.book, experience(), {}));
    EXPECT_EQ(groupWith(small.book, QuoteId(4)), nullptr)
        << "it was taken from both groups by hand";
    EXPECT_TRUE(placeNewcomersEdit(small.book, experience(), {}).isEmpty());
    expectAgree();
}

TEST_F(Grouped, AMoveIsBesideTheAnswerItWasLetGoOver)
{
    const GroupId boots = groups()[1]->id;
    perform(moveAnswerEdit(small.book, QuoteId(7), boots, {}, QuoteId(6)));
    ASSERT_EQ(small.book.keptPairs.size(), 1U) << "it was in no group, so it left none";
    const KeptPair pair = small.book.keptPairs.rows().begin()->second;
    EXPECT_EQ(pair, (KeptPair{pair.id, QuoteId(7), QuoteId(6), false}));
    EXPECT_EQ(answersHeld(small.book, small.experience), 1U);
}

TEST_F(Grouped, ALaterMoveOfTheHandOverrulesAnEarlierOne)
{
    const auto before = small.book.groups.rows();
    const GroupId sun = groups()[0]->id;
    const GroupId boots = groups()[1]->id;
    perform(moveAnswerEdit(small.book, QuoteId(1), boots, {}));
    perform(moveAnswerEdit(small.book, QuoteId(1), sun, {}));
    expectAgree();
    perform(proposeGroupsEdit(small.book, experience(), {}));
    EXPECT_EQ(groupWith(small.book, QuoteId(1)), groupWith(small.book, QuoteId(2)));
    EXPECT_EQ(groupsOf(small.book, small.experience).size(), before.size());
    expectAgree();
}

TEST_F(Grouped, TwoKeptTogetherAreInOneGroupAlsoWhenGroupsAreProposedAgain)
{
    perform(keepTogetherEdit(small.book, QuoteId(7), QuoteId(4), {}));
    EXPECT_EQ(groupWith(small.book, QuoteId(7)), groupWith(small.book, QuoteId(4)));
    for (const std::size_t wished : {0U, 1U, 2U, 3U, 4U}) {
        perform(proposeGroupsEdit(small.book, experience(), {}, wished));
        ASSERT_NE(groupWith(small.book, QuoteId(7)), nullptr) << wished;
        EXPECT_EQ(groupWith(small.book, QuoteId(7)), groupWith(small.book, QuoteId(4))) << wished;
    }
    const KeptPairId pair = small.book.keptPairs.rows().begin()->first;
    perform(letGoEdit(small.book, {pair}, {}));
    EXPECT_EQ(groupWith(small.book, QuoteId(7)), groupWith(small.book, QuoteId(4)))
        << "letting go moves nothing";
    perform(proposeGroupsEdit(small.book, experience(), {}));
    EXPECT_EQ(groupWith(small.book, QuoteId(7)), nullptr);
}

TEST_F(Grouped, TwoOnTheirOwnKeptTogetherAreAProposedGroup)
{
    const ChildId child = small.book.children.rows().begin()->first;
    const QuoteId more = small.quote(child, QStringLiteral("Why not"));
    perform(keepTogetherEdit(small.book, more, QuoteId(7), {}));
    const Group* group = groupWith(small.book, more);
    ASSERT_NE(group, nullptr);
    EXPECT_EQ(group->quotes, (std::vector<QuoteId>{QuoteId(7), more}));
    EXPECT_FALSE(group->keptByHand);
    EXPECT_FALSE(group->label.isEmpty());
    perform(proposeGroupsEdit(small.book, experience(), {}));
    EXPECT_EQ(groupWith(small.book, more)->quotes, (std::vector<QuoteId>{QuoteId(7), more}));
}

TEST_F(Grouped, TwoKeptApartAreNeverInOneGroup)
{
    perform(keepApartEdit(small.book, QuoteId(1), QuoteId(2), {}));
    EXPECT_EQ(groupWith(small.book, QuoteId(1)), nullptr);
    for (const std::size_t wished : {0U, 1U, 2U, 3U}) {
        perform(proposeGroupsEdit(small.book, experience(), {}, wished));
        expectAgree();
    }
    perform(keepTogetherEdit(small.book, QuoteId(1), QuoteId(2), {}));
    EXPECT_EQ(small.book.keptPairs.size(), 1U) << "the last word counts";
    expectAgree();
}

TEST_F(Grouped, ASplitLeavesTogetherWhatIsKeptTogether)
{
    const GroupId sun = groups()[0]->id;
    perform(keepTogetherEdit(small.book, QuoteId(1), QuoteId(3), {}));
    perform(splitGroupEdit(small.book, sun, {}));
    EXPECT_EQ(groupWith(small.book, QuoteId(1)), groupWith(small.book, QuoteId(3)));
    perform(splitGroupEdit(small.book, groupWith(small.book, QuoteId(1))->id, {}));
    EXPECT_NE(groupWith(small.book, QuoteId(1)), groupWith(small.book, QuoteId(3)))
        << "nothing else is left to split";
    expectAgree();
}

// Whatever a hand does, the groups and the pairs agree, and undo brings both back.
TEST_F(Grouped, GroupsAndPairsAgreeAfterAnyWorkOfTheHand)
{
    for (unsigned seed = 0; seed < 40; ++seed) {
        SCOPED_TRACE(seed);
        std::mt19937 random(seed);
        const Book start = small.book;
        std::vector<Edit> done;
        for (int step = 0; step < 25; ++step) {
            const QuoteId one(1 + random() % 7);
            const QuoteId other(1 + random() % 7);
            const auto all = groups();
            const GroupId group =
                all.empty() || random() % 4 == 0 ? GroupId() : all[random() % all.size()]->id;
            GroupId added;
            switch (random() % 7) {
            case 0:
                done.push_back(newGroupEdit(small.book, one, {}, added));
                break;
            case 1:
                done.push_back(keepTogetherEdit(small.book, one, other, {}));
                break;
            case 2:
                done.push_back(keepApartEdit(small.book, one, other, {}));
                break;
            case 3:
                done.push_back(proposeGroupsEdit(small.book, experience(), {}, random() % 4));
                break;
            case 4:
                done.push_back(splitGroupEdit(small.book, group, {}));
                break;
            case 5:
                done.push_back(keepGroupEdit(small.book, group, random() % 2 == 0, {}));
                break;
            default:
                done.push_back(moveAnswerEdit(small.book, one, group, {}, other));
            }
            perform(done.back());
            expectAgree();
        }
        for (auto edit = done.rbegin(); edit != done.rend(); ++edit)
            revert(*edit, small.book);
        EXPECT_EQ(small.book.groups.rows(), start.groups.rows());
        EXPECT_TRUE(small.book.keptPairs.isEmpty());
    }
}

TEST_F(Grouped, OnlyWhatWasTakenDownJoinsItsLikeAndNothingElseMoves)
{
    const ChildId child = small.book.children.rows().begin()->first;
    small.quote(child, QStringLiteral("The sun drinked the sea with a straw"));
    small.quote(child, QStringLiteral("Our wet boots carried water home"));
    const auto before = small.book.groups.rows();
    const Edit edit = joinLikeOnesEdit(small.book, {QuoteId(8)}, QStringLiteral("Words"), 5);
    EXPECT_EQ(edit.gesture, 5);
    perform(edit);
    EXPECT_EQ(groups()[0]->quotes.size(), before.begin()->second.quotes.size() + 1);
    EXPECT_EQ(groups()[0]->quotes.back(), QuoteId(8));
    EXPECT_EQ(onTheirOwn(small.book, experience()), (std::vector<QuoteId>{QuoteId(7), QuoteId(9)}));
    EXPECT_TRUE(joinLikeOnesEdit(small.book, {QuoteId(7)}, {}, 6).isEmpty()) << "like no other";
    EXPECT_TRUE(joinLikeOnesEdit(small.book, {QuoteId(8)}, {}, 7).isEmpty()) << "it is there";
}

TEST_F(Grouped, AGroupLeftEmptyGoesAndLeavesItsMeetings)
{
    GroupId added;
    perform(newGroupEdit(small.book, QuoteId(7), {}, added));
    ASSERT_TRUE(small.book.groups.contains(added));
    EXPECT_EQ(groups().back()->id, added);
    EXPECT_EQ(groups().back()->label, QStringLiteral("\u201cMaybe a bird had it\u201d"));
    Meeting meeting;
    meeting.id = small.book.meetings.newId();
    meeting.experience = small.experience;
    meeting.groups = {added, groups()[0]->id};
    small.book.meetings.put(meeting);
    perform(moveAnswerEdit(small.book, QuoteId(7), groups()[0]->id, {}));
    EXPECT_FALSE(small.book.groups.contains(added));
    EXPECT_EQ(small.book.meetings.find(meeting.id)->groups, std::vector<GroupId>{groups()[0]->id});
}

TEST_F(Grouped, ASplitGroupIsTwoThatAreKept)
{
    const GroupId boots = groups()[1]->id;
    perform(splitGroupEdit(small.book, boots, {}));
    ASSERT_EQ(groups().size(), 3U);
    EXPECT_EQ(proposedCount(small.book, small.experience), 1U);
    std::size_t answers = 0;
    for (const Group* group : groups())
        answers += group->quotes.size();
    EXPECT_EQ(answers, 6U);
}

TEST_F(Grouped, ANewAnswerJoinsItsLikeAndMovesNobody)
{
    const QuoteId more = small.quote(ChildId(1), QStringLiteral("The thirsty sun drinks"));
    const Book before = small.book;
    perform(placeNewcomersEdit(small.book, experience(), {}));
    const Group& sun = *groups()[0];
    EXPECT_NE(std::find(sun.quotes.begin(), sun.quotes.end(), more), sun.quotes.end());
    EXPECT_FALSE(sun.keptByHand);
    for (const auto& [id, group] : before.groups.rows()) {
        for (const QuoteId quote : group.quotes) {
            const auto& now = small.book.groups.find(id)->quotes;
            EXPECT_NE(std::find(now.begin(), now.end(), quote), now.end());
        }
    }
}

TEST_F(Grouped, ANameGivenByHandLasts)
{
    const GroupId sun = groups()[0]->id;
    perform(renameGroupEdit(small.book, sun, QStringLiteral("  The sun  drinks it "), {}));
    perform(proposeGroupsEdit(small.book, experience(), {}));
    EXPECT_EQ(small.book.groups.find(sun)->label, QStringLiteral("The sun drinks it"));
    perform(keepGroupEdit(small.book, sun, false, {}));
    perform(proposeGroupsEdit(small.book, experience(), {}));
    EXPECT_EQ(small.book.groups.find(sun)->label, QStringLiteral("The sun drinks it"));
}

} // namespace
} // namespace wainscot
