#include "core/voice/selection.h"

#include "core/voice/cover_search.h"

#include <algorithm>
#include <map>
#include <numeric>
#include <set>

namespace wainscot {

namespace {

using cover::Amount;

enum class Claim { Child, GroupWords, GroupPicture };

// Something that has to be on the wall, and the candidates that would do.
struct Row {
    Claim claim = Claim::Child;
    ChildId child;
    int group = 0;
    std::vector<std::size_t> candidates;
    Amount weight = 0; // of leaving it out
};

class WallSelector {
public:
    WallSelector(const SelectionProblem& problem, const SelectionLimits& limits)
        : m_problem(problem)
        , m_limits{limits.nodes, limits.cancel}
    {
        m_set.proven = true;
        for (const Candidate& candidate : problem.candidates)
            m_everything += candidate.areaCm2;
        std::map<int, int> sets;
        for (const Candidate& candidate : problem.candidates) {
            if (candidate.burst > 0)
                sets.try_emplace(candidate.burst, static_cast<int>(sets.size()));
            m_rivals.push_back(candidate.burst > 0 ? sets.at(candidate.burst) : -1);
        }
        m_rivalSets = static_cast<int>(sets.size());
    }

    SelectedSet select()
    {
        std::vector<Row> rows = allRows();
        cover::Limits soon = m_limits;
        soon.onlyIfFoundSoon = true;
        cover::Answer best = bestSet(rows, {}, soon);
        if (!best.best) {
            m_set.proven = true;
            const std::vector<int> start = makeFeasible(rows);
            best = bestSet(rows, start, m_limits);
        }
        m_set.mostWorth = best.bound;
        if (best.best) {
            m_set.worth = best.best->value;
            for (const int item : best.best->items)
                m_set.chosen.push_back(candidate(item).id);
        }
        std::sort(m_set.chosen.begin(), m_set.chosen.end());
        return m_set;
    }

private:
    [[nodiscard]] const Candidate& candidate(int item) const
    {
        return m_problem.candidates[static_cast<std::size_t>(item)];
    }

    // Leaves rows out until the rest can be covered in the room; answers pieces that do it.
    std::vector<int> makeFeasible(std::vector<Row>& rows)
    {
        const std::vector<Row> all = rows;
        cover::Answer least = leastRoom(rows);
        if (!least.best) {
            // Bursts alone stand in the way.
            for (const Row& row : keepWhatFits(rows, m_everything)) {
                m_burstsForbid.insert(row.child);
                tell(row);
            }
            least = leastRoom(rows);
        }
        if (least.best && -least.best->value <= m_problem.roomCm2)
            return least.best->items;
        m_set.leastCm2 = least.best ? -least.best->value : m_everything;
        m_set.missingCm2 = m_set.leastCm2 - m_problem.roomCm2;
        m_set.unshown.clear();
        std::erase_if(m_set.unheard,
            [](const UnheardChild& one) { return one.why == WhyUnheard::NearEqual; });
        rows = all;
        for (const Row& row : keepWhatFits(rows, m_problem.roomCm2))
            tell(row);
        return m_lastKept;
    }

    // Children without a voice are told at once and have no row.
    std::vector<Row> allRows()
    {
        std::vector<Row> rows;
        for (const ChildId child : m_problem.children) {
            Row row{Claim::Child, child, 0, voicesOf(child), 0};
            if (row.candidates.empty())
                m_set.unheard.push_back({child, WhyUnheard::NoVoice, 0});
            else
                rows.push_back(row);
        }
        for (const bool words : {true, false}) {
            std::map<int, std::vector<std::size_t>> groups;
            for (std::size_t at = 0; at < m_problem.candidates.size(); ++at) {
                const Candidate& one = m_problem.candidates[at];
                if (one.group > 0 && (one.kind == CandidateKind::Words) == words)
                    groups[one.group].push_back(at);
            }
            const Claim claim = words ? Claim::GroupWords : Claim::GroupPicture;
            for (const auto& [group, candidates] : groups)
                rows.push_back({claim, {}, group, candidates, 1});
        }
        return rows;
    }

    [[nodiscard]] std::vector<std::size_t> voicesOf(ChildId child) const
    {
        std::vector<std::size_t> own;
        for (std::size_t at = 0; at < m_problem.candidates.size(); ++at) {
            const Candidate& one = m_problem.candidates[at];
            const bool speaks = one.kind != CandidateKind::Photo
                && std::find(one.voices.begin(), one.voices.end(), child) != one.voices.end();
            if (speaks)
                own.push_back(at);
        }
        return own;
    }

    // The candidates as items of a programme with these rows.
    template <class ValueOf>
    [[nodiscard]] std::vector<cover::Item> itemsFor(
        const std::vector<Row>& rows, const ValueOf& valueOf) const
    {
        std::vector<cover::Item> items;
        for (std::size_t at = 0; at < m_problem.candidates.size(); ++at) {
            const Candidate& one = m_problem.candidates[at];
            items.push_back({valueOf(one), one.areaCm2, {}, m_rivals[at]});
        }
        for (std::size_t row = 0; row < rows.size(); ++row) {
            for (const std::size_t at : rows[row].candidates)
                items[at].rows.push_back(static_cast<int>(row));
        }
        return items;
    }

    cover::Answer solved(const std::vector<cover::Item>& items,
        const std::vector<Row>& rows,
        Amount room,
        const std::vector<int>& start,
        const cover::Limits& limits)
    {
        const cover::Model model(items, static_cast<int>(rows.size()), m_rivalSets, room);
        cover::Answer answer = cover::search(model, limits, start);
        m_set.nodes += answer.nodes;
        m_set.proven = m_set.proven && answer.proven;
        m_set.cancelled = m_set.cancelled || answer.cancelled;
        return answer;
    }

    cover::Answer bestSet(
        const std::vector<Row>& rows, const std::vector<int>& start, const cover::Limits& limits)
    {
        const auto worth = [](const Candidate& one) { return one.worth; };
        return solved(itemsFor(rows, worth), rows, m_problem.roomCm2, start, limits);
    }

    cover::Answer leastRoom(const std::vector<Row>& rows)
    {
        const auto cost = [](const Candidate& one) { return -one.areaCm2; };
        return solved(itemsFor(rows, cost), rows, m_everything, {}, m_limits);
    }

    // Reduces the rows to what fits the room: as many children as possible, with them as many
    // groups' words, then pictures, then the most worth. Answers the rows that went.
    std::vector<Row> keepWhatFits(std::vector<Row>& rows, Amount room)
    {
        weigh(rows);
        std::vector<Row> gone;
        dropRows(rows, leftOut(rows, room), gone);
        return gone;
    }

    // A row of one kind outweighs all rows of the next kind and everything pieces are worth.
    void weigh(std::vector<Row>& rows) const
    {
        Amount weight = 1;
        for (const Candidate& one : m_problem.candidates)
            weight += one.worth;
        for (const Claim claim : {Claim::GroupPicture, Claim::GroupWords, Claim::Child}) {
            Amount number = 1;
            for (Row& row : rows) {
                if (row.claim == claim) {
                    row.weight = weight;
                    ++number;
                }
            }
            weight *= number;
        }
    }

    // The rows that are better left uncovered. A stand-in that takes no room and costs the row's
    // weight covers each of them.
    std::set<std::size_t> leftOut(const std::vector<Row>& rows, Amount room)
    {
        std::vector<cover::Item> items =
            itemsFor(rows, [](const Candidate& one) { return one.worth; });
        const std::size_t pieces = items.size();
        for (std::size_t row = 0; row < rows.size(); ++row)
            items.push_back({-rows[row].weight, 0, {static_cast<int>(row)}, -1});
        const cover::Answer answer = solved(items, rows, room, m_lastKept, m_limits);
        std::set<std::size_t> left;
        m_lastKept.clear();
        const std::vector<int> chosen = answer.best ? answer.best->items : std::vector<int>();
        for (const int item : chosen) {
            const auto at = static_cast<std::size_t>(item);
            if (at >= pieces)
                left.insert(at - pieces);
            else
                m_lastKept.push_back(item);
        }
        return left;
    }

    static void dropRows(
        std::vector<Row>& rows, const std::set<std::size_t>& left, std::vector<Row>& gone)
    {
        std::vector<Row> kept;
        for (std::size_t row = 0; row < rows.size(); ++row)
            (left.count(row) > 0 ? gone : kept).push_back(rows[row]);
        rows = std::move(kept);
    }

    void tell(const Row& row)
    {
        const WhyUnheard why =
            m_burstsForbid.count(row.child) > 0 ? WhyUnheard::NearEqual : WhyUnheard::NoRoom;
        if (row.claim == Claim::Child)
            m_set.unheard.push_back({row.child, why, leastOf(row)});
        else
            m_set.unshown.push_back({row.group, row.claim == Claim::GroupWords});
    }

    [[nodiscard]] Amount leastOf(const Row& row) const
    {
        Amount least = m_everything;
        for (const std::size_t at : row.candidates)
            least = std::min(least, m_problem.candidates[at].areaCm2);
        return least;
    }

    const SelectionProblem& m_problem;
    cover::Limits m_limits;
    SelectedSet m_set;
    std::vector<int> m_rivals; // by candidate
    std::set<ChildId> m_burstsForbid;
    int m_rivalSets = 0;
    Amount m_everything = 0; // room for all candidates
    std::vector<int> m_lastKept; // pieces that keep the rows of the last reduction
};

} // namespace

SelectedSet selectForWall(const SelectionProblem& problem, const SelectionLimits& limits)
{
    return WallSelector(problem, limits).select();
}

} // namespace wainscot
