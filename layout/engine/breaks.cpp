#include "layout/engine/breaks.h"

#include <algorithm>
#include <limits>

namespace wainscot::engine {

namespace {

constexpr double kCannotBe = std::numeric_limits<double>::infinity();

struct Sequence {
    double cost = kCannotBe;
    std::vector<int> begins; // and the count of blocks at the end
};

class LazyBreaks {
public:
    explicit LazyBreaks(const BreakProblem& problem)
        : m_problem(problem)
        , m_side(std::size_t(problem.blocks) + 1)
        , m_costs(std::size_t(problem.panels) * m_side * m_side, kCannotBe)
        , m_known(m_costs.size(), 0)
    {
        for (int panel = 0; panel < problem.panels; ++panel)
            for (int first = 0; first <= problem.blocks; ++first)
                for (int last = first; last <= problem.blocks; ++last)
                    m_costs[at(panel, first, last)] = problem.least(panel, first, last);
    }

    std::optional<Breaks> run()
    {
        int laidOut = 0;
        for (;;) {
            const Sequence bound = shortest(false);
            if (bound.cost >= kCannotBe)
                return std::nullopt;
            const int panel = firstUnknown(bound);
            const bool enough = m_problem.most > 0 && laidOut >= m_problem.most;
            if (panel < 0 || enough) {
                const Sequence found = panel < 0 ? bound : shortest(true);
                if (found.cost >= kCannotBe)
                    return std::nullopt;
                return Breaks{{found.begins.begin(), found.begins.end() - 1},
                    found.cost,
                    bound.cost,
                    laidOut};
            }
            layOut(panel, bound.begins[std::size_t(panel)], bound.begins[std::size_t(panel) + 1]);
            ++laidOut;
        }
    }

private:
    [[nodiscard]] std::size_t at(int panel, int first, int last) const
    {
        return (std::size_t(panel) * m_side + std::size_t(first)) * m_side + std::size_t(last);
    }

    void layOut(int panel, int first, int last)
    {
        const double cost = m_problem.cost(panel, first, last);
        m_costs[at(panel, first, last)] = cost;
        m_known[at(panel, first, last)] = 1;
        for (int i = 0; i <= first && cost >= kCannotBe; ++i)
            for (int j = last; j <= m_problem.blocks; ++j)
                m_costs[at(panel, i, j)] = kCannotBe;
    }

    [[nodiscard]] int firstUnknown(const Sequence& sequence) const
    {
        for (int panel = 0; panel < m_problem.panels; ++panel) {
            const auto k = std::size_t(panel);
            if (m_known[at(panel, sequence.begins[k], sequence.begins[k + 1])] == 0)
                return panel;
        }
        return -1;
    }

    // By the bounds, or by what is known alone.
    [[nodiscard]] Sequence shortest(bool known) const
    {
        const auto panels = std::size_t(m_problem.panels);
        std::vector<std::vector<double>> best(panels + 1, std::vector<double>(m_side, kCannotBe));
        std::vector<std::vector<int>> from(panels + 1, std::vector<int>(m_side, -1));
        best[0][0] = 0;
        for (int panel = 0; panel < m_problem.panels; ++panel)
            for (int last = 0; last <= m_problem.blocks; ++last)
                for (int first = 0; first <= last; ++first) {
                    const std::size_t here = at(panel, first, last);
                    if (known && m_known[here] == 0)
                        continue;
                    const auto q = std::size_t(panel);
                    const double cost = best[q][std::size_t(first)] + m_costs[here];
                    if (cost < best[q + 1][std::size_t(last)]) {
                        best[q + 1][std::size_t(last)] = cost;
                        from[q + 1][std::size_t(last)] = first;
                    }
                }
        Sequence out;
        out.cost = best[panels][std::size_t(m_problem.blocks)];
        if (out.cost >= kCannotBe)
            return out;
        out.begins.assign(panels + 1, m_problem.blocks);
        for (std::size_t q = panels; q > 0; --q)
            out.begins[q - 1] = from[q][std::size_t(out.begins[q])];
        return out;
    }

    const BreakProblem& m_problem;
    std::size_t m_side;
    std::vector<double> m_costs; // bounds until known
    std::vector<char> m_known;
};

} // namespace

std::optional<Breaks> cheapestBreaks(const BreakProblem& problem)
{
    return LazyBreaks(problem).run();
}

} // namespace wainscot::engine
