#include "core/voice/cover_search.h"

#include <algorithm>

namespace wainscot::cover {

namespace {

// Found by trying on seeded problems; hardly anything depends on them.
constexpr int kGreedyDepth = 4;
constexpr int kStepsAtRoot = 600;
constexpr int kStepsNearRoot = 60;
constexpr int kStepsDeep = 18;

class Search {
public:
    Search(const Model& model, const Limits& limits)
        : m_model(model)
        , m_limits(limits)
        , m_bestValue(model.leastValue() - 1) // whatever keeps the conditions is better
        , m_unexplored(m_bestValue)
    {
    }

    Answer run(const std::vector<int>& start)
    {
        Prices prices;
        prices.rows.assign(static_cast<std::size_t>(m_model.rows()), 0);
        prices.area = m_model.meanValue() * kUnit / m_model.meanArea();
        const Node root(m_model);
        if (!start.empty())
            keep(greedyChoice(m_model, root, prices, start));
        keep(greedyChoice(m_model, root, prices));
        explore(root, prices, 0);
        Answer answer;
        answer.best = m_best;
        answer.bound = std::max(m_bestValue, m_unexplored);
        answer.proven = !m_stopped;
        answer.cancelled = m_cancelled;
        answer.nodes = m_nodes;
        return answer;
    }

private:
    void keep(const std::optional<Choice>& choice)
    {
        if (choice && choice->value > m_bestValue) {
            m_bestValue = choice->value;
            m_best = choice;
        }
    }

    bool mustStop()
    {
        m_cancelled = m_cancelled || (m_limits.cancel != nullptr && m_limits.cancel->load());
        m_stopped = m_stopped || m_cancelled || m_nodes >= m_limits.nodes;
        return m_stopped;
    }

    static int stepsAt(int depth)
    {
        if (depth == 0)
            return kStepsAtRoot;
        return depth < 3 ? kStepsNearRoot : kStepsDeep;
    }

    // By value: each branch has its own decisions and its own prices.
    void explore(Node node, Prices prices, int depth)
    {
        ++m_nodes;
        if (!node.propagate())
            return;
        Relaxation relaxation(m_model, node);
        Relaxation::Search how;
        how.steps = stepsAt(depth);
        how.best = [this] { return m_bestValue; };
        if (depth < kGreedyDepth)
            how.everyTwentySteps = [&](const Prices& now) {
                keep(greedyChoice(m_model, node, now));
            };
        const Amount bound = relaxation.improve(prices, how);
        if (wholeValue(bound) <= m_bestValue)
            return;
        m_stopped = m_stopped || (m_limits.onlyIfFoundSoon && !m_best);
        const std::vector<Relaxation::Opinion> opinions = relaxation.opinions();
        decideTheClear(node, opinions, bound);
        const Relaxation::Opinion* branch = leastSure(node, opinions);
        if (branch == nullptr) {
            keepDecided(node);
            return;
        }
        for (const bool taken : {branch->chosen, !branch->chosen}) {
            if (mustStop()) {
                m_unexplored = std::max(m_unexplored, wholeValue(bound));
                return;
            }
            Node child = node;
            if (taken)
                child.take(branch->item);
            else
                child.drop(branch->item);
            explore(std::move(child), prices, depth + 1);
        }
    }

    // Decides items whose other fate cannot lead to anything better than the best known.
    void decideTheClear(
        Node& node, const std::vector<Relaxation::Opinion>& opinions, Amount bound) const
    {
        for (const Relaxation::Opinion& one : opinions) {
            if (!node.isOpen(one.item) || wholeValue(bound - one.loss) > m_bestValue)
                continue;
            if (one.chosen)
                node.take(one.item);
            else
                node.drop(one.item);
        }
    }

    // The open item about which the prices say least; null = all is decided.
    [[nodiscard]] const Relaxation::Opinion* leastSure(
        const Node& node, const std::vector<Relaxation::Opinion>& opinions) const
    {
        const Relaxation::Opinion* found = nullptr;
        for (const Relaxation::Opinion& one : opinions) {
            if (node.isOpen(one.item) && (found == nullptr || isLessSure(one, *found)))
                found = &one;
        }
        return found;
    }

    // Gain for the area, compared crosswise.
    [[nodiscard]] bool isLessSure(const Relaxation::Opinion& a, const Relaxation::Opinion& b) const
    {
        const auto size = [](Amount gain) { return static_cast<double>(gain < 0 ? -gain : gain); };
        const auto areaOf = [&](const Relaxation::Opinion& one) {
            return static_cast<double>(std::max<Amount>(1, m_model.item(one.item).area));
        };
        return size(a.gain) * areaOf(b) < size(b.gain) * areaOf(a);
    }

    // All is decided: a choice if it keeps the conditions.
    void keepDecided(Node& node)
    {
        if (!node.propagate())
            return;
        keep(Choice{node.taken(), node.value()});
    }

    const Model& m_model;
    const Limits& m_limits;
    std::optional<Choice> m_best;
    Amount m_bestValue = 0;
    Amount m_unexplored; // bound of what was not looked at when the limit struck
    Amount m_nodes = 0;
    bool m_stopped = false;
    bool m_cancelled = false;
};

} // namespace

Answer search(const Model& model, const Limits& limits, const std::vector<int>& start)
{
    return Search(model, limits).run(start);
}

} // namespace wainscot::cover
