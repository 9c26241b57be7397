// The numbers behind a finished page: what of each picture is cut, how large things came out, what
// is white, and what each of it costs. Sentences are made of them elsewhere.
#pragma once

#include "layout/engine/arrangement.h"

namespace wainscot::engine {

enum class CropSide {
    None,
    LeftAndRight,
    TopAndBottom,
};

struct PieceReasons {
    ItemId id = 0;
    CostTerms cost; // at standard prices; nothing for pinned pieces
    bool pinned = false;
    double cropShare = 0; // of the picture, 0..1
    CropSide crop = CropSide::None;
    double sizeByAim = 0; // area by the area aimed at; 0 = no picture or nothing aimed at
    double leads = 0; // of the page's largest picture: its area by the next one's; else 0
    std::vector<ItemId> mates; // the others of its group, in reading order
    Mm toMates; // shortest way to one of them; 0 = it has none
};

struct PageReasons {
    CostTerms cost; // sum over the pieces
    double white = 0; // share of the paper that nothing touches
    int leftEdges = 0;
    int orderInversions = 0;
    std::vector<PieceReasons> pieces; // reading order
};

// `page` holds the places of the request's pieces on one page (numbered 0).
[[nodiscard]] PageReasons explain(
    const Request& request, const std::vector<Placement>& page, const TextMeasurer& text);

} // namespace wainscot::engine
