// A panel that passes every rule of the check, as facts: a test spoils one thing and looks for one
// finding.
#pragma once

#include "layout/check/panel_facts.h"

namespace wainscot::check {

enum Pieces { kTitle = 1, kContext, kCredits, kLead, kLabel, kPhoto, kQuote, kMeaning, kWork };

[[nodiscard]] PanelFacts goodPanel();

[[nodiscard]] ClearedPiece& pieceOf(PanelFacts& panel, Pieces piece);
[[nodiscard]] TextLine& lineOf(PanelFacts& panel, Pieces piece, std::size_t index = 0);
[[nodiscard]] PictureFact& pictureOf(PanelFacts& panel, Pieces piece);

} // namespace wainscot::check
