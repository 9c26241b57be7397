#include "core/voice/joining.h"

#include <algorithm>
#include <numeric>
#include <optional>

namespace wainscot {
namespace {

// The sets of answers while they are being put together. For each set its best partner among the
// later ones is remembered, so that a step looks at every set once and not at every pair.
class Sets {
public:
    Sets(const LikenessTable& likeness,
        double leastLikeness,
        std::size_t mostAnswers,
        const HeldPairs& held)
        : m_likeness(likeness)
        , m_least(leastLikeness)
        , m_most(mostAnswers)
        , m_sizes(likeness.size(), 1)
        , m_apart(held.apart.empty() ? 0 : likeness.size() * likeness.size(), false)
        , m_best(likeness.size())
    {
        for (const auto& [one, other] : held.apart)
            setApart(one, other);
        for (std::size_t set = 0; set < m_sizes.size(); ++set)
            findBest(set);
    }

    [[nodiscard]] std::optional<Joining> mostAlike() const
    {
        std::optional<Joining> most;
        for (std::size_t set = 0; set < m_sizes.size(); ++set) {
            const Partner& best = m_best[set];
            if (best.exists && (!most || best.likeness > most->likeness))
                most = Joining{set, best.other, best.likeness};
        }
        return most;
    }

    void join(const Joining& joining)
    {
        const auto keptSize = double(m_sizes[joining.kept]);
        const auto joinedSize = double(m_sizes[joining.joined]);
        for (std::size_t third = 0; third < m_sizes.size(); ++third) {
            if (m_sizes[third] > 0 && third != joining.kept && third != joining.joined) {
                const double mean = (keptSize * m_likeness.at(joining.kept, third)
                                        + joinedSize * m_likeness.at(joining.joined, third))
                    / (keptSize + joinedSize);
                m_likeness.set(joining.kept, third, mean);
            }
        }
        for (std::size_t third = 0; !m_apart.empty() && third < m_sizes.size(); ++third) {
            if (areApart(joining.joined, third))
                setApart(joining.kept, third);
        }
        m_sizes[joining.kept] += m_sizes[joining.joined];
        m_sizes[joining.joined] = 0;
        for (std::size_t set = 0; set <= joining.joined; ++set)
            refresh(set, joining);
        m_best[joining.joined].exists = false;
    }

    [[nodiscard]] bool areApart(std::size_t set, std::size_t other) const
    {
        return !m_apart.empty() && m_apart[set * m_sizes.size() + other];
    }

    [[nodiscard]] double likeness(std::size_t set, std::size_t other) const
    {
        return m_likeness.at(set, other);
    }

private:
    struct Partner {
        bool exists = false;
        std::size_t other = 0;
        double likeness = 0;
    };

    [[nodiscard]] bool mayJoin(std::size_t set, std::size_t other) const
    {
        return m_sizes[set] > 0 && m_sizes[other] > 0 && m_sizes[set] + m_sizes[other] <= m_most
            && m_likeness.at(set, other) >= m_least && !areApart(set, other);
    }

    void setApart(std::size_t set, std::size_t other)
    {
        m_apart[set * m_sizes.size() + other] = true;
        m_apart[other * m_sizes.size() + set] = true;
    }

    // Takes `other` if it is more alike, or as alike and lower.
    void offer(std::size_t set, std::size_t other)
    {
        Partner& best = m_best[set];
        const double likeness = m_likeness.at(set, other);
        if (mayJoin(set, other)
            && (!best.exists || likeness > best.likeness
                || (likeness == best.likeness && other < best.other)))
            best = {true, other, likeness};
    }

    void findBest(std::size_t set)
    {
        m_best[set].exists = false;
        for (std::size_t other = set + 1; other < m_sizes.size(); ++other)
            offer(set, other);
    }

    void refresh(std::size_t set, const Joining& joining)
    {
        const Partner& best = m_best[set];
        const bool touched = set == joining.kept
            || (best.exists && (best.other == joining.kept || best.other == joining.joined));
        if (touched)
            findBest(set);
        else if (set < joining.kept)
            offer(set, joining.kept);
    }

    LikenessTable m_likeness; // between the sets' lowest members: the sets' mean
    double m_least;
    std::size_t m_most;
    std::vector<std::size_t> m_sizes; // 0: joined to another
    std::vector<bool> m_apart; // of each set and each other; empty = none are held apart
    std::vector<Partner> m_best;
};

// In an order that does not depend on how the pairs were given.
std::vector<Joining> joinHeld(Sets& sets, const HeldPairs& held, std::size_t answers)
{
    std::vector<std::pair<std::size_t, std::size_t>> pairs;
    pairs.reserve(held.together.size());
    for (const auto& [one, other] : held.together)
        pairs.emplace_back(std::min(one, other), std::max(one, other));
    std::sort(pairs.begin(), pairs.end());
    std::vector<std::size_t> setOf(answers);
    std::iota(setOf.begin(), setOf.end(), std::size_t(0));
    std::vector<Joining> made;
    for (const auto& [one, other] : pairs) {
        const std::size_t kept = std::min(setOf[one], setOf[other]);
        const std::size_t joined = std::max(setOf[one], setOf[other]);
        if (kept == joined || sets.areApart(kept, joined))
            continue;
        made.push_back({kept, joined, sets.likeness(kept, joined), true});
        sets.join(made.back());
        std::replace(setOf.begin(), setOf.end(), joined, kept);
    }
    return made;
}

} // namespace

std::vector<Joining> joinings(const LikenessTable& likeness,
    double leastLikeness,
    std::size_t mostAnswers,
    const HeldPairs& held)
{
    Sets sets(likeness, leastLikeness, mostAnswers, held);
    std::vector<Joining> made = joinHeld(sets, held, likeness.size());
    while (const std::optional<Joining> next = sets.mostAlike()) {
        sets.join(*next);
        made.push_back(*next);
    }
    return made;
}

std::vector<std::vector<std::size_t>> setsAfter(
    const std::vector<Joining>& made, std::size_t steps, std::size_t answers)
{
    std::vector<std::vector<std::size_t>> sets(answers);
    for (std::size_t answer = 0; answer < answers; ++answer)
        sets[answer].push_back(answer);
    for (std::size_t step = 0; step < steps; ++step) {
        std::vector<std::size_t>& kept = sets[made[step].kept];
        std::vector<std::size_t>& joined = sets[made[step].joined];
        kept.insert(kept.end(), joined.begin(), joined.end());
        joined.clear();
    }
    sets.erase(std::remove_if(sets.begin(),
                   sets.end(),
                   [](const std::vector<std::size_t>& set) { return set.empty(); }),
        sets.end());
    for (std::vector<std::size_t>& set : sets)
        std::sort(set.begin(), set.end());
    return sets;
}

} // namespace wainscot
