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

// Cleared pieces, and an empty pinned place for each that this audience does not see yet: nothing
// is arranged over what waits for permission.
[[nodiscard]] ClearedPanel clearedWithPlaces(
    const PermissionRules& rules, const Book& book, const Panel& panel, std::vector<Piece> pieces);

// Where pieces stand, as the engine knows it; those without a place are left out.
[[nodiscard]] std::vector<engine::Placement> placementsOf(
    const std::vector<ClearedPiece>& pieces, const Grid& grid);

// The pieces at the places of an arrangement; pinned ones stay, and those without a place.
[[nodiscard]] std::vector<Piece> piecesAt(
    std::vector<Piece> pieces, const std::vector<engine::Placement>& places);

} // namespace wainscot
