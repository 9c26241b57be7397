// How a finding looks and what it measured, the same wherever one stands.
#pragma once

#include "app/ui/kit/surfaces.h"
#include "core/base/finding.h"

namespace wainscot::ui {

[[nodiscard]] Card::Tone toneOf(Severity severity);
// The square with a bar, the eye or the slip, in its colour.
[[nodiscard]] IconMark* markOf(Severity severity);
// What it says, in the direction of the window also where it begins with a name of the other one.
[[nodiscard]] QString saysInLine(const Finding& finding);
// For who cannot see the mark: "Must be mended: ..."
[[nodiscard]] QString spoken(const Finding& finding);
// Its source and its unit in the language of the window.
[[nodiscard]] QString sourceInWords(const Finding& finding);
[[nodiscard]] QString unitInWords(const QString& unit);
// "Measured 4.2 mm, the limit here is 7 mm."; empty when nothing was measured.
[[nodiscard]] QString measuredInWords(const Finding& finding);

} // namespace wainscot::ui
