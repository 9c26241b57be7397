// The free parts of a page with pinned pieces: cuts around the pins, and the runs of the other
// pieces shared out over what is left, in reading order.
#pragma once

#include "layout/engine/divide.h"
#include "layout/engine/pages.h"

#include <map>

namespace wainscot::engine {

// The cells that a place in mm covers: it may reach a little into the gutter around them. `below`
// is the white that must stay under it.
[[nodiscard]] GridRect coveredCells(const PageSpec& page, const RectMm& place, Mm below);

// The system with the edges of pins among its cuts.
[[nodiscard]] ColumnSystem withPinEdges(
    ColumnSystem system, const std::vector<Pin>& pins, int columns);

// Whether straight cuts can part the pins of each page.
[[nodiscard]] bool partable(const std::vector<Pin>& pins);

// One way of dividing the page.
class PinFrame {
public:
    enum class Cuts { Straight, Rings }; // Rings: straight cuts and rings of four
    // `blocks` lie on one page and do not overlap. `table` and `leaves` must outlive the frame.
    PinFrame(const RunTable& table, LeafTable& leaves, std::vector<GridRect> blocks, Cuts cuts);

    // Cost of the pieces on the page's first `rows` rows; kNever = cannot be.
    [[nodiscard]] Cost cost(int first, int last, int rows);
    // Fills in the trees of pieces out.first .. out.last-1. REQUIRES: their cost is below kNever
    void describe(PagePlan& out);
    [[nodiscard]] int lowestRow() const; // below all blocks

private:
    struct Part {
        GridRect at;
        int first = 0;
        int last = 0;
        friend auto operator<=>(const Part& a, const Part& b)
        {
            return std::tie(a.at.x, a.at.y, a.at.w, a.at.h, a.first, a.last)
                <=> std::tie(b.at.x, b.at.y, b.at.w, b.at.h, b.first, b.last);
        }
    };
    enum class Cut { None, Empty, Filled, Pinned, Across, Down, Round };
    struct Best {
        Cost cost = kNever;
        Cut cut = Cut::None;
        int at = 0; // row or column of the cut; which ring
        int split = 0;
        int height = 0; // rows filled
        int gap = 0; // rows of white below a cut across
        std::array<int, 4> splits{}; // of a ring
    };

    [[nodiscard]] Best solve(const Part& part);
    [[nodiscard]] Best fillFree(const Part& part) const;
    void tryCuts(const Part& part, bool across, const std::vector<GridRect>& inside, Best& best);
    void tryRings(const Part& part, const std::vector<GridRect>& inside, Best& best);
    void collect(const Part& part, PagePlan& out);
    [[nodiscard]] std::vector<GridRect> blocksIn(const GridRect& at) const;
    [[nodiscard]] const std::vector<Ring>& rings(const GridRect& at);
    [[nodiscard]] std::vector<Part> partsOf(const Part& part, const Best& cut);
    [[nodiscard]] int gapRows(const Part& part, int split, int at) const;
    [[nodiscard]] bool maySplit(const Part& part, int split) const;
    [[nodiscard]] bool tooSmall(const Part& part, const std::vector<GridRect>& inside) const;

    const RunTable& m_table;
    LeafTable& m_leaves;
    std::vector<GridRect> m_blocks;
    Cuts m_cuts;
    std::vector<int> m_cells; // prefix sums of the pieces' least areas
    std::map<Part, Best> m_memo;
    std::map<std::array<int, 4>, std::vector<Ring>> m_rings; // by part
};

// A page with pins: exact over straight cuts at pin edges and system columns. Where these cannot
// part the pins, or leave no room for a whole page's pieces, the better of rings and joined blocks.
class PinnedPage {
public:
    // All pins lie on one page.
    PinnedPage(const RunTable& table, LeafTable& leaves, const std::vector<Pin>& pins);
    [[nodiscard]] Cost cost(int first, int last);
    void describe(PagePlan& out);
    // Rows the page would need for the pieces; `most` + 1 = more than that.
    [[nodiscard]] int rowsNeeded(int first, int last, int most);

private:
    struct Way {
        PinFrame frame;
        Cost lost = 0; // white inside joined blocks
        bool fallback = false;
    };
    [[nodiscard]] std::vector<std::pair<Cost, Way*>> costs(int first, int last, int rows);

    LeafTable& m_leaves;
    int m_count;
    bool m_straight = true;
    std::vector<Way> m_ways;
};

} // namespace wainscot::engine
