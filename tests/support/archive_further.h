// What we never write at all (inks, JPEG 2000, halftones, simple TrueType fonts ...) is refused as
// such, which is stricter than the rules about it.
#pragma once

#include "tests/support/archive_clauses.h"

namespace wainscot::archive {

// Clauses beside those of archive_clauses.cpp, by the same numbers where a number has several
// rules.
[[nodiscard]] const std::vector<Clause>& furtherClauses();

} // namespace wainscot::archive
