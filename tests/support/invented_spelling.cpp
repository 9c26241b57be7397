#include "tests/support/invented_spelling.h"

#include <QRegularExpression>

#include <array>
#include <vector>

namespace wainscot {
namespace {

struct SpellingRule {
    const char* from;
    const char* to; // "?": any vowel; "-": nothing, but never at the beginning
};
constexpr std::array kRules{SpellingRule{"^kn", "n"},
    SpellingRule{"^wr", "r"},
    SpellingRule{"ph", "f"},
    SpellingRule{"ck", "k"},
    SpellingRule{"qu", "kw"},
    SpellingRule{"x", "ks"},
    SpellingRule{"tion", "shun"},
    SpellingRule{"sion", "shun"},
    SpellingRule{"ough", "o"},
    SpellingRule{"augh", "af"},
    SpellingRule{"igh", "i"},
    SpellingRule{"tch", "ch"},
    SpellingRule{"dge", "j"},
    SpellingRule{"c(?=[eiy])", "s"},
    SpellingRule{"c(?![eiyh])", "k"},
    SpellingRule{"ea", "e"},
    SpellingRule{"ee", "e"},
    SpellingRule{"oa", "o"},
    SpellingRule{"ai", "a"},
    SpellingRule{"ay$", "a"},
    SpellingRule{"oo", "u"},
    SpellingRule{"ou", "ow"},
    SpellingRule{"ow", "o"},
    SpellingRule{"(?<=[^aeiou])e$", ""},
    SpellingRule{"([bdfglmnprst])(?=\\1)", ""},
    SpellingRule{"er$", "r"},
    SpellingRule{"le$", "l"},
    SpellingRule{"^tr", "chr"},
    SpellingRule{"^dr", "jr"},
    SpellingRule{"th", "f"},
    SpellingRule{"n(?=[tdkg])", ""},
    SpellingRule{"m(?=[pb])", ""},
    SpellingRule{"ed$", "t"},
    SpellingRule{"ing$", "in"},
    SpellingRule{"y$", "e"},
    SpellingRule{"wh", "w"},
    SpellingRule{"g(?=[ei])", "j"},
    SpellingRule{"s$", "z"},
    SpellingRule{"[aeiou]", "-"},
    SpellingRule{"[aeiou]", "?"},
    SpellingRule{"ar", "r"},
    SpellingRule{"or", "r"},
    SpellingRule{"ur|ir", "er"}};

const std::vector<QRegularExpression>& patterns()
{
    static const std::vector<QRegularExpression> all = [] {
        std::vector<QRegularExpression> made;
        made.reserve(kRules.size());
        for (const SpellingRule& rule : kRules)
            made.emplace_back(QLatin1String(rule.from));
        return made;
    }();
    return all;
}

struct Place {
    std::size_t rule;
    qsizetype at;
    qsizetype length;
};

// One rule that fits, at one of the places it fits.
QString respelledOnce(const QString& word, std::mt19937& random)
{
    std::vector<std::vector<Place>> fitting;
    for (std::size_t rule = 0; rule < kRules.size(); ++rule) {
        std::vector<Place> places;
        auto matches = patterns()[rule].globalMatch(word);
        while (matches.hasNext()) {
            const auto match = matches.next();
            places.push_back({rule, match.capturedStart(), match.capturedLength()});
        }
        if (!places.empty())
            fitting.push_back(places);
    }
    if (fitting.empty())
        return word;
    const auto& places = fitting[random() % fitting.size()];
    const Place place = places[random() % places.size()];
    QString to = QLatin1String(kRules[place.rule].to);
    if (to == QLatin1String("-") && place.at == 0)
        return word;
    if (to == QLatin1String("-"))
        to.clear();
    if (to == QLatin1String("?"))
        to = QString(QLatin1Char("aeiou"[random() % 5]));
    const QString made = word.left(place.at) + to + word.mid(place.at + place.length);
    return made.size() < 2 ? word : made;
}

QString respelledWord(const QString& word, std::mt19937& random)
{
    constexpr std::array kTimes{1, 1, 2, 2, 3};
    QString made = word.toLower();
    for (int left = kTimes[random() % kTimes.size()]; left > 0 && made.size() > 2; --left)
        made = respelledOnce(made, random);
    return made;
}

} // namespace

SortedTexts respelled(SortedTexts texts, double share, unsigned seed)
{
    std::mt19937 random(seed);
    static const QRegularExpression words(
        QStringLiteral("[^\\W\\d_]+"), QRegularExpression::UseUnicodePropertiesOption);
    for (Answer& answer : texts.texts) {
        QString made;
        qsizetype end = 0;
        auto matches = words.globalMatch(answer.words);
        while (matches.hasNext()) {
            const auto match = matches.next();
            made += answer.words.mid(end, match.capturedStart() - end);
            const bool changes = double(random() % 1000) < share * 1000;
            made += changes && match.capturedLength() > 2 ? respelledWord(match.captured(), random)
                                                          : match.captured();
            end = match.capturedEnd();
        }
        answer.words = made + answer.words.mid(end);
    }
    return texts;
}

} // namespace wainscot
