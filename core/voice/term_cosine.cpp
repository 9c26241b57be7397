#include "core/voice/term_cosine.h"

#include <algorithm>
#include <cmath>

namespace wainscot {
namespace {

struct Occurrence {
    Term term;
    std::uint32_t answer;
    friend bool operator<(const Occurrence& a, const Occurrence& b)
    {
        return a.term < b.term || (a.term == b.term && a.answer < b.answer);
    }
    friend bool operator==(const Occurrence&, const Occurrence&) = default;
};

struct Share {
    std::uint32_t answer;
    double weight;
};

// All terms one after the other; for each the answers it occurs in, with their weights.
struct Shares {
    std::vector<Share> all;
    std::vector<std::size_t> ends; // of each term, in `all`
};

std::vector<Occurrence> sortedOccurrences(const std::vector<std::vector<Term>>& answers)
{
    std::size_t count = 0;
    for (const std::vector<Term>& terms : answers)
        count += terms.size();
    std::vector<Occurrence> occurrences;
    occurrences.reserve(count);
    for (std::uint32_t answer = 0; answer < answers.size(); ++answer) {
        for (const Term term : answers[answer])
            occurrences.push_back({term, answer});
    }
    std::sort(occurrences.begin(), occurrences.end());
    return occurrences;
}

Shares weighedShares(const std::vector<Occurrence>& occurrences, std::size_t answers)
{
    Shares shares;
    shares.all.reserve(occurrences.size());
    for (std::size_t at = 0; at < occurrences.size();) {
        const Term term = occurrences[at].term;
        const std::size_t first = shares.all.size();
        while (at < occurrences.size() && occurrences[at].term == term) {
            const Occurrence one = occurrences[at];
            std::size_t count = 0;
            for (; at < occurrences.size() && occurrences[at] == one; ++at)
                ++count;
            shares.all.push_back({one.answer, count == 1 ? 1 : 1 + std::log(double(count))});
        }
        const std::size_t found = shares.all.size() - first;
        const double rarity = std::log((1.0 + double(answers)) / (1.0 + double(found))) + 1;
        for (std::size_t share = first; share < shares.all.size(); ++share)
            shares.all[share].weight *= rarity;
        shares.ends.push_back(shares.all.size());
    }
    return shares;
}

void makeRowsOfLengthOne(Shares& shares, std::size_t answers)
{
    std::vector<double> lengths(answers, 0);
    for (const Share& share : shares.all)
        lengths[share.answer] += share.weight * share.weight;
    for (double& length : lengths)
        length = std::sqrt(length);
    for (Share& share : shares.all)
        share.weight /= lengths[share.answer];
}

} // namespace

LikenessTable cosineOfTerms(const std::vector<std::vector<Term>>& answers)
{
    Shares shares = weighedShares(sortedOccurrences(answers), answers.size());
    makeRowsOfLengthOne(shares, answers.size());
    LikenessTable table(answers.size());
    std::size_t begin = 0;
    for (const std::size_t end : shares.ends) {
        for (std::size_t one = begin; one < end; ++one) {
            for (std::size_t other = one; other < end; ++other)
                table.add(shares.all[one].answer,
                    shares.all[other].answer,
                    shares.all[one].weight * shares.all[other].weight);
        }
        begin = end;
    }
    for (std::size_t row = 0; row < table.size(); ++row) {
        for (std::size_t column = row + 1; column < table.size(); ++column)
            table.set(row, column, table.at(row, column));
    }
    return table;
}

} // namespace wainscot
