// How alike each of a number of answers is to each other one.
#pragma once

#include <cstddef>
#include <vector>

namespace wainscot {

// A square, symmetric table of likenesses from 0 (nothing shared) to 1.
class LikenessTable {
public:
    explicit LikenessTable(std::size_t size)
        : m_size(size)
        , m_values(size * size, 0)
    {
    }
    [[nodiscard]] std::size_t size() const { return m_size; }
    [[nodiscard]] double at(std::size_t row, std::size_t column) const
    {
        return m_values[row * m_size + column];
    }
    [[nodiscard]] const double* row(std::size_t row) const { return &m_values[row * m_size]; }
    // Both ways round.
    void set(std::size_t row, std::size_t column, double likeness)
    {
        m_values[row * m_size + column] = likeness;
        m_values[column * m_size + row] = likeness;
    }
    // One way round; for making a table.
    void add(std::size_t row, std::size_t column, double share)
    {
        m_values[row * m_size + column] += share;
    }

private:
    std::size_t m_size;
    std::vector<double> m_values;
};

} // namespace wainscot
