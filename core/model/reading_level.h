// How an adult's text reads: lengths for every language, the Flesch formulas for English only.
// Children's own words are never measured with this.
#pragma once

#include <QString>

#include <optional>

namespace wainscot {

struct TextCounts {
    int sentences = 0;
    int words = 0;
    int longestSentence = 0; // in words
    int syllables = 0; // estimated by the rules of English spelling; see englishSyllables
};

// A sentence ends at . ! ? or … before white space or the end of the text, also without a space at
// a Chinese or Arabic mark. An empty line or the text's end closes what was left open. A stop
// inside an abbreviation followed by a space ends a sentence too: counts lean to the short side.
[[nodiscard]] TextCounts countText(const QString& text);

// Groups of vowels, without a silent final e; at least 1. Right for about nine words in ten, by
// eye and not by a corpus. English only.
[[nodiscard]] int englishSyllables(const QString& word);

// 206.835 - 1.015 words/sentences - 84.6 syllables/words (Flesch). Higher is easier; may be above
// 100 or negative. Null where a count is 0.
[[nodiscard]] std::optional<double> fleschEase(const TextCounts& counts);

// 0.39 words/sentences + 11.8 syllables/words - 15.59 (Flesch and Kincaid): years of school in the
// United States. Null where a count is 0.
[[nodiscard]] std::optional<double> fleschKincaidGrade(const TextCounts& counts);

// The formulas hold for English; `language` is BCP 47.
[[nodiscard]] bool hasReadingFormula(const QString& language);

} // namespace wainscot
