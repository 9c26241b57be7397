#include "core/model/reading_level.h"

#include "core/base/language_name.h"

#include <QRegularExpression>

#include <algorithm>

namespace wainscot {

namespace {

bool isVowel(QChar letter)
{
    return QStringLiteral("aeiouy").contains(letter);
}

// What has no letter or digit (a dash between spaces) is no word.
bool isWord(const QString& part)
{
    return std::any_of(part.begin(), part.end(), [](QChar c) { return c.isLetterOrNumber(); });
}

} // namespace

int englishSyllables(const QString& word)
{
    QString letters;
    for (const QChar c : word.toLower())
        if (c.isLetter())
            letters += c;
    int groups = 0;
    bool inGroup = false;
    for (const QChar letter : letters) {
        const bool vowel = isVowel(letter);
        if (vowel && !inGroup)
            ++groups;
        inGroup = vowel;
    }
    // "eye" is one group; the e of "make" is silent, the one of "table" and of "the" is not.
    const auto length = letters.size();
    const bool silentEnd = length > 2 && letters.endsWith(QLatin1Char('e'))
        && !isVowel(letters[length - 2])
        && !(letters[length - 2] == QLatin1Char('l') && !isVowel(letters[length - 3]));
    if (silentEnd)
        --groups;
    return std::max(groups, 1);
}

TextCounts countText(const QString& text)
{
    static const QRegularExpression end(
        QStringLiteral("[.!?\\x{2026}]+[\\x{201d}\\x{2019}\"')\\]]*(?=\\s|$)"
                       "|[\\x{3002}\\x{FF01}\\x{FF1F}\\x{061F}]+|\\n\\s*\\n"));
    static const QRegularExpression space(QStringLiteral("\\s+"));
    TextCounts counts;
    const QStringList sentences = text.split(end, Qt::SkipEmptyParts);
    for (const QString& sentence : sentences) {
        int words = 0;
        const QStringList parts = sentence.split(space, Qt::SkipEmptyParts);
        for (const QString& part : parts) {
            if (!isWord(part))
                continue;
            ++words;
            counts.syllables += englishSyllables(part);
        }
        if (words == 0)
            continue;
        ++counts.sentences;
        counts.words += words;
        counts.longestSentence = std::max(counts.longestSentence, words);
    }
    return counts;
}

std::optional<double> fleschEase(const TextCounts& counts)
{
    if (counts.sentences == 0 || counts.words == 0)
        return std::nullopt;
    return 206.835 - 1.015 * counts.words / counts.sentences
        - 84.6 * counts.syllables / counts.words;
}

std::optional<double> fleschKincaidGrade(const TextCounts& counts)
{
    if (counts.sentences == 0 || counts.words == 0)
        return std::nullopt;
    return 0.39 * counts.words / counts.sentences + 11.8 * counts.syllables / counts.words - 15.59;
}

bool hasReadingFormula(const QString& language)
{
    return mainLanguage(language) == QLatin1String("en");
}

} // namespace wainscot
