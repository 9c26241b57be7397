// Pieces as drafts begin them: without id, panel and place. Shared by the drafts of all templates.
#pragma once

#include "app/jobs/draft.h"

namespace wainscot {

[[nodiscard]] Piece textPiece(PieceKind kind, const QString& text, const QString& heading = {});
// With the picture's own caption, and the part that must stay in view.
[[nodiscard]] Piece picturePiece(const Picture& picture, int group, bool dominant);
[[nodiscard]] Piece quotePiece(const Quote& quote, int group);
// What the adult makes of it, and what comes next, where that is written.
void addAdultTexts(PanelDraft& draft, const Material& material);
[[nodiscard]] Piece interpretationPiece(const Material& material);
[[nodiscard]] Piece nextStepPiece(const Material& material);
// The teacher's own line, or one made from what is known.
[[nodiscard]] QString creditsLine(
    const Material& material, const std::vector<const Quote*>& quotes);
// Wide or tall pictures that a frame of this shape can take with the least cut away come first.
[[nodiscard]] double cutByFrame(const Picture& picture, double aspect); // share of a side, 0..1

} // namespace wainscot
