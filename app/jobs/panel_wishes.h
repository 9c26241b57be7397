// What a teacher asked about the panels of a display: which pieces share one, and where one begins.
#pragma once

#include "app/jobs/draft.h"

#include <QStringList>

#include <vector>

namespace wainscot {

// Moves pieces between drafts until those kept together are on one panel and a piece that starts a
// panel is the first of its panel's moments; what follows it comes along. Pinned pieces never move.
// `panels` are in the order of the display. Answers with what could not be done, a sentence each.
[[nodiscard]] QStringList heedPanelWishes(const std::vector<PanelDraft*>& panels, const Book& book);

} // namespace wainscot
