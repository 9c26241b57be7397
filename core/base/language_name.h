// How a language is called, and what its code says.
#pragma once

#include <QString>

namespace wainscot {

// "Portuguese" for "pt" or "pt-BR" (BCP 47), in English; a code nobody knows stays as it is.
[[nodiscard]] QString languageInWords(const QString& code);
// "pt" of "pt-BR" (BCP 47, the primary subtag), in small letters.
[[nodiscard]] QString mainLanguage(const QString& code);

} // namespace wainscot
