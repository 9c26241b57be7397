// What the drawn pieces of a page cover, and what is white between them.
#pragma once

#include "layout/check/panel_facts.h"
#include "tests/support/wall_layouts.h"

namespace wainscot::walls {

// What one piece draws: words from the first cap line to the last baseline, picture, ground.
struct Box {
    PieceId piece;
    RectMm all;
    RectMm words; // empty = none
    RectMm picture;
    RectMm ground;
};
[[nodiscard]] std::vector<Box> boxesOf(const check::PanelFacts& facts);

[[nodiscard]] RectMm united(const RectMm& a, const RectMm& b); // an empty one counts for nothing

// Rectangles of white larger than 3 columns x 6 rows that do not go on to the foot of the page;
// largest first, none over another.
[[nodiscard]] int holesIn(const std::vector<Box>& boxes, const Grid& grid);

// Standard deviation of what is covered in the four quarters of the page, as share of a quarter.
[[nodiscard]] double imbalanceOf(const std::vector<Box>& boxes, SizeMm panel);

// Shares of the page. Letters leave most of their block untouched; photographs are taken to have a
// mean coverage of 0.45, drawings of 0.15 (means of the sample class's pictures, rounded).
struct Touched {
    double paper = 0;
    double ink = 0;
    double tint = 0;
};
[[nodiscard]] Touched touchedBy(const check::PanelFacts& facts, const std::vector<Box>& boxes);

// Neighbours are a gutter apart, or a gutter and whole rows or columns.
[[nodiscard]] bool slotsApart(const std::vector<Place>& places, const Grid& grid);

// Whatever is not the caption's own is at least twice as far from it as its picture.
[[nodiscard]] bool captionsApart(const check::PanelFacts& facts, const std::vector<Box>& boxes);

// No words, picture or ground reaches into a margin.
[[nodiscard]] bool marginsClear(const check::PanelFacts& facts);

} // namespace wainscot::walls
