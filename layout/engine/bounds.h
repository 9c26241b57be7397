// What pages must cost at least, known before any page is laid out, and what that forbids.
//
// The cells of a page's leaves cover no more than the page. So for any price of a cell, each piece
// taken alone in its best shape at "cost plus cells times price", less the page at that price, is
// no dearer than the page: a Lagrangian relaxation of the tiling (Geoffrion, "Lagrangean relaxation
// for integer programming", 1974; from memory). The same holds for every part of a tree. When the
// whole may cost at most a ceiling, a part that leaves too little for the rest is of no use;
// dropping it cannot change an optimum at or below the ceiling.
#pragma once

#include "layout/engine/columns.h"
#include "layout/engine/leaf.h"

#include <array>

namespace wainscot::engine {

// Prices of one cell that are tried, in Cost.
inline constexpr std::array<Cost, 8> kCellPrices{0, 8, 16, 32, 64, 120, 220, 400};
using ByPrice = std::array<std::int64_t, kCellPrices.size()>;

// Lower bounds of runs from their pieces and their area alone.
class AreaBounds {
public:
    AreaBounds(LeafTable& leaves, const Intervals& spans);
    [[nodiscard]] bool possible() const { return m_possible; } // every piece has some cell
    [[nodiscard]] int count() const { return int(m_sums.size()) - 1; }
    // Of pieces first..last-1: the least sums of costs and priced cells.
    [[nodiscard]] ByPrice sums(int first, int last) const;
    // Least cost of pieces first..last-1 on at most `cells` cells.
    [[nodiscard]] Cost least(int first, int last, int cells) const;

private:
    std::vector<ByPrice> m_sums; // prefix sums
    bool m_possible = true;
};

// A matrix over runs first..last-1.
template <typename T> class ByRun {
public:
    ByRun(int count, T value)
        : m_side(std::size_t(count) + 1)
        , m_values(m_side * m_side, value)
    {
    }
    T& operator()(int first, int last) { return m_values[at(first, last)]; }
    const T& operator()(int first, int last) const { return m_values[at(first, last)]; }

private:
    [[nodiscard]] std::size_t at(int first, int last) const
    {
        return std::size_t(first) * m_side + std::size_t(last);
    }
    std::size_t m_side;
    std::vector<T> m_values;
};

// Which runs, and which of their costs, can be part of pages that together stay at or below a
// ceiling.
class PageLimits {
public:
    // `floor` has a lower bound of every page (kNever = no page); `perPage` is the price of each.
    // With `onePage` only the page of all pieces counts. `bounds` must outlive the limits.
    PageLimits(const AreaBounds& bounds,
        const ByRun<Cost>& floor,
        Cost perPage,
        Cost ceiling,
        int cells,
        bool onePage);

    // What the page first..last-1 may cost at most; negative = it is of no use.
    [[nodiscard]] std::int64_t allowed(int first, int last) const;
    [[nodiscard]] bool useful(int first, int last) const { return m_caps(first, last)[0] >= 0; }
    // caps[c] = the most that pieces first..last-1 may cost on c cells; the counts of cells for
    // which that is possible at all come back (first > last: none).
    std::pair<int, int> caps(int first, int last, std::vector<Cost>& caps) const;

private:
    const AreaBounds& m_bounds;
    const ByRun<Cost>& m_floor;
    std::int64_t m_perPage;
    std::int64_t m_ceiling;
    int m_cells;
    bool m_onePage;
    std::vector<std::int64_t> m_before; // least cost of the pages before a piece
    std::vector<std::int64_t> m_after; // and of those from it on
    using Caps = std::array<Cost, kCellPrices.size()>;
    ByRun<Caps> m_caps; // of costs and priced cells, above the run's own least; < 0 = no use
};

} // namespace wainscot::engine
