// Breaks between panels: against every way to deal blocks out, on seeded costs.
#include "layout/engine/breaks.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <limits>
#include <map>
#include <random>
#include <tuple>

namespace wainscot::engine {
namespace {

constexpr double kCannotBe = std::numeric_limits<double>::infinity();

// Costs of panels: what each block needs, how full the panel then is, and something nobody knows
// before the panel is laid out. Too many blocks do not go on a panel.
class Wall {
public:
    explicit Wall(unsigned seed)
        : m_random(seed)
    {
        m_problem.blocks = number(1, 9);
        m_problem.panels = number(1, 4);
        for (int i = 0; i < m_problem.blocks; ++i)
            m_needs.push_back(number(1, 9));
        m_room = number(8, 30);
        m_forced = number(0, 2) == 0 ? number(1, m_problem.blocks) : 0;
        m_problem.least = [this](
                              int panel, int first, int last) { return least(panel, first, last); };
        m_problem.cost = [this](int panel, int first, int last) {
            ++m_asked[{panel, first, last}];
            return cost(panel, first, last);
        };
    }

    [[nodiscard]] double need(int first, int last) const
    {
        double sum = 0;
        for (int i = first; i < last; ++i)
            sum += m_needs[std::size_t(i)];
        return sum;
    }

    [[nodiscard]] double least(int, int first, int last) const
    {
        const bool across = m_forced > first && m_forced < last;
        const double off = need(first, last) - m_room / 2;
        return across ? kCannotBe : off * off;
    }

    double cost(int panel, int first, int last)
    {
        if (need(first, last) > m_room)
            return kCannotBe;
        const auto known = m_more.try_emplace({panel, first, last}, -1).first;
        if (known->second < 0)
            known->second = number(0, 400) / 10.0;
        return least(panel, first, last) + known->second;
    }

    // Every way, one after the other.
    double cheapest(int panel = 0, int first = 0)
    {
        if (panel == m_problem.panels)
            return first == m_problem.blocks ? 0 : kCannotBe;
        double best = kCannotBe;
        for (int last = first; last <= m_problem.blocks; ++last)
            best = std::min(best, cost(panel, first, last) + cheapest(panel + 1, last));
        return best;
    }

    [[nodiscard]] const BreakProblem& problem() const { return m_problem; }
    [[nodiscard]] BreakProblem& problem() { return m_problem; }
    [[nodiscard]] int forced() const { return m_forced; }
    [[nodiscard]] int mostOftenAsked() const
    {
        int most = 0;
        for (const auto& [stretch, times] : m_asked)
            most = std::max(most, times);
        return most;
    }

    double costOf(const Breaks& breaks)
    {
        double sum = 0;
        for (int panel = 0; panel < m_problem.panels; ++panel) {
            const auto next = std::size_t(panel) + 1;
            const bool isLast = next == breaks.begins.size();
            sum += cost(
                panel, breaks.begins[next - 1], isLast ? m_problem.blocks : breaks.begins[next]);
        }
        return sum;
    }

private:
    int number(int least, int most) { return least + int(m_random() % unsigned(most - least + 1)); }

    std::mt19937 m_random;
    BreakProblem m_problem;
    std::vector<double> m_needs;
    double m_room = 0;
    int m_forced = 0; // a block that begins a panel
    std::map<std::tuple<int, int, int>, double> m_more;
    std::map<std::tuple<int, int, int>, int> m_asked;
};

TEST(Breaks, AreTheCheapestOfAll)
{
    int possible = 0;
    int laidOut = 0;
    int all = 0;
    for (unsigned seed = 0; seed < 600; ++seed) {
        SCOPED_TRACE(testing::Message() << "seed " << seed);
        Wall wall(seed);
        const double cheapest = wall.cheapest();
        const auto found = cheapestBreaks(wall.problem());
        ASSERT_EQ(found.has_value(), cheapest < kCannotBe);
        if (!found)
            continue;
        ++possible;
        EXPECT_NEAR(found->cost, cheapest, 1e-9);
        EXPECT_NEAR(wall.costOf(*found), found->cost, 1e-9) << "the breaks are those that cost it";
        EXPECT_TRUE(found->proven());
        EXPECT_LE(wall.mostOftenAsked(), 1);
        ASSERT_EQ(found->begins.front(), 0);
        EXPECT_TRUE(std::is_sorted(found->begins.begin(), found->begins.end()));
        if (wall.forced() > 0 && wall.forced() < wall.problem().blocks) {
            EXPECT_EQ(
                std::count(found->begins.begin(), found->begins.end(), wall.forced()) > 0, true);
        }
        laidOut += found->laidOut;
        const int blocks = wall.problem().blocks;
        all += wall.problem().panels * (blocks + 1) * (blocks + 2) / 2;
    }
    EXPECT_GT(possible, 300);
    EXPECT_LT(laidOut, all / 3) << "most panels are never laid out";
    std::printf("%d of 600 possible, %d of %d panels laid out\n", possible, laidOut, all);
}

TEST(Breaks, SayHowFarTheyAreFromProven)
{
    int unproven = 0;
    for (unsigned seed = 0; seed < 300; ++seed) {
        SCOPED_TRACE(testing::Message() << "seed " << seed);
        Wall wall(seed);
        const double cheapest = wall.cheapest();
        wall.problem().most = 6;
        const auto found = cheapestBreaks(wall.problem());
        if (!found)
            continue;
        EXPECT_LE(found->laidOut, 6);
        EXPECT_LE(found->bound, cheapest + 1e-9);
        EXPECT_GE(found->cost, cheapest - 1e-9);
        EXPECT_NEAR(wall.costOf(*found), found->cost, 1e-9);
        unproven += found->proven() ? 0 : 1;
    }
    EXPECT_GT(unproven, 10);
}

} // namespace
} // namespace wainscot::engine
