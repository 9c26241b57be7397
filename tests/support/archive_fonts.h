// The clauses about fonts beside those of archive_clauses.cpp.
#pragma once

#include "tests/support/archive_file.h"

namespace wainscot::archive {

[[nodiscard]] QStringList fontDicts(const File& file); // as ISO 32000-1, 9.6 and 9.7 ask
[[nodiscard]] QStringList glyphs(const File& file); // shown and in the program

} // namespace wainscot::archive
