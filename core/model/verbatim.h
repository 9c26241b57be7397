// Whether the words shown on a panel are a child's own: in their order, unchanged, what was left
// out marked by an ellipsis, what an adult put in between square brackets.
//
// Words and marks of punctuation count each for themselves; spaces and line breaks do not.
#pragma once

#include <QString>

namespace wainscot {

// True when `shown` holds nothing but words of `words` in their order; every place where words were
// left out bears an ellipsis (U+2026), and only text in square brackets is new. Words shown in full
// are verbatim; nothing at all is not.
[[nodiscard]] bool isVerbatim(const QString& shown, const QString& words);

// What an adult typed over a child's words, with its traces: as many of the child's own words stay
// as can be found in order, an ellipsis stands wherever some are missing, and what is not the
// child's goes into square brackets. The result is verbatim, or the full words when none of them
// are left.
[[nodiscard]] QString withTraces(const QString& typed, const QString& words);

} // namespace wainscot
