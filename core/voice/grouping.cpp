#include "core/voice/grouping.h"

#include <algorithm>
#include <map>
#include <set>

namespace wainscot {
namespace {

std::vector<Answer> withoutThoseOf(
    std::vector<Answer> answers, const std::vector<ProposedGroup>& madeByHand)
{
    std::set<QuoteId> kept;
    for (const ProposedGroup& group : madeByHand)
        kept.insert(group.answers.begin(), group.answers.end());
    answers.erase(std::remove_if(answers.begin(),
                      answers.end(),
                      [&kept](const Answer& answer) { return kept.count(answer.id) > 0; }),
        answers.end());
    return answers;
}

// How many groups there are after every number of steps, from none to all.
std::vector<std::size_t> groupsAfterSteps(const std::vector<Joining>& made, std::size_t answers)
{
    struct Set {
        std::size_t answers = 1;
        bool held = false;
        [[nodiscard]] std::size_t isGroup() const
        {
            return held || answers >= leastAnswersInGroup ? 1 : 0;
        }
    };
    std::vector<Set> sets(answers);
    std::vector<std::size_t> counts{0};
    for (const Joining& joining : made) {
        Set& kept = sets[joining.kept];
        const Set& joined = sets[joining.joined];
        const std::size_t before = kept.isGroup() + joined.isGroup();
        kept.answers += joined.answers;
        kept.held = kept.held || joined.held || joining.held;
        counts.push_back(counts.back() + kept.isGroup() - before);
    }
    return counts;
}

std::size_t apart(std::size_t one, std::size_t other)
{
    return one > other ? one - other : other - one;
}

// Steps after which there are as nearly `groups` as can be, close to the usual number of steps. The
// first `held` are always made.
std::size_t stepsFor(
    std::size_t groups, std::size_t held, std::size_t usual, const std::vector<std::size_t>& counts)
{
    std::size_t best = usual;
    for (std::size_t steps = held; steps < counts.size(); ++steps) {
        const std::size_t off = apart(counts[steps], groups);
        const std::size_t bestOff = apart(counts[best], groups);
        if (off < bestOff || (off == bestOff && apart(steps, usual) < apart(best, usual)))
            best = steps;
    }
    return best;
}

std::vector<Joining> stepsTaken(
    const std::vector<Answer>& answers, const HeldPairs& held, const GroupingWish& wish)
{
    // Steps past the least likeness are only for who wants fewer or more groups.
    constexpr double anySharing = 1e-6;
    const double least = wish.groups ? anySharing : wish.leastLikeness;
    std::vector<Joining> made = joinings(likenessOf(answers), least, wish.mostAnswers, held);
    if (!wish.groups)
        return made;
    const auto byHand = std::size_t(
        std::count_if(made.begin(), made.end(), [](const Joining& one) { return one.held; }));
    const auto firstBelow = std::find_if(made.begin(), made.end(), [&wish](const Joining& joining) {
        return !joining.held && joining.likeness < wish.leastLikeness;
    });
    const auto usual = std::size_t(firstBelow - made.begin());
    made.resize(stepsFor(*wish.groups, byHand, usual, groupsAfterSteps(made, answers.size())));
    return made;
}

} // namespace

HeldPairs heldPairs(const std::vector<KeptPair>& pairs, const std::vector<Answer>& answers)
{
    std::map<QuoteId, std::size_t> places;
    for (std::size_t at = 0; at < answers.size(); ++at)
        places[answers[at].id] = at;
    HeldPairs held;
    for (const KeptPair& pair : pairs) {
        const auto one = places.find(pair.answer);
        const auto other = places.find(pair.other);
        if (one != places.end() && other != places.end() && one != other)
            (pair.apart ? held.apart : held.together).emplace_back(one->second, other->second);
    }
    return held;
}

Proposal proposeGroups(std::vector<Answer> answers,
    const std::vector<ProposedGroup>& madeByHand,
    const std::vector<KeptPair>& pairs,
    const GroupingWish& wish)
{
    answers = withoutThoseOf(std::move(answers), madeByHand);
    std::sort(answers.begin(), answers.end(), [](const Answer& one, const Answer& other) {
        return one.id < other.id;
    });
    const std::vector<Joining> made = stepsTaken(answers, heldPairs(pairs, answers), wish);
    std::vector<bool> held(answers.size(), false);
    for (const Joining& joining : made)
        held[joining.kept] = held[joining.kept] || joining.held;
    Proposal proposal;
    for (const std::vector<std::size_t>& set : setsAfter(made, made.size(), answers.size())) {
        ProposedGroup group;
        bool byHand = false;
        for (const std::size_t member : set) {
            group.answers.push_back(answers[member].id);
            byHand = byHand || held[member];
        }
        if (byHand || set.size() >= leastAnswersInGroup)
            proposal.groups.push_back(group);
        else
            proposal.onTheirOwn.insert(
                proposal.onTheirOwn.end(), group.answers.begin(), group.answers.end());
    }
    std::sort(proposal.onTheirOwn.begin(), proposal.onTheirOwn.end());
    return proposal;
}

} // namespace wainscot
