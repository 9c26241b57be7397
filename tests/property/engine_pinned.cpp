// Pages with pins, forced breaks and two pages against every way of cutting around the pins and of
// sharing the pieces out, each free part counted out tree by tree.
#include "layout/engine/pins.h"
#include "layout/engine/search.h"
#include "tests/support/engine_exhaustive.h"

#include <gtest/gtest.h>

#include <set>

namespace wainscot::engine {
namespace {

bool overlaps(const GridRect& a, const GridRect& b)
{
    return a.x < b.x + b.w && b.x < a.x + a.w && a.y < b.y + b.h && b.y < a.y + a.h;
}

class ExhaustivePins {
public:
    ExhaustivePins(LeafTable& leaves, const ColumnSystem& system, std::vector<Pin> pins)
        : m_leaves(leaves)
        , m_trees(leaves, system)
        , m_pages(leaves, system)
        , m_system(system)
        , m_pins(std::move(pins))
    {
    }

    // Of all pages from `page` on; pages with pins come whether pieces are left or not.
    Cost best(int page, int first, int pages)
    {
        if (page == pages)
            return first == m_leaves.size() ? 0 : kNever;
        Cost cheapest = kNever;
        for (int last = first; last <= m_leaves.size(); ++last) {
            const Cost here = onPage(page, first, last);
            const Cost rest = here < kNever ? best(page + 1, last, pages) : kNever;
            if (rest < kNever)
                cheapest = std::min(cheapest, here + rest + toCost(m_leaves.weights().page));
        }
        return cheapest;
    }

    Cost onPage(int page, int first, int last)
    {
        for (int i = first + 1; i < last; ++i)
            if (m_leaves.piece(i).item.breakBefore)
                return kNever;
        const PageSpec& spec = m_leaves.page();
        m_here.clear();
        for (const Pin& pin : m_pins)
            if (pin.at.page == page)
                m_here.push_back({0, pin.at.x, pin.at.y, pin.at.w, pin.at.h});
        if (m_here.empty())
            return first == last ? kNever : m_pages.page(first, last);
        return part({0, 0, 0, spec.columns, spec.rows}, first, last);
    }

private:
    [[nodiscard]] int group(int i) const { return m_leaves.piece(i).item.group; }

    [[nodiscard]] std::vector<GridRect> inside(const GridRect& at) const
    {
        std::vector<GridRect> out;
        std::copy_if(
            m_here.begin(), m_here.end(), std::back_inserter(out), [&](const GridRect& pin) {
                return overlaps(pin, at);
            });
        return out;
    }

    [[nodiscard]] Cost white(const GridRect& at, int rows) const
    {
        const PageSpec& page = m_leaves.page();
        return toCost(m_leaves.weights().empty * at.w * rows / (page.columns * page.rows));
    }

    Cost part(const GridRect& at, int first, int last)
    {
        const std::vector<GridRect> pins = inside(at);
        if (pins.empty())
            return withoutPins(at, first, last);
        const GridRect& pin = pins.front();
        if (pins.size() == 1 && pin.x == at.x && pin.y == at.y && pin.w == at.w && pin.h == at.h)
            return first == last ? 0 : kNever;
        std::set<int> rows;
        std::set<int> columns(m_system.cuts.begin(), m_system.cuts.end());
        for (const GridRect& one : pins) {
            rows.insert({one.y, one.y + one.h});
            columns.insert({one.x, one.x + one.w});
        }
        Cost cheapest = kNever;
        for (int split = first; split <= last; ++split) {
            const bool within = split > first && split < last;
            if (within && group(split) > 0 && group(split) == group(split - 1))
                continue; // a group is one rectangle
            for (const int row : rows)
                cheapest = std::min(cheapest, across(at, row, first, split, last));
            for (const int column : columns) {
                if (column <= at.x || column >= at.x + at.w)
                    continue;
                const GridRect left{0, at.x, at.y, column - at.x, at.h};
                const GridRect right{0, column, at.y, at.x + at.w - column, at.h};
                cheapest = std::min(cheapest, both(left, right, first, split, last));
            }
        }
        return cheapest;
    }

    Cost across(const GridRect& at, int row, int first, int split, int last)
    {
        if (row <= at.y || row >= at.y + at.h)
            return kNever;
        const bool groups = split > first && split < last && group(split - 1) > 0
            && group(split) > 0 && group(split - 1) != group(split);
        const bool free = inside({0, at.x, row, at.w, 1}).empty();
        const int gap = groups && free && row + 1 < at.y + at.h ? 1 : 0;
        const GridRect above{0, at.x, at.y, at.w, row - at.y};
        const GridRect below{0, at.x, row + gap, at.w, at.y + at.h - row - gap};
        return both(above, below, first, split, last);
    }

    // Both parts, unless the cut goes through a pin.
    Cost both(const GridRect& one, const GridRect& other, int first, int split, int last)
    {
        for (const GridRect& pin : m_here)
            if (overlaps(pin, one) && overlaps(pin, other))
                return kNever;
        const Cost before = part(one, first, split);
        return before >= kNever ? kNever : std::min(kNever, before + part(other, split, last));
    }

    Cost withoutPins(const GridRect& at, int first, int last)
    {
        if (first == last)
            return white(at, at.h);
        if (!mayBeApart(m_leaves, first, last))
            return kNever;
        Cost cheapest = kNever;
        for (int h = 1; h <= at.h; ++h) {
            const Cost filled = m_trees.best(first, last, GridRect{0, at.x, at.y, at.w, h});
            if (filled < kNever)
                cheapest = std::min(cheapest, filled + white(at, at.h - h));
        }
        return cheapest;
    }

    LeafTable& m_leaves;
    Exhaustive m_trees;
    ExhaustivePages m_pages; // those without pins
    const ColumnSystem& m_system;
    std::vector<Pin> m_pins;
    std::vector<GridRect> m_here; // of the page being counted
};

// A pin on the first page, sometimes a second one on it or on the second page.
std::vector<Pin> pinsFor(const PageSpec& page, int seed)
{
    Dice dice(std::uint64_t(seed) + 400);
    std::vector<Pin> pins;
    const int many = 1 + seed % 2;
    for (int tries = 0; int(pins.size()) < many && tries < 50; ++tries) {
        GridRect at;
        at.page = seed % 4 == 3 ? int(pins.size()) : 0;
        at.w = dice.between(1, 2);
        at.h = dice.between(2, 4);
        at.x = dice.between(0, page.columns - at.w);
        at.y = dice.between(0, page.rows - at.h);
        const bool free = std::none_of(pins.begin(), pins.end(), [&](const Pin& pin) {
            return pin.at.page == at.page && overlaps(pin.at, at);
        });
        if (free)
            pins.push_back({1000 + int(pins.size()), at, page.cell(at)});
    }
    return pins;
}

struct Counts {
    int solved = 0;
    int twoPages = 0;
    int broken = 0; // with a forced break
};

void expectExact(int count, int seed, int pages, Counts& counts)
{
    SCOPED_TRACE(testing::Message() << count << " pieces on " << pages << " pages, seed " << seed);
    Small small = smallCase(count, 200 + seed);
    for (Item& item : small.items) {
        item.wish.bandBefore = false; // whole-page cuts and pins do not go together
        item.previous.reset();
    }
    const bool forced =
        pages == 2 && seed % 3 == 1 && small.items[std::size_t(count) / 2].group == 0;
    if (forced)
        small.items[std::size_t(count) / 2].breakBefore = true;
    const std::vector<Pin> pins = pinsFor(small.page, seed);
    for (const Pin& pin : pins)
        if (pin.at.page >= pages)
            return;
    TextMemo text(small.document->text);
    auto pieces = piecesOf(small.items, text);
    setTargets(pieces, small.page, pages, text);
    LeafTable leaves(small.page, pieces, text);
    const ColumnSystem system{"every column", {1, 2, 3}, {100, 200, 300}};
    RunTable table(leaves, system);
    const Cost counted = ExhaustivePins(leaves, system, pins).best(0, 0, pages);
    const Pagination found = cheapestPages(table, leaves, pins, {pages, kNever, nullptr});
    const bool fallback = std::any_of(
        found.pages.begin(), found.pages.end(), [](const PagePlan& page) { return page.fallback; });
    if (counted >= kNever) {
        EXPECT_TRUE(found.pages.empty() || fallback);
        return;
    }
    ASSERT_EQ(found.cost, counted);
    EXPECT_FALSE(fallback);
    ++counts.solved;
    counts.twoPages += pages == 2 ? 1 : 0;
    counts.broken += forced ? 1 : 0;
}

TEST(EnginePinned, EqualsEveryWayAroundPinsOnOneAndTwoPages)
{
    Counts counts;
    for (const int count : {3, 4, 5})
        for (int seed = 0; seed < 60; ++seed)
            expectExact(count, seed, 1 + seed / 2 % 2, counts);
    std::printf("%d solved, %d of them on two pages, %d with a forced break\n",
        counts.solved,
        counts.twoPages,
        counts.broken);
    EXPECT_GT(counts.solved, 60);
    EXPECT_GT(counts.twoPages, 25);
    EXPECT_GT(counts.broken, 5);
}

TEST(EnginePinned, EqualsEveryWayOfSixAndSevenPieces)
{
    Counts counts;
    for (int seed = 0; seed < 60; ++seed)
        expectExact(6 + seed / 4 % 2, seed, 1 + seed / 2 % 2, counts);
    std::printf("%d solved, %d of them on two pages\n", counts.solved, counts.twoPages);
    EXPECT_GT(counts.solved, 20);
}

} // namespace
} // namespace wainscot::engine
