// How a translation of a child's words says that it is one.
#pragma once

#include <QString>

namespace wainscot {

// "translated from Arabic", in the language of the translation where its phrase is known (Arabic,
// Chinese, French, German, Portuguese, Spanish), otherwise in English. Languages are BCP 47.
[[nodiscard]] QString translatedFrom(const QString& original, const QString& into);

} // namespace wainscot
