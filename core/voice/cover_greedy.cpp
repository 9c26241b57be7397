#include "core/voice/cover_greedy.h"

#include <algorithm>

namespace wainscot::cover {

namespace {

class Filler {
public:
    Filler(const Model& model, const Node& node)
        : m_model(model)
        , m_node(node)
        , m_in(static_cast<std::size_t>(model.count()), 0)
        , m_covered(static_cast<std::size_t>(model.rows()), 0)
        , m_setTaken(static_cast<std::size_t>(model.rivalSets()), 0)
        , m_room(model.capacity())
    {
        for (const int item : node.taken())
            add(item);
    }

    void start(const std::vector<int>& items)
    {
        for (const int item : items) {
            if (fits(item))
                add(item);
        }
    }

    bool cover(const Prices& prices)
    {
        for (int row = uncoveredRow(); row >= 0; row = uncoveredRow()) {
            const int best = bestForCover(prices);
            if (best < 0)
                return false;
            add(best);
        }
        return true;
    }

    void fill()
    {
        for (const int item : m_model.byDensity()) {
            if (fits(item))
                add(item);
        }
    }

    void swapWhileBetter()
    {
        while (swapOne())
            fill();
    }

    [[nodiscard]] Choice choice() const
    {
        Choice choice;
        for (int item = 0; item < m_model.count(); ++item) {
            if (isIn(item)) {
                choice.items.push_back(item);
                choice.value += m_model.item(item).value;
            }
        }
        return choice;
    }

private:
    [[nodiscard]] bool isIn(int item) const { return m_in[std::size_t(item)] != 0; }

    [[nodiscard]] bool fits(int item) const
    {
        const Item& one = m_model.item(item);
        return !isIn(item) && m_node.fate(item) != Fate::Out && one.area <= m_room
            && (one.rivals < 0 || m_setTaken[std::size_t(one.rivals)] == 0);
    }

    void set(int item, int by)
    {
        const Item& one = m_model.item(item);
        m_in[std::size_t(item)] = static_cast<char>(by > 0);
        m_room -= by * one.area;
        for (const int row : one.rows)
            m_covered[std::size_t(row)] += by;
        if (one.rivals >= 0)
            m_setTaken[std::size_t(one.rivals)] = static_cast<char>(by > 0);
    }
    void add(int item) { set(item, 1); }
    void remove(int item) { set(item, -1); }

    [[nodiscard]] int uncoveredRow() const
    {
        const auto at = std::find(m_covered.begin(), m_covered.end(), 0);
        return at == m_covered.end() ? -1 : static_cast<int>(at - m_covered.begin());
    }

    [[nodiscard]] int uncoveredBy(int item) const
    {
        const std::vector<int>& rows = m_model.item(item).rows;
        return static_cast<int>(std::count_if(
            rows.begin(), rows.end(), [&](int row) { return m_covered[std::size_t(row)] == 0; }));
    }

    // Of all items for any uncovered row the one with most gain for its area.
    [[nodiscard]] int bestForCover(const Prices& prices) const
    {
        int best = -1;
        double bestScore = 0;
        for (int item = 0; item < m_model.count(); ++item) {
            const int rows = fits(item) ? uncoveredBy(item) : 0;
            if (rows == 0)
                continue;
            const Item& one = m_model.item(item);
            Amount gain = (one.value + rows * m_model.meanValue()) * kUnit - prices.area * one.area;
            for (const int row : one.rows)
                gain += prices.rows[std::size_t(row)];
            const double score =
                static_cast<double>(gain) / static_cast<double>(std::max<Amount>(1, one.area));
            if (best < 0 || score > bestScore) {
                best = item;
                bestScore = score;
            }
        }
        return best;
    }

    bool swapOne()
    {
        for (int out = 0; out < m_model.count(); ++out) {
            if (!isIn(out) || m_node.fate(out) == Fate::In)
                continue;
            remove(out);
            const int better = bestInsteadOf(out);
            add(better < 0 ? out : better);
            if (better >= 0)
                return true;
        }
        return false;
    }

    // Worth more than `out` and covering what only it covered; -1 = none.
    [[nodiscard]] int bestInsteadOf(int out) const
    {
        const int missing = uncoveredBy(out);
        for (const int item : m_model.byValue()) {
            if (m_model.item(item).value <= m_model.item(out).value)
                return -1;
            if (item != out && fits(item) && (missing == 0 || uncoveredBy(item) >= missing))
                return item;
        }
        return -1;
    }

    const Model& m_model;
    const Node& m_node;
    std::vector<char> m_in;
    std::vector<int> m_covered;
    std::vector<char> m_setTaken;
    Amount m_room = 0;
};

} // namespace

std::optional<Choice> greedyChoice(
    const Model& model, const Node& node, const Prices& prices, const std::vector<int>& start)
{
    Filler filler(model, node);
    filler.start(start);
    if (!filler.cover(prices))
        return std::nullopt;
    filler.fill();
    filler.swapWhileBetter();
    return filler.choice();
}

} // namespace wainscot::cover
