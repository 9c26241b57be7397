// Small changes to a PDF that break it. Each throws when the file has nothing of the kind.
#pragma once

#include "tests/support/archive_file.h"

#include <string>

namespace wainscot::archive {

[[nodiscard]] Handle firstOf(QPDF& pdf, const char* key, const char* name);
[[nodiscard]] Handle pageOf(QPDF& pdf);
void putState(QPDF& pdf, const char* state);
void addContent(QPDF& pdf, const std::string& words);
void replaceIn(Handle stream, const std::string& what, const std::string& with);
void addAnnotation(QPDF& pdf, const std::string& words);
[[nodiscard]] std::string nested(int depth);
[[nodiscard]] Handle profileOf(QPDF& pdf);
[[nodiscard]] Handle packet(QPDF& pdf);
void setFilter(QPDF& pdf, const char* name);
void setSpace(QPDF& pdf, const char* space);
void setLayers(QPDF& pdf, const char* words);
void putForm(QPDF& pdf, const char* kind, const char* key, const char* value);
[[nodiscard]] Handle fontsOf(QPDF& pdf);
[[nodiscard]] Handle fontOf(QPDF& pdf);
void putFont(QPDF& pdf, const char* words);
void putInDescriptor(QPDF& pdf, const char* key);
// The name of a font on the page whose program is TrueType.
[[nodiscard]] std::string trueTypeName(QPDF& pdf);
// The look of the annotation that was added: an empty form.
void setLook(QPDF& pdf);

} // namespace wainscot::archive
