// A panel of any size on small printer paper: parts that overlap, with marks to join them by, and
// one sheet that shows how they go together.
#pragma once

#include "layout/paper/pdf_writer.h"
#include "layout/typeset/display_list.h"

#include <vector>

namespace wainscot {

struct SheetOptions {
    SizeMm paper; // either way round
    Mm overlap{10}; // of neighbouring parts, 0..50 mm
    // Paper a printer cannot reach, on every side. 7 mm covers the printers whose manuals were
    // looked at, save the foot of US Legal in colour lasers (18 mm).
    // With less than 4 mm the marks and names in the margin are cut off.
    Mm margin{7};
    // How much larger everything is drawn around the middle of each sheet, 0.9 to 1.1: what makes
    // good for a printer that shrinks or stretches.
    double scale = 1;
    bool leaveOutWhite = false; // sheets of the panel with nothing on them but its white ground
};

// What a sheet shows at least that no other does, where the paper is large enough: a narrower strip
// is hard to lay straight (common practice, no source).
inline constexpr Mm kLeastStrip{30};

struct SheetPlan {
    SizeMm sheet; // the paper as turned
    SizeMm part; // what one sheet shows at most: the paper without its margins
    SizeMm panel;
    Mm overlap;
    int columns = 0;
    int rows = 0;
    std::vector<Mm> lefts; // of the columns; where one begins, its cut edge lies on the one before
    std::vector<Mm> tops; // of the rows
    std::vector<bool> white; // row by row, what has nothing on it; empty = not looked at
    [[nodiscard]] bool isWhite(int column, int row) const;
    [[nodiscard]] int whiteCount() const;
    [[nodiscard]] int count() const { return columns * rows; }
    // The part of the panel on a sheet, counted from the top left. It ends an overlap after the
    // next sheet begins, or where the paper or the panel does.
    [[nodiscard]] RectMm area(int column, int row) const;
};

// The way round that needs fewer sheets; upright if both need as many. Each way
// n = ceil((panel - overlap) / (part - overlap)). Sheets are full, save the last row and column
// and, where these would be narrow strips, the ones before. WrongUse: margins or overlap leave
// nothing of the paper, or more than 400 sheets are needed.
Result<SheetPlan> planSheets(SizeMm panel, const SheetOptions& options);

// The same sheets with their seams moved to where they cut least: marked parts of pictures, lines
// of text, children's work, other pictures, in this order. Seams use all the paper that the last
// row and column would leave empty: there are not more sheets for it, at least 5 mm are left to
// glue on, and each sheet shows at least kLeastStrip that no other does, or as much as without
// moving.
// Then it is known, too, which sheets stay white.
[[nodiscard]] SheetPlan withQuietSeams(SheetPlan plan, const DisplayList& list);

// "B3": row by letter from the top, column by number from the left.
[[nodiscard]] QString sheetName(int column, int row);

// For every panel one sheet that shows how to join them, with a ruler to check the scale by, then
// its sheets row by row. Bleed and crop marks of the options do not apply: the panel's edge lies
// inside the sheets. The pages carry no structure; the untiled file is the one to keep.
//
// Errors as of writePdf.
Result<PaperReport> writeSheets(const QString& path,
    std::span<const PaperPanel> panels,
    PictureSource& pictures,
    const PaperOptions& options,
    const SheetOptions& sheets,
    const PaperWatch& watch = {});

} // namespace wainscot
