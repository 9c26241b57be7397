// What the style's own tests would find on finished pages and no sum over single pieces can see:
// holes, leaning, rivals of the dominant picture, ink, edges, order.
#pragma once

#include "layout/engine/leaf.h"

namespace wainscot::engine {

struct PageFaults {
    int edges = 0; // left edges beyond what the style allows
    int holes = 0; // rectangles of white over 3 columns x 6 rows that do not go on to the foot
    int holeCells = 0; // their size in columns x rows
    double dominance = 0; // largest picture by the next; 0 = fewer than two pictures
    double lead = 0; // share of the panel that the largest of several pictures has; 0 = fewer
    double imbalance = 0; // standard deviation of what covers the quarters, as share of a quarter
    double ink = 0; // share of the panel, photographs at their usual tone
    double white = 1; // share of the paper that nothing touches
};

// Everything on `page` of an arrangement.
[[nodiscard]] PageFaults faultsOf(const Arrangement& arrangement,
    int page,
    const std::vector<Piece>& pieces,
    const PageSpec& spec,
    TextMemo& text);

// Their price in cost units.
[[nodiscard]] double priceOf(const PageFaults& faults, const Weights& weights);

// A page without faults that another attempt might mend.
[[nodiscard]] bool isSound(const PageFaults& faults);

// The least by which a dominant picture leads (panel style 7).
inline constexpr double kDominance = 2.0;

} // namespace wainscot::engine
