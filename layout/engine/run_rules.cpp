#include "layout/engine/run_rules.h"

#include <algorithm>

namespace wainscot::engine {

RunRules::RunRules(const LeafTable& leaves)
    : m_leaves(leaves)
    , m_count(leaves.size())
    , m_stackExtra(toCost(leaves.weights().sideBySideStacks))
{
    for (int i = 0; i < m_count; ++i)
        m_groups.push_back(leaves.piece(i).item.group);
}

// A group is one rectangle: a run holds all of it and strangers, or a part of it alone.
bool RunRules::runAllowed(int first, int last) const
{
    for (int i = first + 1; i < last; ++i)
        if (m_leaves.piece(i).item.breakBefore)
            return false;
    const auto group = [this](int i) { return m_groups[std::size_t(i)]; };
    const bool inside = group(first) > 0 && group(first) == group(last - 1);
    if (inside)
        return true;
    const bool cutsAbove = first > 0 && group(first) > 0 && group(first - 1) == group(first);
    const bool cutsBelow = last < m_count && group(last) > 0 && group(last - 1) == group(last);
    return !cutsAbove && !cutsBelow;
}

bool RunRules::splitAllowed(int first, int split, int last) const
{
    const auto group = [this](int i) { return m_groups[std::size_t(i)]; };
    if (group(split) <= 0 || group(split) != group(split - 1))
        return true;
    return group(first) == group(split) && group(last - 1) == group(split);
}

bool RunRules::wholeGroup(int first, int last) const
{
    const int group = m_groups[std::size_t(first)];
    return group > 0 && last - first > 1 && m_groups[std::size_t(last - 1)] == group
        && (last >= m_count || m_groups[std::size_t(last)] != group);
}

int RunRules::bandInside(int first, int last) const
{
    for (int i = first + 1; i < last; ++i)
        if (m_leaves.piece(i).item.wish.bandBefore)
            return i;
    return -1;
}

// One whole row of white parts two groups, and a band of groups from another, one above the other.
int RunRules::gapRows(int split) const
{
    const int above = m_groups[std::size_t(split - 1)];
    const int below = m_groups[std::size_t(split)];
    if (m_leaves.piece(split).item.wish.bandBefore)
        return above > 0 || below > 0 ? 1 : 0;
    return above > 0 && below > 0 && above != below ? 1 : 0;
}

// Side by side, two stacks of one kind read ambiguously; where a group ends, nobody can be misled.
Cost RunRules::stackExtra(int split) const
{
    const int left = m_groups[std::size_t(split - 1)];
    return left == m_groups[std::size_t(split)] ? m_stackExtra : 0;
}

int RunRules::widest(int first, int last) const
{
    const int asked = m_leaves.piece(first).item.wish.blockColumns;
    const bool starts =
        first == 0 || m_leaves.piece(first - 1).item.group != m_leaves.piece(first).item.group;
    const int columns = m_leaves.page().columns;
    return asked > 0 && starts && wholeGroup(first, last) ? std::min(asked, columns) : columns;
}

} // namespace wainscot::engine
