#include "core/voice/regrouping.h"

#include <algorithm>
#include <map>
#include <set>

namespace wainscot {
namespace {

constexpr std::size_t none = std::size_t(-1);

// What a hand has said of one newcomer and the groups.
struct Wishes {
    std::optional<std::size_t> with;
    std::set<std::size_t> apart;
};

std::vector<Wishes> wishesOf(
    const HeldPairs& held, const std::vector<std::size_t>& groupOf, std::size_t answers)
{
    std::vector<Wishes> wishes(answers);
    const auto bothWays = [&groupOf](const auto& pairs, const auto& take) {
        for (const auto& [one, other] : pairs) {
            if (groupOf[other] != none)
                take(one, groupOf[other]);
            if (groupOf[one] != none)
                take(other, groupOf[one]);
        }
    };
    bothWays(held.apart,
        [&wishes](std::size_t at, std::size_t group) { wishes[at].apart.insert(group); });
    bothWays(held.together, [&wishes](std::size_t at, std::size_t group) {
        if (wishes[at].apart.count(group) == 0)
            wishes[at].with = std::min(group, wishes[at].with.value_or(group));
    });
    return wishes;
}

std::optional<std::size_t> mostAlikeGroup(const LikenessTable& likeness,
    std::size_t newcomer,
    const std::vector<std::vector<std::size_t>>& groups,
    const Wishes& wishes,
    double leastLikeness)
{
    if (wishes.with)
        return wishes.with;
    std::optional<std::size_t> best;
    double most = leastLikeness;
    for (std::size_t group = 0; group < groups.size(); ++group) {
        if (groups[group].empty() || wishes.apart.count(group) > 0)
            continue;
        double sum = 0;
        for (const std::size_t member : groups[group])
            sum += likeness.at(newcomer, member);
        const double mean = sum / double(groups[group].size());
        if (best ? mean > most : mean >= most) {
            best = group;
            most = mean;
        }
    }
    return best;
}

std::size_t inCommon(const ProposedGroup& one, const ProposedGroup& other)
{
    return std::size_t(
        std::count_if(one.answers.begin(), one.answers.end(), [&other](const QuoteId answer) {
            return std::find(other.answers.begin(), other.answers.end(), answer)
                != other.answers.end();
        }));
}

} // namespace

std::vector<Newcomer> placeNewcomers(std::vector<Answer> answers,
    const std::vector<ProposedGroup>& groups,
    const std::vector<KeptPair>& pairs,
    const GroupingWish& wish)
{
    std::sort(answers.begin(), answers.end(), [](const Answer& one, const Answer& other) {
        return one.id < other.id;
    });
    std::map<QuoteId, std::size_t> places;
    for (std::size_t at = 0; at < answers.size(); ++at)
        places[answers[at].id] = at;
    std::vector<std::vector<std::size_t>> members(groups.size());
    std::vector<std::size_t> groupOf(answers.size(), none);
    for (std::size_t group = 0; group < groups.size(); ++group) {
        for (const QuoteId answer : groups[group].answers) {
            members[group].push_back(places.at(answer));
            groupOf[places.at(answer)] = group;
        }
    }
    const std::vector<Wishes> wishes = wishesOf(heldPairs(pairs, answers), groupOf, answers.size());
    const LikenessTable likeness = likenessOf(answers);
    std::vector<Newcomer> placed;
    for (std::size_t at = 0; at < answers.size(); ++at) {
        if (groupOf[at] == none) {
            placed.push_back({answers[at].id,
                mostAlikeGroup(likeness, at, members, wishes[at], wish.leastLikeness)});
        }
    }
    return placed;
}

std::vector<std::optional<std::size_t>> goesOnFrom(
    const std::vector<ProposedGroup>& newGroups, const std::vector<ProposedGroup>& oldGroups)
{
    struct Pair {
        std::size_t common;
        std::size_t newGroup;
        std::size_t oldGroup;
    };
    std::vector<Pair> pairs;
    for (std::size_t at = 0; at < newGroups.size(); ++at) {
        for (std::size_t old = 0; old < oldGroups.size(); ++old) {
            if (const std::size_t common = inCommon(newGroups[at], oldGroups[old]))
                pairs.push_back({common, at, old});
        }
    }
    std::stable_sort(pairs.begin(), pairs.end(), [](const Pair& one, const Pair& other) {
        return one.common > other.common;
    });
    std::vector<std::optional<std::size_t>> from(newGroups.size());
    std::vector<bool> taken(oldGroups.size(), false);
    for (const Pair& pair : pairs) {
        if (!from[pair.newGroup] && !taken[pair.oldGroup]) {
            from[pair.newGroup] = pair.oldGroup;
            taken[pair.oldGroup] = true;
        }
    }
    return from;
}

} // namespace wainscot
