// The free parts of a page with pinned pieces: straight cuts around the pins, and the runs of the
// other pieces shared out over what is left, in reading order.
#pragma once

#include "layout/engine/pages.h"

#include <map>

namespace wainscot::engine {

class PinFrame {
public:
    // All pins lie on one page. `table` and `leaves` must outlive the frame.
    PinFrame(const RunTable& table, LeafTable& leaves, std::vector<Pin> pins);

    [[nodiscard]] Cost cost(int first, int last);
    // Fills in the trees of pieces out.first .. out.last-1. REQUIRES: their cost is below kNever
    void describe(PagePlan& out);

private:
    struct Part {
        GridRect at;
        int first;
        int last;
        friend auto operator<=>(const Part& a, const Part& b)
        {
            return std::tie(a.at.x, a.at.y, a.at.w, a.at.h, a.first, a.last)
                <=> std::tie(b.at.x, b.at.y, b.at.w, b.at.h, b.first, b.last);
        }
    };
    enum class Cut { None, Empty, Filled, Pinned, Across, Down };
    struct Best {
        Cost cost = kNever;
        Cut cut = Cut::None;
        int at = 0; // row or column of the cut
        int split = 0;
        int height = 0; // rows filled
        int gap = 0; // rows of white below a cut across
    };

    [[nodiscard]] Best solve(const Part& part);
    [[nodiscard]] Best fillFree(const Part& part) const;
    void tryCuts(const Part& part, bool across, const std::vector<Pin>& inside, Best& best);
    void collect(const Part& part, PagePlan& out);
    [[nodiscard]] std::vector<Pin> pinsIn(const GridRect& at) const;
    [[nodiscard]] std::pair<Part, Part> halves(const Part& part, const Best& cut) const;
    [[nodiscard]] int gapRows(const Part& part, int split, int at) const;

    const RunTable& m_table;
    LeafTable& m_leaves;
    std::vector<Pin> m_pins;
    int m_page;
    std::map<Part, Best> m_memo;
};

} // namespace wainscot::engine
