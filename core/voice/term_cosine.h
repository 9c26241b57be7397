// Likeness by shared terms, whatever a term is: a run of letters, a sound.
#pragma once

#include "core/voice/likeness_table.h"

#include <cstdint>
#include <vector>

namespace wainscot {

using Term = std::uint64_t;

// For each answer the terms that occur in it, as often as they occur. Each counts 1 + ln(count),
// times ln((1 + n) / (1 + answers with it)) + 1; rows of length 1; cosine. The same quantity as
// scikit-learn's TfidfVectorizer(sublinear_tf=True). An answer without a term is like nothing, not
// even itself.
[[nodiscard]] LikenessTable cosineOfTerms(const std::vector<std::vector<Term>>& answers);

} // namespace wainscot
