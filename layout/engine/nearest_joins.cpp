// How runs in rectangles are put together: one above the other, side by side, with white around.
#include "layout/engine/nearest_page.h"

#include <algorithm>

namespace wainscot::engine {

namespace {

constexpr double kMisread = 15; // units for a line that passes both parts of a row
constexpr double kMisreadMoves = 0.5; // and as if so much had moved
constexpr int kMostMisread = 4; // lines that count
constexpr int kHoleColumns = 3; // as in faults.cpp
constexpr int kHoleRows = 6;
constexpr double kHoleMore = 60; // cells that cost as much again

} // namespace

bool NearestPage::mayJoin(const Entry& a, const Entry& b) const
{
    const int others = m_allLost - m_lost[std::size_t(b.last)] + m_lost[std::size_t(a.first)];
    return a.moved + b.moved + others <= m_budget && m_rules.runAllowed(a.first, b.last)
        && m_rules.splitAllowed(a.first, a.last, b.last);
}

// The first of the entries whose run begins with that piece, or with a later one.
std::uint32_t NearestPage::firstOf(const Range& range, int first) const
{
    const auto from = m_entries.begin();
    const auto at = std::lower_bound(
        from + range.from, from + range.to, first, [](const Entry& entry, int piece) {
            return entry.first < piece;
        });
    return std::uint32_t(at - from);
}

void NearestPage::joinStack(std::uint32_t upper, std::uint32_t lower, int rows, int gap, int line)
{
    const Entry& a = m_entries[upper];
    const Entry& b = m_entries[lower];
    if (!mayJoin(a, b))
        return;
    Entry entry;
    entry.made = Made::Stack;
    entry.isStack = true;
    entry.cut = std::int16_t(rows);
    entry.gap = std::int8_t(gap);
    entry.upper = upper;
    entry.lower = lower;
    entry.first = a.first;
    entry.last = b.last;
    entry.value = a.value + b.value;
    entry.moved = a.moved + b.moved;
    entry.lead = a.lead;
    entry.trail = b.trail;
    entry.through = a.through | b.through | lines(line, line + gap + b.lead);
    add(entry);
}

void NearestPage::addStacks(const GridRect& at)
{
    for (int rows = 1; rows < at.h; ++rows) {
        const Range above = range(at.x, at.w, at.y, rows);
        for (std::uint32_t a = above.from; a < above.to; ++a) {
            const Entry& upper = m_entries[a];
            // Stacks lean downwards; white between two parts belongs to the lower one.
            if (upper.trail > 0 || (upper.isStack && !m_rules.wholeGroup(upper.first, upper.last)))
                continue;
            const int gap = upper.last < m_count ? m_rules.gapRows(upper.last) : 0;
            if (rows + gap >= at.h)
                continue;
            const Range below = range(at.x, at.w, at.y + rows + gap, at.h - rows - gap);
            for (std::uint32_t b = firstOf(below, upper.last);
                 b < below.to && m_entries[b].first == upper.last;
                 ++b)
                joinStack(a, b, rows, gap, at.y + rows);
        }
    }
}

NearestPage::Lines NearestPage::lines(int from, int to) const
{
    return to < from ? Lines()
                     : (m_all >> std::size_t(kMostRows - (to - from))) << std::size_t(from);
}

// Where a line passes both parts, whoever reads row by row goes on to the right part too early.
void NearestPage::joinRow(std::uint32_t left, std::uint32_t right, const GridRect& at, int columns)
{
    const Entry& a = m_entries[left];
    const Entry& b = m_entries[right];
    // White all along an edge belongs around the row, not into its parts.
    if (!mayJoin(a, b) || (a.lead > 0 && b.lead > 0) || (a.trail > 0 && b.trail > 0))
        return;
    const int foot = at.y + at.h;
    const Lines leadA = lines(at.y + 1, at.y + a.lead);
    const Lines leadB = lines(at.y + 1, at.y + b.lead);
    const Lines trailA = lines(foot - a.trail, foot - 1);
    const Lines trailB = lines(foot - b.trail, foot - 1);
    const int misread = int(((a.through | leadA) & (b.through | trailB)).count());
    Entry entry;
    entry.made = Made::Row;
    entry.isRow = true;
    entry.cut = std::int16_t(columns);
    entry.upper = left;
    entry.lower = right;
    entry.first = a.first;
    entry.last = b.last;
    entry.value = a.value + b.value
        + std::min(misread, kMostMisread) * toCost(kMisread + kMisreadMoves * m_wish.movePrice);
    entry.moved = a.moved + b.moved;
    entry.lead = std::min(a.lead, b.lead);
    entry.trail = std::min(a.trail, b.trail);
    entry.through = (a.through | leadA | trailA) & (b.through | leadB | trailB)
        & lines(at.y + entry.lead + 1, foot - entry.trail - 1);
    add(entry);
}

void NearestPage::addRows(const GridRect& at)
{
    for (int columns = 1; columns < at.w; ++columns) {
        if (!isEdge(at.x + columns))
            continue;
        const Range before = range(at.x, columns, at.y, at.h);
        const Range after = range(at.x + columns, at.w - columns, at.y, at.h);
        for (std::uint32_t a = before.from; a < before.to; ++a) {
            const Entry& left = m_entries[a];
            if ((left.made == Made::White && left.side == Side::Right)
                || (left.isRow && !m_rules.wholeGroup(left.first, left.last)))
                continue;
            for (std::uint32_t b = firstOf(after, left.last);
                 b < after.to && m_entries[b].first == left.last;
                 ++b)
                joinRow(a, b, at, columns);
        }
    }
}

// What the finished page pays for white that has become a hole; at its foot nothing is one.
Cost NearestPage::holePrice(
    const GridRect& at, const GridRect& part, const Entry& inside, Side side) const
{
    const double price = m_leaves.weights().hole;
    const double more = double(at.w * at.h - part.w * part.h) / kHoleMore;
    if (side == Side::Left || side == Side::Right)
        return at.w - part.w >= kHoleColumns && at.h >= kHoleRows ? toCost(price * (1 + more)) : 0;
    const int rows = 1 + (side == Side::Top ? inside.lead : inside.trail);
    if (at.w < kHoleColumns || rows < kHoleRows || (side == Side::Foot && at.y + at.h == m_rows))
        return 0;
    return toCost(price * (rows == kHoleRows ? 1 + rows * more : more));
}

// White around white is added in one order of its sides.
void NearestPage::addWhite(const GridRect& at, const GridRect& part, Side side)
{
    const Range inside = range(part.x, part.w, part.y, part.h);
    const int cells = at.w * at.h - part.w * part.h;
    for (std::uint32_t k = inside.from; k < inside.to; ++k) {
        Entry entry = m_entries[k];
        if (!mayStand(entry.first, entry.last) || (entry.made == Made::White && entry.side > side))
            continue;
        entry.made = Made::White;
        entry.upper = k;
        entry.value += cells * m_whiteCell + holePrice(at, part, entry, side);
        entry.lead = std::int16_t(entry.lead + part.y - at.y);
        entry.trail = std::int16_t(entry.trail + at.y + at.h - part.y - part.h);
        entry.side = side;
        entry.cut = std::int16_t(at.w - part.w + at.h - part.h);
        add(entry);
    }
}

void NearestPage::addWhite(const GridRect& at)
{
    if (at.h > 1) {
        addWhite(at, {0, at.x, at.y, at.w, at.h - 1}, Side::Foot);
        addWhite(at, {0, at.x, at.y + 1, at.w, at.h - 1}, Side::Top);
    }
    int left = at.x + 1;
    int right = at.x + at.w - 1;
    while (!isEdge(left))
        ++left;
    while (!isEdge(right))
        --right;
    if (left <= right) {
        addWhite(at, {0, at.x, at.y, right - at.x, at.h}, Side::Right);
        addWhite(at, {0, left, at.y, at.x + at.w - left, at.h}, Side::Left);
    }
}

} // namespace wainscot::engine
