// How alike answers are: by letters, by sound, by the company their words keep in a dictionary.
// None of it is meaning: "it is alive" and "it is not alive" are alike here.
#pragma once

#include "core/model/ids.h"
#include "core/voice/likeness_table.h"

#include <QString>

#include <vector>

namespace wainscot {

struct Answer {
    QuoteId id;
    QString words;
    QString language; // BCP 47
};

// Runs of three to five letters inside words with a blank at either side: what scikit-learn's
// analyzer="char_wb", ngram_range=(3, 5) counts. Letters beyond the 7,000th different one count as
// one letter.
[[nodiscard]] LikenessTable letterLikeness(const std::vector<Answer>& answers);

// Sound keys of the words that are not everyday ones (sound_key.h).
[[nodiscard]] LikenessTable soundLikeness(const std::vector<Answer>& answers);

// Cosine of the sums of word vectors (word_vectors.h), 0 where it is negative; and for each answer
// which share of its words, without the everyday ones, the table knows. English only. What all the
// answers share, the mean of their sums, is taken from each first: they were given to the same
// questions, so their common subject tells none of them apart.
struct CompanyLikeness {
    LikenessTable likeness;
    std::vector<double> known; // 0..1
};
[[nodiscard]] CompanyLikeness companyLikeness(const std::vector<Answer>& answers);

// (letters + sound + w company) / (2 + w) with w = sqrt(known share of one x of the other); without
// the sound where an answer has no Latin letter. Equal weights were best or within one standard
// error of best on five public sets of short texts.
[[nodiscard]] LikenessTable likenessOf(const std::vector<Answer>& answers);

} // namespace wainscot
