#include "core/voice/word_likeness.h"

#include "core/base/language_name.h"
#include "core/voice/compared_words.h"
#include "core/voice/sound_key.h"
#include "core/voice/term_cosine.h"
#include "core/voice/word_vectors.h"

#include <QHash>

#include <array>
#include <cmath>
#include <string>

namespace wainscot {
namespace {

constexpr std::size_t shortestRun = 3;
constexpr std::size_t longestRun = 5;
constexpr double leastOwn = 1e-12;
constexpr Term mostLetters = 7000; // to the fifth power it still is a 64-bit number

// Numbers the letters that occur, so that a run of five is one number.
class Alphabet {
public:
    Alphabet() { m_common.fill(0); }

    Term numberOf(char32_t letter)
    {
        Term& number = letter < m_common.size() ? m_common[letter] : m_others[letter];
        if (number == 0)
            number = m_last < mostLetters ? ++m_last : mostLetters;
        return number;
    }

private:
    std::array<Term, 0x600> m_common{}; // Latin to Arabic's beginning
    QHash<char32_t, Term> m_others;
    Term m_last = 0;
};

// A word shorter than a run counts once as a whole, and longer runs are not looked for.
void addRuns(const std::vector<Term>& padded, std::vector<Term>& terms)
{
    for (std::size_t length = shortestRun; length <= longestRun; ++length) {
        const std::size_t taken = std::min(length, padded.size());
        for (std::size_t start = 0; start + taken <= padded.size(); ++start) {
            Term run = 0;
            for (std::size_t at = start; at < start + taken; ++at)
                run = run * (mostLetters + 1) + padded[at];
            terms.push_back(run);
        }
        if (padded.size() <= length)
            return;
    }
}

bool isEnglish(const QString& language)
{
    return mainLanguage(language) == QLatin1String("en");
}

bool hasLatinLetter(const QString& words)
{
    for (const QChar unit : words) {
        if (unit.isLetter() && unit.script() == QChar::Script_Latin)
            return true;
    }
    return false;
}

std::vector<bool> answersWithLatinLetters(const std::vector<Answer>& answers)
{
    std::vector<bool> latin;
    latin.reserve(answers.size());
    for (const Answer& answer : answers)
        latin.push_back(hasLatinLetter(answer.words));
    return latin;
}

// Sums of length 1, or 0 where no word is known; the same afterwards.
void takeOutWhatAllShare(std::vector<WordVector>& sums)
{
    WordVector mean{};
    double known = 0;
    for (const WordVector& sum : sums) {
        known += dot(sum, sum) > 0 ? 1 : 0;
        for (std::size_t at = 0; at < sum.size(); ++at)
            mean[at] += sum[at];
    }
    for (WordVector& sum : sums) {
        if (dot(sum, sum) <= 0)
            continue;
        for (std::size_t at = 0; at < sum.size(); ++at)
            sum[at] -= mean[at] / known;
        const bool hasOwn = dot(sum, sum) > leastOwn; // else what is left is rounding
        sum = hasOwn ? ofLengthOne(sum) : WordVector{};
    }
}

} // namespace

LikenessTable letterLikeness(const std::vector<Answer>& answers)
{
    Alphabet alphabet;
    const Term blank = alphabet.numberOf(U' ');
    std::vector<std::vector<Term>> terms(answers.size());
    std::vector<Term> padded;
    for (std::size_t answer = 0; answer < answers.size(); ++answer) {
        terms[answer].reserve(std::size_t(answers[answer].words.size()) * 4);
        for (const ComparedWord& word : comparedWords(answers[answer].words)) {
            padded.assign(1, blank);
            for (const char32_t letter : word.text.toStdU32String())
                padded.push_back(alphabet.numberOf(letter));
            padded.push_back(blank);
            addRuns(padded, terms[answer]);
        }
    }
    return cosineOfTerms(terms);
}

LikenessTable soundLikeness(const std::vector<Answer>& answers)
{
    QHash<QString, Term> numbers;
    std::vector<std::vector<Term>> terms(answers.size());
    for (std::size_t answer = 0; answer < answers.size(); ++answer) {
        for (const ComparedWord& word : comparedWords(answers[answer].words)) {
            const QString key = isEveryday(word.text) ? QString() : soundKey(word.text);
            if (key.isEmpty())
                continue;
            const auto known = numbers.constFind(key);
            terms[answer].push_back(
                known != numbers.cend() ? *known : *numbers.insert(key, Term(numbers.size())));
        }
    }
    return cosineOfTerms(terms);
}

CompanyLikeness companyLikeness(const std::vector<Answer>& answers)
{
    const WordVectors& vectors = WordVectors::english();
    const Stemmer stemmer(QStringLiteral("en"));
    CompanyLikeness company{LikenessTable(answers.size()), {}};
    std::vector<WordVector> sums;
    for (const Answer& answer : answers) {
        WordVector sum{};
        int known = 0;
        int all = 0;
        for (const ComparedWord& word : comparedWords(answer.words)) {
            if (isEveryday(word.text))
                continue;
            ++all;
            if (isEnglish(answer.language) && vectors.addTo(sum, stemmer.stem(word.text)))
                ++known;
        }
        company.known.push_back(all == 0 ? 0 : double(known) / all);
        sums.push_back(ofLengthOne(sum));
    }
    takeOutWhatAllShare(sums);
    for (std::size_t row = 0; row < sums.size(); ++row) {
        for (std::size_t column = row; column < sums.size(); ++column)
            company.likeness.set(row, column, std::max(0.0, dot(sums[row], sums[column])));
    }
    return company;
}

LikenessTable likenessOf(const std::vector<Answer>& answers)
{
    const LikenessTable letters = letterLikeness(answers);
    const LikenessTable sounds = soundLikeness(answers);
    const CompanyLikeness company = companyLikeness(answers);
    const std::vector<bool> latin = answersWithLatinLetters(answers);
    LikenessTable mixed(answers.size());
    for (std::size_t row = 0; row < mixed.size(); ++row) {
        for (std::size_t column = row; column < mixed.size(); ++column) {
            const double sound = latin[row] && latin[column] ? 1 : 0;
            const double weight = std::sqrt(company.known[row] * company.known[column]);
            mixed.set(row,
                column,
                (letters.at(row, column) + sound * sounds.at(row, column)
                    + weight * company.likeness.at(row, column))
                    / (1 + sound + weight));
        }
    }
    return mixed;
}

} // namespace wainscot
