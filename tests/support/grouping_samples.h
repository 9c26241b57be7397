// Samples of public texts that are already sorted, and how well groups agree with the sorting.
#pragma once

#include "core/voice/joining.h"
#include "core/voice/word_likeness.h"

#include <random>
#include <vector>

namespace wainscot {

struct SortedTexts {
    std::vector<Answer> texts;
    std::vector<int> classes; // of each text
};

// Lines of a class, a tab and a text; lines with # in front are left out.
[[nodiscard]] SortedTexts sortedTextsFrom(const QString& file);

// 60 to 90 texts of 8 to 15 classes of uneven size, two of each class or more.
[[nodiscard]] SortedTexts sampleOf(const SortedTexts& all, std::mt19937& random);

// The adjusted Rand index (Hubert and Arabie 1985): 1 = the same sets, 0 = as by chance.
[[nodiscard]] double agreement(const std::vector<int>& one, const std::vector<int>& other);

// The number of the set each text is in.
[[nodiscard]] std::vector<int> setOfEach(
    const std::vector<std::vector<std::size_t>>& sets, std::size_t texts);

// Mean agreement over samples of average linkage: uncapped and cut at the true number of classes,
// or as the program proposes, with its size cap and least likeness.
enum class Cut { TrueNumber, AsProposed };
using Likeness = LikenessTable (*)(const std::vector<Answer>&);
[[nodiscard]] double meanAgreement(
    const SortedTexts& all, Likeness likeness, Cut cut, unsigned seed, int samples);

} // namespace wainscot
