// Which pieces may stand together in one rectangle, and where they may be parted.
#pragma once

#include "layout/engine/leaf.h"

namespace wainscot::engine {

// Runs are pieces first .. last-1; a split is the first piece of the second part.
class RunRules {
public:
    explicit RunRules(const LeafTable& leaves); // must outlive the rules
    // No group is cut and no forced break lies inside.
    [[nodiscard]] bool runAllowed(int first, int last) const;
    [[nodiscard]] bool splitAllowed(int first, int split, int last) const;
    [[nodiscard]] bool wholeGroup(int first, int last) const;
    [[nodiscard]] int bandInside(int first, int last) const; // first band start inside, or -1
    [[nodiscard]] int gapRows(int split) const; // white between parts one above the other
    [[nodiscard]] Cost stackExtra(int split) const; // price of two stacks side by side
    [[nodiscard]] int widest(int first, int last) const; // columns the run may have

private:
    const LeafTable& m_leaves;
    int m_count;
    Cost m_stackExtra;
    std::vector<int> m_groups; // of the pieces
};

} // namespace wainscot::engine
