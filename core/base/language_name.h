// How a language is called.
#pragma once

#include <QString>

namespace wainscot {

// "Portuguese" for "pt" or "pt-BR" (BCP 47), in English; a code nobody knows stays as it is.
[[nodiscard]] QString languageInWords(const QString& code);

} // namespace wainscot
