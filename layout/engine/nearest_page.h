// The page nearest to how it stood: over all order-preserving slicing trees, with white anywhere,
// the least price in which every piece moved costs something.
//
// Unlike the table of runs this one knows where on the page a run stands, so that moving down is
// priced as well as moving aside. That makes many more states; they stay few because a run can only
// stand in a rectangle that its pieces stood in: what has to move because of it is counted before
// anything is solved, and no more than a given movement is allowed.
//
// Where a line passes both parts of a row between their pieces, a reader goes on too early; which
// lines pass a run depends on the whole of it, so of each run in each rectangle a few ways are
// kept, the cheapest and those that fewer lines pass. Up to that the answer is exact.
#pragma once

#include "layout/engine/leaf.h"
#include "layout/engine/run_rules.h"

#include <bitset>
#include <map>
#include <optional>
#include <set>

namespace wainscot::engine {

struct NearestWish {
    double movePrice = 30; // units for a piece that moves wholly; see difference()
    double mostMoved = 2; // pieces, sum of what each moves
    std::set<ItemId> touched; // may stand anywhere
    std::vector<char> edges; // by column line, 0..columns: whether pieces may begin or end there
    std::size_t kept = 3; // ways of one run in one rectangle
    const std::atomic<bool>* cancel = nullptr;
};

class NearestPage {
public:
    static constexpr int kMostRows = 127;
    // `leaves` has all pieces of one page without pins in the order they are read, `before` where
    // they stood.
    NearestPage(LeafTable& leaves, const std::map<ItemId, Placement>& before, NearestWish wish);

    // The cells of the best pages, best first, at most `most`; none when there is no such page.
    [[nodiscard]] std::vector<std::map<ItemId, GridRect>> find(int most);
    [[nodiscard]] bool gaveUp() const { return m_gaveUp; } // there was too much to look at

private:
    using Lines = std::bitset<kMostRows + 1>; // horizontal lines of the grid
    enum class Side : std::uint8_t { Top, Foot, Left, Right };
    enum class Made : std::uint8_t { Leaf, Stack, Row, White };
    // A run in a rectangle.
    struct Entry {
        Cost value = kNever;
        std::int32_t moved = 0; // 1/1024 of a piece
        std::uint32_t upper = 0; // or left, or the only part
        std::uint32_t lower = 0; // or right
        Lines through; // lines that cut none of its blocks and have some above and below
        std::int16_t first = 0;
        std::int16_t last = 0;
        std::int16_t lead = 0; // rows of white at the top
        std::int16_t trail = 0; // and at the foot
        std::int16_t cut = 0; // rows or columns of the first part, or of the white
        std::int8_t gap = 0; // rows of white between the parts of a stack
        Made made = Made::Leaf;
        Side side = Side::Foot; // of the white
        bool isStack = false;
        bool isRow = false;
    };
    struct Leaf { // a piece in a cell of some height, at any row
        RectMm seen; // as at row 0
        Cost price = kNever;
        bool known = false;
    };
    struct Range {
        std::uint32_t from = 0;
        std::uint32_t to = 0;
    };

    [[nodiscard]] bool isEdge(int line) const { return m_wish.edges[std::size_t(line)] != 0; }
    [[nodiscard]] int span(int x, int w) const { return x * m_columns + w - 1; }
    [[nodiscard]] Range& range(int x, int w, int y, int h);
    void fillRect(const GridRect& at);
    void addLeaves(const GridRect& at);
    void addStacks(const GridRect& at);
    void addRows(const GridRect& at);
    void addWhite(const GridRect& at);
    void addWhite(const GridRect& at, const GridRect& part, Side side);
    [[nodiscard]] Cost holePrice(
        const GridRect& at, const GridRect& part, const Entry& inside, Side side) const;
    [[nodiscard]] bool mayJoin(const Entry& a, const Entry& b) const;
    [[nodiscard]] std::uint32_t firstOf(const Range& range, int first) const;
    void joinStack(std::uint32_t upper, std::uint32_t lower, int rows, int gap, int line);
    void joinRow(std::uint32_t left, std::uint32_t right, const GridRect& at, int columns);
    [[nodiscard]] Lines lines(int from, int to) const;
    [[nodiscard]] static bool covers(const Entry& one, const Entry& other);
    void add(Entry entry);
    [[nodiscard]] const Leaf& leaf(int i, const GridRect& at);
    [[nodiscard]] Cost rivalry(int i, double areaMm2) const;
    [[nodiscard]] std::int32_t movedBy(int i, const GridRect& at, const Leaf& leaf) const;
    [[nodiscard]] bool mayStand(int first, int last) const;
    void measure(const GridRect& at);
    void collect(const Entry& entry, const GridRect& at, std::map<ItemId, GridRect>& out) const;

    LeafTable& m_leaves;
    RunRules m_rules;
    NearestWish m_wish;
    int m_count;
    int m_columns;
    int m_rows;
    std::int32_t m_budget;
    Cost m_whiteCell;
    bool m_gaveUp = false;
    std::vector<std::optional<Placement>> m_before; // of the pieces that may not move freely
    std::vector<double> m_rival; // area that a picture has to keep away from, mm2; 0 = none
    std::vector<char> m_leads;
    std::vector<char> m_oldEdges; // columns at which something began
    std::vector<Leaf> m_leafMemo;
    std::vector<Range> m_ranges;
    std::vector<Entry> m_entries;
    std::vector<std::int32_t> m_inside; // prefix sums: what moves if the runs stands there
    std::vector<std::int32_t> m_lost; // prefix sums: share of each piece that the rectangle covers
    std::int32_t m_allLost = 0;
    Lines m_all;
    std::vector<std::vector<Entry>> m_made; // by run, of the rectangle being filled
    std::vector<int> m_runs; // of those, which have any
};

} // namespace wainscot::engine
