// Which drawn letter is which written one.
#pragma once

#include <QString>

#include <vector>

namespace wainscot::ui {

// For each letter of `written` its index in `drawn`, or -1 where it is not drawn. As many as can be
// found in order, the earliest of them; neither holds spaces.
[[nodiscard]] std::vector<int> matchLetters(const QString& written, const QString& drawn);

} // namespace wainscot::ui
