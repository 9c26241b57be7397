#include "core/voice/cover_bound.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>

namespace wainscot::cover {

Relaxation::Relaxation(const Model& model, const Node& node)
    : m_model(model)
    , m_valueIn(node.value() * kUnit)
    , m_room(node.room())
    , m_sets(static_cast<std::size_t>(model.rivalSets()))
    , m_slack(static_cast<std::size_t>(model.rows()), 0)
{
    for (int row = 0; row < model.rows(); ++row) {
        if (!node.isCovered(row))
            m_uncovered.push_back(row);
    }
    m_items.reserve(static_cast<std::size_t>(node.openCount()));
    for (int at = 0; at < model.count(); ++at) {
        if (!node.isOpen(at))
            continue;
        const Item& item = model.item(at);
        OpenItem open{at, item.value * kUnit, item.area, item.rivals, 0, 0};
        open.firstRow = static_cast<int>(m_rowsOf.size());
        for (const int row : item.rows) {
            if (!node.isCovered(row))
                m_rowsOf.push_back(row);
        }
        open.endRow = static_cast<int>(m_rowsOf.size());
        m_items.push_back(open);
    }
    m_gains.resize(m_items.size());
    m_chosen.resize(m_items.size());
}

Amount Relaxation::evaluate(const Prices& prices)
{
    Amount bound = m_valueIn + prices.area * m_room;
    for (const int row : m_uncovered)
        bound -= prices.rows[static_cast<std::size_t>(row)];
    std::fill(m_sets.begin(), m_sets.end(), SetBest{});
    for (std::size_t at = 0; at < m_items.size(); ++at) {
        const OpenItem& item = m_items[at];
        Amount gain = item.value - prices.area * item.area;
        for (int i = item.firstRow; i < item.endRow; ++i)
            gain += prices.rows[static_cast<std::size_t>(m_rowsOf[static_cast<std::size_t>(i)])];
        m_gains[at] = gain;
        m_chosen[at] = static_cast<char>(item.rivals < 0 && gain > 0);
        if (item.rivals >= 0)
            chooseOfRivals(static_cast<int>(at), gain);
        else if (gain > 0)
            bound += gain;
    }
    for (const SetBest& set : m_sets) {
        if (set.at >= 0) {
            m_chosen[static_cast<std::size_t>(set.at)] = 1;
            bound += set.best;
        }
    }
    return bound;
}

void Relaxation::chooseOfRivals(int at, Amount gain)
{
    SetBest& set = m_sets[static_cast<std::size_t>(m_items[static_cast<std::size_t>(at)].rivals)];
    if (gain > set.best) {
        set.second = set.best;
        set.best = gain;
        set.at = at;
    } else {
        set.second = std::max(set.second, gain);
    }
}

// How far the choice is from covering once and filling the room, squared, with the area in mean
// areas. What cannot move (a price of nothing that would fall) does not count.
double Relaxation::squaredSlack(const Prices& prices)
{
    for (const int row : m_uncovered)
        m_slack[static_cast<std::size_t>(row)] = -1;
    m_spare = m_room;
    for (std::size_t at = 0; at < m_items.size(); ++at) {
        if (m_chosen[at] == 0)
            continue;
        const OpenItem& item = m_items[at];
        m_spare -= item.area;
        for (int i = item.firstRow; i < item.endRow; ++i)
            ++m_slack[static_cast<std::size_t>(m_rowsOf[static_cast<std::size_t>(i)])];
    }
    double squares = 0;
    for (const int row : m_uncovered) {
        const auto at = static_cast<std::size_t>(row);
        const double slack = m_slack[at];
        if (slack < 0 || prices.rows[at] > 0)
            squares += slack * slack;
    }
    const double spare = static_cast<double>(m_spare) / static_cast<double>(m_model.meanArea());
    return spare < 0 || prices.area > 0 ? squares + spare * spare : squares;
}

void Relaxation::step(Prices& prices, double length) const
{
    const auto moved = [](Amount price, double by) {
        return std::max<Amount>(0, price - static_cast<Amount>(std::llround(by)));
    };
    for (const int row : m_uncovered) {
        const auto at = static_cast<std::size_t>(row);
        prices.rows[at] = moved(prices.rows[at], length * m_slack[at]);
    }
    const auto unit = static_cast<double>(m_model.meanArea());
    prices.area = moved(prices.area, length * (static_cast<double>(m_spare) / unit) / unit);
}

Amount Relaxation::improve(Prices& prices, const Search& search)
{
    constexpr double kLongest = 1.2; // of the step that would close the gap
    constexpr double kShorter = 0.6;
    constexpr double kShortest = 1e-3;
    constexpr int kPatience = 6; // steps without a better bound

    Prices best = prices;
    Amount now = evaluate(prices);
    Amount least = now;
    double theta = kLongest;
    int waited = 0;
    for (int done = 0; done < search.steps && wholeValue(least) > search.best(); ++done) {
        if (search.everyTwentySteps && done % 20 == 0)
            search.everyTwentySteps(prices);
        const double squares = squaredSlack(prices);
        if (squares <= 0)
            break; // the choice fits and covers: nothing is better
        step(prices, theta * static_cast<double>(now - search.best() * kUnit) / squares);
        now = evaluate(prices);
        if (now < least) {
            least = now;
            best = prices;
            waited = 0;
        } else if (++waited > kPatience) {
            theta *= kShorter;
            if (theta < kShortest)
                break;
            waited = 0;
            prices = best;
            now = evaluate(prices);
        }
    }
    prices = best;
    return evaluate(prices);
}

std::vector<Relaxation::Opinion> Relaxation::opinions() const
{
    std::vector<Opinion> all;
    all.reserve(m_items.size());
    for (std::size_t at = 0; at < m_items.size(); ++at) {
        const OpenItem& item = m_items[at];
        Opinion one{item.item, m_chosen[at] != 0, std::abs(m_gains[at]), m_gains[at]};
        if (item.rivals >= 0) {
            const SetBest& set = m_sets[static_cast<std::size_t>(item.rivals)];
            one.loss = one.chosen ? set.best - set.second : set.best - m_gains[at];
        }
        all.push_back(one);
    }
    return all;
}

} // namespace wainscot::cover
