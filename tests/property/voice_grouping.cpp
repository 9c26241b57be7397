// What holds for every proposal of groups, on seeded random answers.
#include "core/voice/grouping.h"
#include "core/voice/joining.h"
#include "core/voice/regrouping.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>
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
        Answer answer{QuoteId(at + 1), {}, QStringLiteral("en")};
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
        const Proposal expected = proposeGroups(answers, {}, {}, {});
        std::shuffle(answers.begin(), answers.end(), random);
        EXPECT_EQ(proposeGroups(answers, {}, {}, {}), expected) << "seed " << seed;
    }
}

TEST(GroupingProperty, EveryAnswerIsInOnePlaceAndNoGroupPassesTheWishedSize)
{
    std::size_t groups = 0;
    for (unsigned seed = 0; seed < seeds; ++seed) {
        std::mt19937 random(seed);
        const std::vector<Answer> answers = randomAnswers(random);
        const GroupingWish wish{0.1, 3 + seed % 6, {}};
        const Proposal proposal = proposeGroups(answers, {}, {}, wish);
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
        EXPECT_EQ(proposeGroups(answers, byHand, {}, {}), proposeGroups(others, {}, {}, {}))
            << "seed " << seed;
    }
}

TEST(GroupingProperty, AnswersWithNothingInCommonStayOnTheirOwn)
{
    const Proposal proposal = proposeGroups({{QuoteId(1), QStringLiteral("worm"), {}},
                                                {QuoteId(2), QStringLiteral("cloud"), {}},
                                                {QuoteId(3), QString(), {}},
                                                {QuoteId(4), QStringLiteral("ماء"), {}}},
        {},
        {},
        {});
    EXPECT_TRUE(proposal.groups.empty());
    EXPECT_EQ(proposal.onTheirOwn.size(), 4U);
}

using Places = std::vector<std::size_t>;

double meanBetween(const LikenessTable& likeness, const Places& one, const Places& other)
{
    double sum = 0;
    for (const std::size_t a : one) {
        for (const std::size_t b : other)
            sum += likeness.at(a, b);
    }
    return sum / double(one.size() * other.size());
}

bool holdsApart(const HeldPairs& held, const Places& one, const Places& other)
{
    const auto has = [](const Places& set, std::size_t at) {
        return std::find(set.begin(), set.end(), at) != set.end();
    };
    return std::any_of(held.apart.begin(), held.apart.end(), [&](const auto& pair) {
        return (has(one, pair.first) && has(other, pair.second))
            || (has(one, pair.second) && has(other, pair.first));
    });
}

void takeInto(std::vector<Places>& sets, const Joining& joining)
{
    sets[joining.kept].insert(
        sets[joining.kept].end(), sets[joining.joined].begin(), sets[joining.joined].end());
    sets[joining.joined].clear();
}

std::size_t setWith(const std::vector<Places>& sets, std::size_t at)
{
    std::size_t set = 0;
    while (std::find(sets[set].begin(), sets[set].end(), at) == sets[set].end())
        ++set;
    return set;
}

// The loop as it is told: first what is held together, by its places; then at every step look at
// all pairs of sets, computing their mean anew.
std::vector<Joining> joiningsByLookingAtAll(
    const LikenessTable& likeness, double least, std::size_t most, const HeldPairs& held)
{
    std::vector<Places> sets(likeness.size());
    for (std::size_t at = 0; at < sets.size(); ++at)
        sets[at].push_back(at);
    std::vector<Joining> made;
    std::set<std::pair<std::size_t, std::size_t>> together;
    for (const auto& [one, other] : held.together)
        together.insert({std::min(one, other), std::max(one, other)});
    for (const auto& [one, other] : together) {
        const std::size_t first = setWith(sets, one);
        const std::size_t second = setWith(sets, other);
        const std::size_t kept = std::min(first, second);
        const std::size_t joined = std::max(first, second);
        if (first == second || holdsApart(held, sets[kept], sets[joined]))
            continue;
        made.push_back({kept, joined, meanBetween(likeness, sets[kept], sets[joined]), true});
        takeInto(sets, made.back());
    }
    for (bool found = true; found;) {
        found = false;
        Joining best{0, 0, 0};
        for (std::size_t one = 0; one < sets.size(); ++one) {
            for (std::size_t other = one + 1; other < sets.size(); ++other) {
                if (sets[one].empty() || sets[other].empty()
                    || sets[one].size() + sets[other].size() > most
                    || holdsApart(held, sets[one], sets[other]))
                    continue;
                const double mean = meanBetween(likeness, sets[one], sets[other]);
                if (mean >= least && (!found || mean > best.likeness)) {
                    best = {one, other, mean};
                    found = true;
                }
            }
        }
        if (found) {
            made.push_back(best);
            takeInto(sets, best);
        }
    }
    return made;
}

// Likenesses that do not tie, as sums of random numbers hardly ever do.
TEST(GroupingProperty, EveryStepIsTheBestThatIsAllowed)
{
    std::size_t byHand = 0;
    for (unsigned seed = 0; seed < seeds; ++seed) {
        std::mt19937 random(seed);
        LikenessTable likeness(2 + seed % 25);
        for (std::size_t row = 0; row < likeness.size(); ++row) {
            for (std::size_t column = row; column < likeness.size(); ++column)
                likeness.set(row, column, double(random() % 1000003) / 1000003);
        }
        const std::size_t most = 2 + seed % 9;
        HeldPairs held;
        for (std::size_t pairs = seed % 5; pairs > 0; --pairs) {
            held.together.emplace_back(random() % likeness.size(), random() % likeness.size());
            held.apart.emplace_back(0, 1 + random() % (likeness.size() - 1));
        }
        const auto expected = joiningsByLookingAtAll(likeness, 0.2, most, held);
        const auto made = joinings(likeness, 0.2, most, held);
        ASSERT_EQ(made.size(), expected.size()) << "seed " << seed;
        for (std::size_t step = 0; step < made.size(); ++step) {
            EXPECT_EQ(made[step].kept, expected[step].kept) << "seed " << seed;
            EXPECT_EQ(made[step].joined, expected[step].joined) << "seed " << seed;
            EXPECT_EQ(made[step].held, expected[step].held) << "seed " << seed;
            byHand += made[step].held ? 1U : 0U;
            EXPECT_NEAR(made[step].likeness, expected[step].likeness, 1e-12) << "seed " << seed;
        }
    }
    EXPECT_GT(byHand, seeds / 2) << "too few held pairs to have tested anything";
}

TEST(GroupingProperty, AWishedNumberOfGroupsIsTheNearestThatCanBe)
{
    for (unsigned seed = 0; seed < seeds; ++seed) {
        std::mt19937 random(seed);
        const std::vector<Answer> answers = randomAnswers(random);
        std::set<std::size_t> possible;
        for (std::size_t wished = 0; wished < 9; ++wished)
            possible.insert(
                proposeGroups(answers, {}, {}, {GroupingWish{}.leastLikeness, 8, wished})
                    .groups.size());
        EXPECT_TRUE(possible.count(0)) << "seed " << seed;
        for (const std::size_t wished : possible)
            EXPECT_EQ(proposeGroups(answers, {}, {}, {GroupingWish{}.leastLikeness, 8, wished})
                          .groups.size(),
                wished);
        const std::size_t usual = proposeGroups(answers, {}, {}, {}).groups.size();
        EXPECT_EQ(proposeGroups(answers, {}, {}, {GroupingWish{}.leastLikeness, 8, usual}),
            proposeGroups(answers, {}, {}, {}))
            << "seed " << seed;
    }
}

TEST(GroupingProperty, ANewcomerMovesNobody)
{
    std::size_t placedInGroups = 0;
    for (unsigned seed = 0; seed < seeds; ++seed) {
        std::mt19937 random(seed);
        std::vector<Answer> answers = randomAnswers(random);
        if (answers.size() < 4)
            continue;
        const Answer newcomer = answers.back();
        std::vector<Answer> before = answers;
        before.pop_back();
        const Proposal proposal = proposeGroups(before, {}, {}, {});
        const std::vector<Newcomer> without = placeNewcomers(before, proposal.groups, {}, {});
        EXPECT_EQ(without.size(), proposal.onTheirOwn.size());
        std::shuffle(answers.begin(), answers.end(), random);
        const std::vector<Newcomer> with = placeNewcomers(answers, proposal.groups, {}, {});
        ASSERT_EQ(with.size(), proposal.onTheirOwn.size() + 1) << "seed " << seed;
        EXPECT_EQ(with.back().answer, newcomer.id);
        placedInGroups += with.back().group ? 1U : 0U;
    }
    EXPECT_GT(placedInGroups, 0U);
}

// A hand's sorting, so that its pairs do not contradict one another: answers of the same number are
// held together, of others apart.
std::vector<KeptPair> randomPairs(const std::vector<Answer>& answers, std::mt19937& random)
{
    std::vector<KeptPair> pairs;
    for (std::size_t at = 0; answers.size() > 1 && at < 1 + random() % 6; ++at) {
        const QuoteId one = answers[random() % answers.size()].id;
        const QuoteId other = answers[random() % answers.size()].id;
        if (one != other)
            pairs.push_back({KeptPairId(std::int64_t(at) + 1),
                one,
                other,
                one.number() % 4 != other.number() % 4});
    }
    return pairs;
}

std::map<QuoteId, std::size_t> groupOfEach(const Proposal& proposal)
{
    std::map<QuoteId, std::size_t> groups;
    for (std::size_t group = 0; group < proposal.groups.size(); ++group) {
        for (const QuoteId id : proposal.groups[group].answers)
            groups[id] = group + 1;
    }
    return groups;
}

TEST(GroupingProperty, WhatIsHeldTogetherIsInOneGroupAndWhatIsHeldApartNever)
{
    std::size_t against = 0; // pairs that would have been otherwise
    for (unsigned seed = 0; seed < 4 * seeds; ++seed) {
        std::mt19937 random(seed);
        const std::vector<Answer> answers = randomAnswers(random);
        std::vector<KeptPair> pairs = randomPairs(answers, random);
        GroupingWish wish;
        if (seed % 3 == 0)
            wish.groups = random() % 6;
        auto free = groupOfEach(proposeGroups(answers, {}, {}, wish));
        const Proposal held = proposeGroups(answers, {}, pairs, wish);
        auto groups = groupOfEach(held);
        for (const KeptPair& pair : pairs) {
            const auto together = [&pair](auto& of) {
                return of[pair.answer] != 0 && of[pair.answer] == of[pair.other];
            };
            EXPECT_EQ(together(groups), !pair.apart)
                << "seed " << seed << ": " << pair.answer.number() << ' ' << pair.other.number();
            against += together(free) == pair.apart ? 1U : 0U;
        }
        std::vector<Answer> mixed = answers;
        std::shuffle(mixed.begin(), mixed.end(), random);
        std::shuffle(pairs.begin(), pairs.end(), random);
        for (KeptPair& pair : pairs) {
            if (random() % 2 == 0)
                std::swap(pair.answer, pair.other);
        }
        EXPECT_EQ(proposeGroups(mixed, {}, pairs, wish), held) << "seed " << seed;
    }
    EXPECT_GT(against, seeds) << "too few pairs to have changed anything";
}

TEST(GroupingProperty, PairsOfAnswersThatAreGoneAndOfAnAnswerWithItselfSayNothing)
{
    std::mt19937 random(5);
    const std::vector<Answer> answers = randomAnswers(random);
    ASSERT_GT(answers.size(), 2U);
    const QuoteId gone(999);
    const std::vector<KeptPair> pairs{{KeptPairId(1), answers[0].id, gone, false},
        {KeptPairId(2), gone, answers[1].id, true},
        {KeptPairId(3), answers[0].id, answers[0].id, true}};
    EXPECT_EQ(proposeGroups(answers, {}, pairs, {}), proposeGroups(answers, {}, {}, {}));
}

TEST(GroupingProperty, ANewcomerGoesWhereAHandHoldsItAndNeverWhereItHoldsItApart)
{
    const std::vector<Answer> answers{{QuoteId(1), QStringLiteral("the worm digs"), {}},
        {QuoteId(2), QStringLiteral("worms dig"), {}},
        {QuoteId(3), QStringLiteral("a cloud"), {}},
        {QuoteId(4), QStringLiteral("worm digging"), {}}};
    const std::vector<ProposedGroup> groups{{{QuoteId(1), QuoteId(2)}}, {{QuoteId(3)}}};
    const auto placed = [&](const std::vector<KeptPair>& pairs) {
        return placeNewcomers(answers, groups, pairs, {}).front().group;
    };
    const KeptPair together{KeptPairId(1), QuoteId(3), QuoteId(4), false};
    const KeptPair apart{KeptPairId(2), QuoteId(4), QuoteId(2), true};
    EXPECT_EQ(placed({}), std::optional<std::size_t>(0));
    EXPECT_EQ(placed({together}), std::optional<std::size_t>(1));
    EXPECT_EQ(placed({apart}), std::nullopt);
    EXPECT_EQ(placed({apart, together}), std::optional<std::size_t>(1));
}

TEST(GroupingProperty, EachOldGroupIsGoneOnFromOnce)
{
    const std::vector<ProposedGroup> old{
        {{QuoteId(1), QuoteId(2), QuoteId(3)}}, {{QuoteId(4), QuoteId(5), QuoteId(6)}}};
    const std::vector<ProposedGroup> now{{{QuoteId(1), QuoteId(2)}},
        {{QuoteId(3), QuoteId(4), QuoteId(5), QuoteId(6)}},
        {{QuoteId(7), QuoteId(8)}}};
    const std::vector<std::optional<std::size_t>> expected{0U, 1U, std::nullopt};
    EXPECT_EQ(goesOnFrom(now, old), expected);
    EXPECT_EQ(goesOnFrom(old, old), (std::vector<std::optional<std::size_t>>{0U, 1U}));
}

} // namespace
} // namespace wainscot
