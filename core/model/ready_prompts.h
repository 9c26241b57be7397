// Prompt sets that are ready to be taken and changed.
#pragma once

#include "core/model/prompt.h"

namespace wainscot {

// The default one first; then one for each sense it suits, one for younger and one for older
// children. They have no id, and are in that language where there is a wording (wall_text.h), else
// in English. The wording is the project's own.
[[nodiscard]] std::vector<PromptSet> readyPromptSets(const QString& language);

// A key for a further question: its first long word, made different from the keys in use.
[[nodiscard]] QString keyForPrompt(const QString& text, const PromptSet& in);

} // namespace wainscot
