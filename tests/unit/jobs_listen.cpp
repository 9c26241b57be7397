// Listening to an experience: kept groups stay, the rest is proposed, nobody is forgotten.
#include "app/jobs/listen_job.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "tests/support/class_book.h"

namespace wainscot {
namespace {

struct Listened : testing::Test {
    Listened()
    {
        Experience happened = *small.book.experiences.find(small.experience);
        happened.language = QStringLiteral("en");
        small.book.experiences.put(happened);
        for (const char* name : {"Wren", "Kofi", "Leo", "Mina", "Theo"})
            children.push_back(small.child(name, {}));
        for (const char* words : {"The sun drinks it with a straw",
                 "I think the sun drinked it all",
                 "If the sun is thirsty it drinks the sea",
                 "We carried water home on our boots",
                 "My boots carried some to my home",
                 "Nine wet boots carried it",
                 "Maybe a bird had it"})
            said(words);
        job.experience = QStringLiteral("Ice");
    }
    QuoteId said(const char* words)
    {
        const ChildId child = children[small.book.quotes.size() % children.size()];
        return small.quote(child, QString::fromLatin1(words));
    }
    ClassBook small;
    std::vector<ChildId> children;
    ListenJob job;
};

TEST_F(Listened, PutsLikeWithLikeAndLeavesTheRestAlone)
{
    const auto heard = job.run(small.book, {});
    ASSERT_TRUE(heard);
    ASSERT_EQ(heard->groups.size(), 2U);
    EXPECT_EQ(heard->groups[0].quotes, (std::vector<QuoteId>{QuoteId(1), QuoteId(2), QuoteId(3)}));
    EXPECT_EQ(heard->groups[1].quotes, (std::vector<QuoteId>{QuoteId(4), QuoteId(5), QuoteId(6)}));
    EXPECT_TRUE(heard->groups[0].label.contains(QLatin1String("sun")))
        << qPrintable(heard->groups[0].label);
    EXPECT_FALSE(heard->groups[0].shared.at(QuoteId(1)).empty());
    EXPECT_EQ(heard->onTheirOwn, std::vector<QuoteId>{QuoteId(7)});
}

TEST_F(Listened, LeavesGroupsOfTheBookAsTheyWereMade)
{
    Group made;
    made.id = small.book.groups.newId();
    made.experience = small.experience;
    made.label = QStringLiteral("Somebody took it");
    made.quotes = {QuoteId(1), QuoteId(7)};
    small.book.groups.put(made);
    const auto heard = job.run(small.book, {});
    ASSERT_TRUE(heard);
    ASSERT_FALSE(heard->groups.empty());
    EXPECT_EQ(heard->groups[0].id, made.id);
    EXPECT_EQ(heard->groups[0].label, made.label);
    EXPECT_EQ(heard->groups[0].quotes, made.quotes);
    std::multiset<QuoteId> all(heard->onTheirOwn.begin(), heard->onTheirOwn.end());
    for (const HeardGroup& group : heard->groups)
        all.insert(group.quotes.begin(), group.quotes.end());
    EXPECT_EQ(all.size(), 7U);
    EXPECT_EQ(std::set<QuoteId>(all.begin(), all.end()).size(), 7U);
}

TEST_F(Listened, ProposesAsManyGroupsAsWished)
{
    job.groups = 1;
    const auto heard = job.run(small.book, {});
    ASSERT_TRUE(heard);
    EXPECT_EQ(heard->groups.size(), 1U);
}

TEST_F(Listened, TakesNoRepliesFromMeetingsAndNoEmptyWords)
{
    Quote reply = *small.book.quotes.find(QuoteId(1));
    reply.id = small.book.quotes.newId();
    reply.meeting = MeetingId(1);
    small.book.quotes.put(reply);
    small.quote(children[0], QStringLiteral("  "));
    EXPECT_EQ(answersTo(small.book, *small.book.experiences.find(small.experience)).size(), 7U);
}

TEST_F(Listened, SaysWhatItCannotDo)
{
    job.groups = 0;
    EXPECT_EQ(job.run(small.book, {}).error().code, ErrorCode::WrongUse);
    job = {QStringLiteral("Fire"), {}};
    EXPECT_EQ(job.run(small.book, {}).error().code, ErrorCode::NotFound);
}

} // namespace
} // namespace wainscot
