// Choosing items for a room of limited size as an integer programme: the most value, with every row
// covered, at most one of each set of rivals, and the areas within the capacity. Private to
// core/voice; the numbers mean what selection.cpp makes of them.
#pragma once

#include <cstdint>
#include <vector>

namespace wainscot::cover {

using Amount = std::int64_t;

struct Item {
    Amount value = 0; // may be negative: what taking it costs
    Amount area = 0; // 0 or more
    std::vector<int> rows; // what it covers, each once
    int rivals = -1; // number of the set of which at most one is taken; -1 = none
};

// What is asked, and what is looked up often. Whole numbers throughout, so that the answer is the
// same on every machine.
class Model {
public:
    // REQUIRES: rows of items in 0..rows-1, rivals in -1..rivalSets-1, no negative area
    Model(std::vector<Item> items, int rows, int rivalSets, Amount capacity);

    [[nodiscard]] int count() const { return static_cast<int>(m_items.size()); }
    [[nodiscard]] int rows() const { return static_cast<int>(m_ofRow.size()); }
    [[nodiscard]] int rivalSets() const { return static_cast<int>(m_ofSet.size()); }
    [[nodiscard]] Amount capacity() const { return m_capacity; }
    [[nodiscard]] const Item& item(int at) const { return m_items[std::size_t(at)]; }
    [[nodiscard]] const std::vector<int>& ofRow(int row) const { return m_ofRow[std::size_t(row)]; }
    [[nodiscard]] const std::vector<int>& ofSet(int set) const { return m_ofSet[std::size_t(set)]; }
    // Items worth taking for themselves, most value for the area first.
    [[nodiscard]] const std::vector<int>& byDensity() const { return m_byDensity; }
    [[nodiscard]] const std::vector<int>& byValue() const { return m_byValue; } // most first
    // No choice is worth less.
    [[nodiscard]] Amount leastValue() const { return m_leastValue; }
    [[nodiscard]] Amount meanArea() const { return m_meanArea; } // at least 1
    [[nodiscard]] Amount meanValue() const { return m_meanValue; } // of the sizes; at least 1

private:
    std::vector<Item> m_items;
    std::vector<std::vector<int>> m_ofRow;
    std::vector<std::vector<int>> m_ofSet;
    std::vector<int> m_byDensity;
    std::vector<int> m_byValue;
    Amount m_capacity = 0;
    Amount m_leastValue = 0;
    Amount m_meanArea = 1;
    Amount m_meanValue = 1;
};

} // namespace wainscot::cover
