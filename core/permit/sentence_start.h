// Private to core/permit.
#pragma once

#include <QString>

namespace wainscot {

// Whether a sentence starts at a place in the text: after nothing, a line break or an end mark.
[[nodiscard]] bool startsSentence(const QString& text, qsizetype at);

} // namespace wainscot
