// The page of a term's file in numbers: a sheet to hold in the hand, so its type is that of a book
// and not of a wall.
#pragma once

#include "layout/typeset/faces.h"
#include "layout/typeset/style.h"

namespace wainscot {

// Names and labels stand in a narrow column, what was said and written in a wide one beside it.
struct TermStyle {
    SizeMm paper{Mm(210), Mm(297)}; // upright
    Mm side{24}; // left and right margin
    Mm top{26}; // to the first cap line
    Mm foot{28}; // below the last baseline
    Mm label{36}; // width of the narrow column
    Mm gutter{6};
    TypeScale scale{Mm(2.5), -1, 1, 5}; // body 10.6 pt in the book face: 20 arcminutes at 0.43 m
    Pairing pairing = pairings().front();
    Palette palette = palettes().front();

    [[nodiscard]] Mm width() const { return paper.width - 2 * side; }
    [[nodiscard]] Mm bottom() const { return paper.height - foot; }
    [[nodiscard]] Mm textLeft() const { return side + label + gutter; }
    [[nodiscard]] Mm textWidth() const { return width() - label - gutter; }
};

} // namespace wainscot
