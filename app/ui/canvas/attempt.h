// What would be done if the hand let go now.
#pragma once

#include "core/base/geometry.h"
#include "core/model/ids.h"

namespace wainscot::ui {

struct PlacedCell {
    PieceId piece;
    RectMm cell;
    friend bool operator==(const PlacedCell&, const PlacedCell&) = default;
};

struct Attempt {
    enum class What { Nothing, Place, Resize, Swap, Carry, Drop };
    What what = What::Nothing;
    RectMm cell; // Place, Resize, Drop: of the piece in hand
    PieceId with; // Swap
    PanelId panel; // Carry
    friend bool operator==(const Attempt&, const Attempt&) = default;
};

} // namespace wainscot::ui
