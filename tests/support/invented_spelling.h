// Texts as beginning writers might spell them, for measuring what grouping loses by it.
#pragma once

#include "tests/support/grouping_samples.h"

namespace wainscot {

// Respells a share (0..1) of the words of three letters or more, each by one to three of 43 rules:
// sounds for letters (ph to f, tr to chr), letters not heard left out (n before t), vowels lost or
// taken for one another. The rules are of common practice, from no corpus of children's writing.
[[nodiscard]] SortedTexts respelled(SortedTexts texts, double share, unsigned seed);

} // namespace wainscot
