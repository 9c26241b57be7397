// The white of a page's foot shared out: whole rows of it between pieces one above the other.
#pragma once

#include "layout/engine/pages.h"

#include <optional>

namespace wainscot::engine {

// Rows of white added wherever pieces lie one above the other.
struct Spread {
    int bands = 0; // between parts that lie across the whole page
    int columns = 0; // within its columns
};

// The page so spread; nothing when it has not the room, or no such places, or keeps to a template.
// What belongs together (a group, a label and what it names) stays together.
[[nodiscard]] std::optional<PagePlan> spread(
    const PagePlan& plan, const Spread& by, LeafTable& leaves);

// The page so spread that its pieces come to stand nearest to where they were before; as it is when
// none of them was anywhere.
[[nodiscard]] PagePlan spreadAsBefore(PagePlan plan, LeafTable& leaves);

inline constexpr int kMostSpread = 5; // rows; more of white would be a hole

} // namespace wainscot::engine
