// The words of an answer for comparing answers, never for showing or changing what a child said.
#pragma once

#include <QString>

#include <memory>
#include <vector>

struct sb_stemmer;

namespace wainscot {

// Where a word stands in the answer, in UTF-16 units.
struct WordSpan {
    int start = 0;
    int length = 0;
    friend bool operator==(const WordSpan&, const WordSpan&) = default;
};

struct ComparedWord {
    QString text; // NFC, lower case
    WordSpan at;
};

// Runs of letters and their marks, with apostrophes inside. A script without spaces gives its whole
// run as one word.
[[nodiscard]] std::vector<ComparedWord> comparedWords(const QString& answer);

// An English word that says nothing about what an answer is about: "the", "because", "think".
[[nodiscard]] bool isEveryday(const QString& word);

// Cuts off endings by the Snowball algorithm of a language, so that "drinks" and "drinked" meet; a
// language it has none for leaves words as they are.
class Stemmer {
public:
    explicit Stemmer(const QString& language); // BCP 47
    [[nodiscard]] QString stem(const QString& word) const;

private:
    struct Closed {
        void operator()(sb_stemmer* stemmer) const;
    };
    std::unique_ptr<sb_stemmer, Closed> m_stemmer;
};

} // namespace wainscot
