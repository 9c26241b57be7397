// The small print a display lacks, from what the book knows.
#pragma once

#include "core/model/book.h"

namespace wainscot {

// How the words that hang on it were taken down, and when; the teacher's own line before that.
// Empty when nothing is known.
[[nodiscard]] QString creditsOf(const Book& book, const Display& display);
// "3-6 November": the days of the words that hang on it, else of the experience; empty when no day
// is known.
[[nodiscard]] QString daysOf(const Book& book, const Display& display);

} // namespace wainscot
