// The most that can come of a node: Lagrangian relaxation of the area and of the rows, its prices
// found by subgradient steps (Held, Wolfe and Crowder 1974). Private to core/voice.
#pragma once

#include "core/voice/cover_node.h"

#include <functional>

namespace wainscot::cover {

// Prices are whole numbers of 1/kUnit, so a bound is exact and proves what it says.
inline constexpr Amount kUnit = 65536;

struct Prices {
    Amount area = 0; // to pay for one unit of area
    std::vector<Amount> rows; // to get for covering a row
};

// The relaxed problem of one node: open items and uncovered rows only. For given prices the best
// choice is plain, item by item, and its worth is an upper bound:
//   L = value(in) + area price * room - sum of row prices + sum of max(0, gain)
//   gain = value - area price * area + sum of prices of the rows it covers
// where of rivals only the best counts.
class Relaxation {
public:
    Relaxation(const Model& model, const Node& node);

    // L in 1/kUnit; remembers the gains and the choice.
    Amount evaluate(const Prices& prices);

    struct Search {
        int steps = 25;
        std::function<Amount()> best; // value of the best choice known: no need to go below
        std::function<void(const Prices&)> everyTwentySteps; // may be empty
    };
    // Improves `prices` and answers the least L found, which belongs to them.
    Amount improve(Prices& prices, const Search& search);

    // Each open item as the last evaluation chose it, and by how much L falls if it is decided
    // against that.
    struct Opinion {
        int item = 0;
        bool chosen = false;
        Amount loss = 0;
        Amount gain = 0;
    };
    [[nodiscard]] std::vector<Opinion> opinions() const;

private:
    struct OpenItem {
        int item = 0;
        Amount value = 0; // in 1/kUnit
        Amount area = 0;
        int rivals = -1;
        int firstRow = 0; // in m_rowsOf
        int endRow = 0;
    };
    struct SetBest {
        Amount best = 0;
        Amount second = 0;
        int at = -1; // in m_items
    };
    void chooseOfRivals(int at, Amount gain);
    [[nodiscard]] double squaredSlack(const Prices& prices);
    void step(Prices& prices, double length) const;

    const Model& m_model;
    std::vector<OpenItem> m_items;
    std::vector<int> m_rowsOf;
    std::vector<int> m_uncovered;
    Amount m_valueIn = 0;
    Amount m_room = 0;
    std::vector<Amount> m_gains;
    std::vector<char> m_chosen;
    std::vector<SetBest> m_sets;
    std::vector<int> m_slack; // by row: how often covered, less one
    Amount m_spare = 0; // area left over by the choice
};

// Rounded down: bounds of whole values.
[[nodiscard]] constexpr Amount wholeValue(Amount bound)
{
    return bound >= 0 ? bound / kUnit : -((-bound + kUnit - 1) / kUnit);
}

} // namespace wainscot::cover
