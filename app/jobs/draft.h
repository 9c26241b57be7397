// The pieces of each panel before they have a place: which, in which order, in which groups.
#pragma once

#include "app/jobs/selection.h"

#include <vector>

namespace wainscot {

struct PanelDraft {
    std::vector<Piece> pieces; // reading order; without ids and panel
};

// Days on a wall: title, context, credits, leading picture, then for each moment label, picture and
// quote; the adult's interpretation and next steps on the last panel.
[[nodiscard]] std::vector<PanelDraft> draftDays(
    const Material& material, const Selection& selection, int panels);

// One drawing and its words on each panel, with the adult's note and how the words were told.
[[nodiscard]] std::vector<PanelDraft> draftDrawings(
    const Material& material, const std::vector<DrawingChoice>& drawings);

// The small print when the adult wrote none: the days and how the words were taken down, as far as
// the quotes on the panels say. "3-6 November. Words taken down as spoken by M. Adeyemi."
[[nodiscard]] QString creditsFor(const Material& material, const std::vector<const Quote*>& quotes);

// Takes out what stands on the display already because it is pinned there.
void withoutPinned(std::vector<PanelDraft>& drafts, const std::vector<Piece>& pinned);

// Takes the group out that needs most words; false when at most one is left.
bool dropLongestMoment(PanelDraft& draft, const Book& book, std::vector<Piece>& dropped);

} // namespace wainscot
