// What holds for every proposal of groups, on seeded random answers.
#include "core/voice/grouping.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>
#include <set>

namespace wainscot {
namespace {

constexpr unsigned seeds = 60;

std::vector<Answer> randomAnswers(std::mt19937& random)
{
    static const std::vector<QString> words{QStringLiteral("sun"),
        QStringLiteral("puddle"),
        QStringLiteral("drinked"),
        QStringLiteral("worm"),
        QStringLiteral("ground"),
        QStringLiteral("boots"),
        QStringLiteral("cloud"),
        QStringLiteral("wind"),
        QStringLiteral("ماء"),
        QStringLiteral("dryed"),
        QStringLiteral("rain"),
        QString()};
    std::vector<Answer> answers;
    const unsigned count = random() % 30;
    for (unsigned at = 0; at < count; ++at) {
        Answer answer{QuoteId(at + 1), {}};
        for (unsigned length = random() % 6; length > 0; --length)
            answer.words += words[random() % words.size()] + QLatin1Char(' ');
        answers.push_back(answer);
    }
    return answers;
}

TEST(GroupingProperty, TheOrderOfTheAnswersDoesNotMatter)
{
    for (unsigned seed = 0; seed < seeds; ++seed) {
        std::mt19937 random(seed);
        std::vector<Answer> answers = randomAnswers(random);
        const Proposal expected = proposeGroups(answers, {}, {});
        std::shuffle(answers.begin(), answers.end(), random);
        EXPECT_EQ(proposeGroups(answers, {}, {}), expected) << "seed " << seed;
    }
}

TEST(GroupingProperty, EveryAnswerIsInOnePlaceAndNoGroupPassesTheWishedSize)
{
    std::size_t groups = 0;
    for (unsigned seed = 0; seed < seeds; ++seed) {
        std::mt19937 random(seed);
        const std::vector<Answer> answers = randomAnswers(random);
        const GroupingWish wish{0.1, 3 + seed % 6};
        const Proposal proposal = proposeGroups(answers, {}, wish);
        std::multiset<QuoteId> found(proposal.onTheirOwn.begin(), proposal.onTheirOwn.end());
        for (const ProposedGroup& group : proposal.groups) {
            EXPECT_LE(group.answers.size(), wish.mostAnswers) << "seed " << seed;
            EXPECT_GE(group.answers.size(), 3U) << "seed " << seed;
            found.insert(group.answers.begin(), group.answers.end());
        }
        std::multiset<QuoteId> expected;
        for (const Answer& answer : answers)
            expected.insert(answer.id);
        EXPECT_EQ(found, expected) << "seed " << seed;
        groups += proposal.groups.size();
    }
    EXPECT_GT(groups, seeds) << "too few groups to have tested anything";
}

TEST(GroupingProperty, WhatWasMadeByHandIsNotProposedAgain)
{
    for (unsigned seed = 0; seed < seeds; ++seed) {
        std::mt19937 random(seed);
        const std::vector<Answer> answers = randomAnswers(random);
        if (answers.size() < 2)
            continue;
        const std::vector<ProposedGroup> byHand{{{answers.front().id, answers.back().id}}};
        const std::vector<Answer> others(answers.begin() + 1, answers.end() - 1);
        EXPECT_EQ(proposeGroups(answers, byHand, {}), proposeGroups(others, {}, {}))
            << "seed " << seed;
    }
}

TEST(GroupingProperty, AnswersWithNothingInCommonStayOnTheirOwn)
{
    const Proposal proposal = proposeGroups({{QuoteId(1), QStringLiteral("worm")},
                                                {QuoteId(2), QStringLiteral("cloud")},
                                                {QuoteId(3), QString()},
                                                {QuoteId(4), QStringLiteral("ماء")}},
        {},
        {});
    EXPECT_TRUE(proposal.groups.empty());
    EXPECT_EQ(proposal.onTheirOwn.size(), 4U);
}

} // namespace
} // namespace wainscot
