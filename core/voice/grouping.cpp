#include "core/voice/grouping.h"

#include <algorithm>
#include <optional>
#include <set>

namespace wainscot {
namespace {

constexpr std::size_t leastAnswersInGroup = 3;

// The sets of answers while they are being put together.
class Sets {
public:
    explicit Sets(const LikenessTable& likeness)
        : m_likeness(likeness)
        , m_sizes(likeness.size(), 1)
    {
    }

    [[nodiscard]] std::optional<Joining> mostAlike(const GroupingWish& wish) const
    {
        std::optional<Joining> best;
        for (std::size_t one = 0; one < m_sizes.size(); ++one) {
            for (std::size_t other = one + 1; m_sizes[one] > 0 && other < m_sizes.size(); ++other) {
                const double likeness = m_likeness.at(one, other);
                if (m_sizes[other] > 0 && m_sizes[one] + m_sizes[other] <= wish.mostAnswers
                    && likeness >= wish.leastLikeness && (!best || likeness > best->likeness))
                    best = Joining{one, other, likeness};
            }
        }
        return best;
    }

    void join(const Joining& joining)
    {
        const auto keptSize = double(m_sizes[joining.kept]);
        const auto joinedSize = double(m_sizes[joining.joined]);
        for (std::size_t third = 0; third < m_sizes.size(); ++third) {
            const double before = m_likeness.at(joining.kept, third);
            const double mean =
                (keptSize * before + joinedSize * m_likeness.at(joining.joined, third))
                / (keptSize + joinedSize);
            m_likeness.add(joining.kept, third, mean - before);
            if (third != joining.kept)
                m_likeness.add(third, joining.kept, mean - m_likeness.at(third, joining.kept));
        }
        m_sizes[joining.kept] += m_sizes[joining.joined];
        m_sizes[joining.joined] = 0;
    }

private:
    LikenessTable m_likeness; // between the sets' lowest members: the sets' mean
    std::vector<std::size_t> m_sizes; // 0: joined to another
};

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

} // namespace

std::vector<Joining> joinings(const LikenessTable& likeness, const GroupingWish& wish)
{
    Sets sets(likeness);
    std::vector<Joining> made;
    while (const std::optional<Joining> next = sets.mostAlike(wish)) {
        sets.join(*next);
        made.push_back(*next);
    }
    return made;
}

Proposal proposeGroups(std::vector<Answer> answers,
    const std::vector<ProposedGroup>& madeByHand,
    const GroupingWish& wish)
{
    answers = withoutThoseOf(std::move(answers), madeByHand);
    std::sort(answers.begin(), answers.end(), [](const Answer& one, const Answer& other) {
        return one.id < other.id;
    });
    std::vector<QString> words;
    std::vector<std::vector<QuoteId>> sets;
    for (const Answer& answer : answers) {
        words.push_back(answer.words);
        sets.push_back({answer.id});
    }
    for (const Joining& joining : joinings(likenessOf(words), wish)) {
        std::vector<QuoteId>& joined = sets[joining.joined];
        sets[joining.kept].insert(sets[joining.kept].end(), joined.begin(), joined.end());
        joined.clear();
    }
    Proposal proposal;
    for (std::vector<QuoteId>& set : sets) {
        std::sort(set.begin(), set.end());
        if (set.size() >= leastAnswersInGroup)
            proposal.groups.push_back({set});
        else
            proposal.onTheirOwn.insert(proposal.onTheirOwn.end(), set.begin(), set.end());
    }
    std::sort(proposal.onTheirOwn.begin(), proposal.onTheirOwn.end());
    return proposal;
}

} // namespace wainscot
