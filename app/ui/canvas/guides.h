// Quiet help while a piece moves: lines where its edges meet those of others, and how far it is
// from its neighbours.
#pragma once

#include <Qt>

#include <vector>

#include "core/base/geometry.h"

namespace wainscot::ui {

// A line along which edges or middles agree; it spans the pieces that share it.
struct Guide {
    Qt::Orientation along = Qt::Vertical;
    Mm at; // x of a vertical line, y of a horizontal one
    Mm from;
    Mm to;
    friend bool operator==(const Guide&, const Guide&) = default;
};

// The room between a piece and its nearest neighbour on one side, or the edge of the paper.
struct Distance {
    PointMm from;
    PointMm to;
    [[nodiscard]] Mm length() const { return (to.x - from.x) + (to.y - from.y); }
    friend bool operator==(const Distance&, const Distance&) = default;
};

// Edges (start, middle, end; top, middle, foot) of `cell` that lie within `reach` of another's,
// each line once, at the other's place.
[[nodiscard]] std::vector<Guide> guidesFor(
    const RectMm& cell, const std::vector<RectMm>& others, Mm reach);

// The cell moved by at most `reach` each way, so that the nearest edges or middles meet.
[[nodiscard]] RectMm snappedToOthers(
    const RectMm& cell, const std::vector<RectMm>& others, Mm reach);

// Left, right, above, below; a side where a neighbour lies under the cell has none.
[[nodiscard]] std::vector<Distance> distancesFor(
    const RectMm& cell, const std::vector<RectMm>& others, SizeMm panel);

} // namespace wainscot::ui
