// An item as the engine sees it while it solves: with its text's numbers and its aimed-at size.
#pragma once

#include "layout/engine/arrangement.h"

namespace wainscot::engine {

struct Piece {
    Item item;
    TextSpec spec;
    double targetMm2 = 0; // area a picture aims at
    double ceilingMm2 = 0; // above it the picture rivals the dominant one; 0 = none
    double floorMm2 = 0; // below it the picture does not dominate; 0 = none
    double said = 0; // how much the text says: words, or letters where those are unknown
    bool blank = false; // a planned empty cell

    [[nodiscard]] bool isPicture() const { return item.picture.has_value(); }
    [[nodiscard]] bool isSample() const { return isPicture() && item.kind == Kind::Work; }
};

// Items that are planned white have this id; they are left out of the arrangement.
inline constexpr ItemId kBlankItem = -1;

// White kept on each side of a work sample, inside its mat, in gutters.
inline constexpr double kMatBorder = 0.6;
// Padding of a tinted text, in row units.
inline constexpr double kTintPadding = 0.62;

} // namespace wainscot::engine
