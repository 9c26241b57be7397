#include "core/voice/cover_node.h"

#include <algorithm>
#include <limits>

namespace wainscot::cover {

Node::Node(const Model& model)
    : m_model(&model)
    , m_fate(static_cast<std::size_t>(model.count()), Fate::Open)
    , m_covered(static_cast<std::size_t>(model.rows()), 0)
    , m_left(static_cast<std::size_t>(model.rows()), 0)
    , m_open(model.count())
{
    for (int row = 0; row < model.rows(); ++row)
        m_left[static_cast<std::size_t>(row)] = static_cast<int>(model.ofRow(row).size());
}

void Node::take(int item)
{
    const Item& one = m_model->item(item);
    m_fate[static_cast<std::size_t>(item)] = Fate::In;
    --m_open;
    m_area += one.area;
    m_value += one.value;
    for (const int row : one.rows) {
        ++m_covered[static_cast<std::size_t>(row)];
        --m_left[static_cast<std::size_t>(row)];
    }
    if (one.rivals < 0)
        return;
    for (const int rival : m_model->ofSet(one.rivals)) {
        if (isOpen(rival))
            drop(rival);
    }
}

void Node::drop(int item)
{
    m_fate[static_cast<std::size_t>(item)] = Fate::Out;
    --m_open;
    for (const int row : m_model->item(item).rows)
        --m_left[static_cast<std::size_t>(row)];
}

bool Node::propagate()
{
    for (bool changed = true; changed;) {
        if (room() < 0)
            return false;
        changed = dropWhatDoesNotFit();
        if (!takeLastOfRows(changed))
            return false;
    }
    return roomForUncovered();
}

bool Node::dropWhatDoesNotFit()
{
    bool changed = false;
    for (int item = 0; item < m_model->count(); ++item) {
        if (isOpen(item) && m_model->item(item).area > room()) {
            drop(item);
            changed = true;
        }
    }
    return changed;
}

bool Node::takeLastOfRows(bool& changed)
{
    for (int row = 0; row < m_model->rows(); ++row) {
        if (isCovered(row) || m_left[static_cast<std::size_t>(row)] > 1)
            continue;
        const std::vector<int>& items = m_model->ofRow(row);
        const auto last =
            std::find_if(items.begin(), items.end(), [&](int item) { return isOpen(item); });
        if (last == items.end())
            return false;
        take(*last);
        changed = true;
    }
    return true;
}

// An item shares its area among the rows it would cover; each row needs at least its cheapest
// share. So the sum is a lower bound of the area that is needed (a solution of the dual).
bool Node::roomForUncovered() const
{
    constexpr Amount kShares = 5040; // divisible by every number of rows up to 10
    const auto uncovered = [&](const Item& item) {
        const auto rows = std::count_if(
            item.rows.begin(), item.rows.end(), [&](int row) { return !isCovered(row); });
        return std::max<Amount>(1, rows);
    };
    Amount needed = 0;
    for (int row = 0; row < m_model->rows(); ++row) {
        if (isCovered(row))
            continue;
        Amount least = std::numeric_limits<Amount>::max();
        for (const int at : m_model->ofRow(row)) {
            if (isOpen(at)) {
                const Item& item = m_model->item(at);
                least = std::min(least, item.area * kShares / uncovered(item));
            }
        }
        needed += least;
    }
    return needed / kShares <= room();
}

std::vector<int> Node::taken() const
{
    std::vector<int> items;
    for (int item = 0; item < m_model->count(); ++item) {
        if (fate(item) == Fate::In)
            items.push_back(item);
    }
    return items;
}

} // namespace wainscot::cover
