// What to do about a panel that is too empty or too full: proposals that have been tried, with
// their numbers and a sentence for the teacher.
#pragma once

#include "core/model/display.h"

#include <QString>

#include <cstdint>
#include <vector>

namespace wainscot {

enum class AdviceKind {
    SmallerPanel, // everything fits on the next smaller standard size
    LargerWords, // the children's words one step larger fill the panel
    MorePanels, // what found no room fits on one panel more
    LessOnIt, // best selection: what was left out so that the rest fits
};

struct Advice {
    AdviceKind kind = AdviceKind::SmallerPanel;
    SizeMm panelSize; // SmallerPanel: the way round of the panel it replaces
    int voiceStep = 0; // LargerWords
    int panels = 0; // MorePanels
    double whiteNow = 0; // share of the area between the margins, 0..1; the emptiest panel
    double whiteThen = 0;
    double missingMm2 = 0; // MorePanels, LessOnIt: room for what was left out
    std::vector<std::int64_t> quotes; // left out for want of room
    QString says;
};

// "smaller_panel", "larger_words", "more_panels", "less_on_it": stable names for programs.
[[nodiscard]] QString nameOf(AdviceKind kind);

// Fills in `says` from the numbers.
[[nodiscard]] QString sentenceFor(const Advice& advice);

// Standard sizes below a panel, largest first, the same way round, none smaller than a third of it:
// ISO A below ISO A, US sizes below US sizes, ISO A for others.
[[nodiscard]] std::vector<SizeMm> smallerPanels(SizeMm panel);

} // namespace wainscot
