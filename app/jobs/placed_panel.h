// A panel of the book as the engine sees it: cleared, measured, with the places its pieces have.
#pragma once

#include "core/base/result.h"
#include "core/permit/cleared.h"
#include "layout/engine/arrangement.h"
#include "layout/typeset/measurer.h"
#include "layout/typeset/style.h"

#include <QDate>

#include <memory>

namespace wainscot {

struct PlacedPanel {
    std::vector<Piece> pieces; // the book's
    ClearedPanel cleared;
    PanelStyle style;
    std::unique_ptr<PanelMeasurer> text;
    engine::Request request; // one page
    std::vector<engine::Placement> places; // of cleared pieces that have one
};

// NotFound when the book has no such panel.
[[nodiscard]] Result<PlacedPanel> placedPanel(const Book& book, PanelId panel, QDate today);

// The pieces at the places of an arrangement; pinned ones stay.
[[nodiscard]] std::vector<Piece> piecesAt(
    std::vector<Piece> pieces, const engine::Arrangement& arrangement);

} // namespace wainscot
