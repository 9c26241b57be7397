// The tests of the panel style that geometry and typesetting decide, on one typeset page, and the
// numbers behind them.
#pragma once

#include "layout/typeset/display_list.h"
#include "tests/support/wall_layouts.h"

#include <map>

namespace wainscot::walls {

// Where a verdict comes from.
enum class From {
    Typeset, // the drawn page, by layout/check
    Places, // the arrangement's rectangles
    Both,
};

struct StyleTest {
    int number; // in section 12 of the panel style; from 31 on a rule of another section
    const char* says;
    From from;
    double goal; // share of pages that pass
};
[[nodiscard]] const std::vector<StyleTest>& styleTests();

struct PageQuality {
    std::map<int, bool> passed; // by number of the test
    std::vector<double> cropLosses; // of the photos
    int pastCropLimit = 0;
    int belowPpi = 0;
    int textPastCell = 0; // or over another piece, or off the paper
    int inversions = 0;
    int longCaptions = 0; // of more than two lines
    double dominance = 0; // area of the largest picture by the next; 0 = fewer than two
    int leftEdges = 0;
    int holes = 0; // unplanned white over 3 columns x 6 rows, not at the foot
    double imbalance = 0; // standard deviation of the quarters' ink, as share of a quarter
    double white = 0; // share of the paper that nothing touches
    double coverage = 0; // mean ink
    bool marginsClear = true;
    double tint = 0; // share of the page on a pale ground, mats aside
    double lead = 0; // share of the page that the largest picture has
};

struct Quality {
    std::vector<PageQuality> pages;
    int groups = 0;
    int brokenGroups = 0;
    [[nodiscard]] bool passed(int test) const; // on every page
    [[nodiscard]] int testsPassed() const;
};

// Typesets and measures every page. `drawn`, when given, gets the pages to be looked at.
[[nodiscard]] Quality qualityOf(
    const Sheet& sheet, const Layout& layout, std::vector<DisplayList>* drawn = nullptr);

// The best of the usual ways: row heights from 1/12 to 1/2 of the page, columns from 2 to 4; fewest
// pages first, then most tests passed.
struct Judged {
    Layout layout;
    Quality quality;
};
[[nodiscard]] Judged bestRows(const Sheet& sheet);
[[nodiscard]] Judged bestMasonry(const Sheet& sheet);

} // namespace wainscot::walls
