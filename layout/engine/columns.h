// Column systems: where vertical cuts may lie, and what each costs.
#pragma once

#include "layout/engine/cost.h"

#include <string>
#include <vector>

namespace wainscot::engine {

struct ColumnSystem {
    std::string name;
    std::vector<int> cuts; // ascending, 0 < cut < columns
    std::vector<Cost> prices; // of each cut
};

// All intervals between two cuts of a system (the page's edges are cuts too).
class Intervals {
public:
    Intervals(const ColumnSystem& system, int columns);
    struct Span {
        int x;
        int w;
    };
    [[nodiscard]] int count() const { return int(m_spans.size()); }
    [[nodiscard]] Span span(int q) const { return m_spans[std::size_t(q)]; }
    [[nodiscard]] int find(int x, int w) const; // -1 = none

    // A cut inside a span: the spans at its left and right, and its price.
    struct Parting {
        int left;
        int right;
        Cost price;
    };
    [[nodiscard]] const std::vector<Parting>& partings(int q) const // left to right
    {
        return m_partings[std::size_t(q)];
    }

private:
    [[nodiscard]] std::size_t place(int x, int w) const
    {
        return std::size_t(x) * std::size_t(m_side) + std::size_t(w);
    }

    int m_side;
    std::vector<Span> m_spans; // by width, narrow ones first
    std::vector<int> m_index;
    std::vector<std::vector<Parting>> m_partings; // by span
};

// A system with the usual prices: even columns are quieter than odd ones.
[[nodiscard]] ColumnSystem columnSystem(std::string name, std::vector<int> cuts);

// Whether everything `coarse` can do, `fine` can do at the same price.
[[nodiscard]] bool contains(const ColumnSystem& fine, const ColumnSystem& coarse);

// The systems tried for a free page of `columns` columns, plain ones first.
[[nodiscard]] std::vector<ColumnSystem> freeSystems(int columns);

} // namespace wainscot::engine
