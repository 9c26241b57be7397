// The exact engine: the least cost of every run of pieces in every rectangle of the grid, over all
// order-preserving slicing trees.
//
// A run i..j-1 fills columns x..x+w-1 and h rows exactly. It is one of four things: a leaf, a stack
// (cut across), a row whose first child is not a stack, or a row whose first child is one. The two
// kinds of row are kept apart because two stacks side by side read ambiguously and cost more. Trees
// lean to the right (a left child is never of its parent's kind, unless it is one whole group or a
// band), so that no arrangement is counted twice. Method: interval dynamic programming; the closest
// precedent is Gange, Marriott, Stuckey, "Optimal guillotine layout", DocEng 2012
// (doi 10.1145/2361354).
#pragma once

#include "layout/engine/arena.h"
#include "layout/engine/bounds.h"
#include "layout/engine/columns.h"
#include "layout/engine/leaf.h"
#include "layout/engine/min_plus.h"
#include "layout/engine/run_rules.h"

#include <array>

namespace wainscot::engine {

enum class NodeType { Leaf, Stack, Row };

// A slicing tree with its places; rows and stacks hold two or more children.
struct Node {
    NodeType type = NodeType::Leaf;
    int first = 0; // pieces first .. last-1
    int last = 0;
    GridRect at;
    std::vector<Node> children;
};

class RunTable {
public:
    // `leaves` must outlive the table.
    RunTable(LeafTable& leaves, ColumnSystem system);

    // False when cancelled on the way. With limits, costs above them are left out: cost() then
    // gives kNever for them, and everything else is exact. May be filled again with other limits.
    [[nodiscard]] bool fill(
        const std::atomic<bool>* cancel = nullptr, const PageLimits* limits = nullptr);

    // Least cost of pieces first..last-1 in columns x..x+w-1, h rows; kNever = cannot be.
    [[nodiscard]] Cost cost(int first, int last, int x, int w, int h) const;
    // The tree of that cost, at page 0 and row y. REQUIRES: cost(...) < kNever
    [[nodiscard]] Node tree(int first, int last, GridRect at) const;

    [[nodiscard]] const ColumnSystem& system() const { return m_system; }
    [[nodiscard]] const Intervals& spans() const { return m_spans; }
    [[nodiscard]] const RunRules& rules() const { return m_rules; }
    [[nodiscard]] std::size_t bytes() const; // held by the table's costs

private:
    // Costs of one run in one span of columns, heights least..most. A single piece has one row of
    // them; a run of several has all of Rows, one after the other.
    struct Slot {
        const Cost* data = nullptr;
        std::int16_t least = 0;
        std::int16_t most = -1;
        Cost cheapest = kNever;
        [[nodiscard]] bool empty() const { return data == nullptr; }
        [[nodiscard]] int count() const { return most - least + 1; }
    };
    enum Rows {
        Stack, // cut across
        Calm, // anything but a stack
        Any,
        Beside, // to the right of a stack of its own kind: dearer unless it begins with a leaf
        RowsCount
    };
    enum Face { PlainFace, StackFace, StackRowFace }; // leaf or row led by a leaf, stack, other row
    struct Scratch;
    struct Split;

    [[nodiscard]] std::size_t runIndex(int first, int last) const
    {
        return std::size_t(first) * (std::size_t(m_count) + 1) + std::size_t(last - first);
    }
    [[nodiscard]] const Slot* slot(int first, int last, int q) const;
    [[nodiscard]] static const Cost* row(const Slot& slot, bool single, Rows which)
    {
        return single ? slot.data : slot.data + std::ptrdiff_t(which) * slot.count();
    }
    [[nodiscard]] static Cost at(const Slot* slot, bool single, Rows which, int h);

    void fillRun(int first, int last, const PageLimits* limits, Scratch& scratch);
    void findSplits(int first, int last, Scratch& scratch) const;
    void findStacks(int q, Scratch& scratch) const;
    void findRows(int q, bool allowed, Scratch& scratch) const;
    [[nodiscard]] Slot keepLeaf(int piece, int q, Scratch& scratch);
    [[nodiscard]] Slot keep(Scratch& scratch);

    void build(Node& out, Face which) const;
    void buildStack(Node& out, Cost value) const;
    void buildRow(Node& out, Cost value, Face which) const;
    [[nodiscard]] Cost rowCost(int first, int last, int q, int h, Face which) const;
    [[nodiscard]] Face bestFace(int first, int last, int q, int h, bool stacksToo) const;
    [[nodiscard]] Face besideFace(int first, int last, int q, int h, Cost value) const;

    LeafTable& m_leaves;
    RunRules m_rules;
    ColumnSystem m_system;
    Intervals m_spans;
    int m_count;
    int m_rows;
    Cost m_stackExtra;
    std::vector<int> m_cells; // prefix sums of the pieces' least areas
    std::vector<const Slot*> m_runs; // by first and length: its slots, null = none
    Arena<Slot> m_slots;
    Arena<Cost> m_costs;
};

} // namespace wainscot::engine
