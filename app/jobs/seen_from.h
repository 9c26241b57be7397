// Which texts of a panel can be read from where somebody stands.
#pragma once

#include "layout/check/panel_facts.h"
#include "layout/wall/sight.h"

#include <vector>

namespace wainscot {

// The lines of one piece that are read alike: its words, or what is small on it.
struct SeenText {
    PieceId piece;
    PieceKind kind = PieceKind::Quote;
    check::Use use = check::Use::Body;
    QString begins; // its first line
    RectMm place; // of its lines on the panel
    Mm cap; // of the line that appears smallest
    Mm easyCap; // that would be read with ease at the same place
    double arcminutes = 0; // of that capital
    wall::Legibility legibility = wall::Legibility::Easy;
};

// In reading order. Lines of writings without a capital H are measured by nothing and left out.
[[nodiscard]] std::vector<SeenText> seenFrom(
    const check::PanelFacts& facts, const SizeMm& panel, const wall::Standing& standing);

} // namespace wainscot
