// How alike answers sound on the page: shared runs of letters, so that a child's own spelling does
// not hide what two answers have in common. Letters only: no meaning, no stance, no negation.
#pragma once

#include <QString>

#include <cstddef>
#include <vector>

namespace wainscot {

// A square, symmetric table of likenesses from 0 (no run of letters shared) to 1.
class LikenessTable {
public:
    explicit LikenessTable(std::size_t size);
    [[nodiscard]] std::size_t size() const { return m_size; }
    [[nodiscard]] double at(std::size_t row, std::size_t column) const
    {
        return m_values[row * m_size + column];
    }
    void add(std::size_t row, std::size_t column, double share)
    {
        m_values[row * m_size + column] += share;
    }

private:
    std::size_t m_size;
    std::vector<double> m_values;
};

// The words of an answer for comparing, never for showing: NFC, lower case, runs of letters with
// apostrophes inside.
[[nodiscard]] std::vector<QString> comparedWords(const QString& answer);

// Runs of three to five letters inside words with a blank at either side; 1 + ln(count), weighted
// by ln((1 + n) / (1 + answers with it)) + 1, rows of length 1, cosine. The same quantity as
// scikit-learn's TfidfVectorizer(analyzer="char_wb", ngram_range=(3, 5), sublinear_tf=True).
// An answer without a letter is like nothing, not even itself.
[[nodiscard]] LikenessTable likenessOf(const std::vector<QString>& answers);

} // namespace wainscot
