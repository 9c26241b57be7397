#include "core/voice/compared_words.h"

#include "core/base/language_name.h"
#include "core/voice/words/resources.h"

#include <QSet>

#include <libstemmer.h>

namespace wainscot {
namespace {

// How many units the letter or mark at a place takes; 0 = something else is there.
int letterAt(const QString& text, int at)
{
    if (at >= text.size())
        return 0;
    const QChar unit = text[at];
    if (!unit.isHighSurrogate() || at + 1 >= text.size())
        return unit.isLetter() || unit.isMark() ? 1 : 0;
    const char32_t letter = QChar::surrogateToUcs4(unit, text[at + 1]);
    return QChar::isLetter(letter) || QChar::isMark(letter) ? 2 : 0;
}

// The end of the word that begins at a place; the place itself if none does.
int endOfWord(const QString& text, int start)
{
    int end = start;
    while (const int letter = letterAt(text, end)) {
        end += letter;
        const bool apostrophe =
            end < text.size() && (text[end] == QLatin1Char('\'') || text[end] == QChar(0x2019));
        if (apostrophe && letterAt(text, end + 1) > 0)
            ++end;
    }
    return end;
}

QString prepared(QStringView word)
{
    QString text = word.toString().normalized(QString::NormalizationForm_C).toLower();
    text.replace(QChar(0x2019), QLatin1Char('\''));
    return text;
}

QSet<QString> everydayWords()
{
    const QStringList words =
        QString::fromUtf8(wordResource("everyday_en.txt")).simplified().split(QLatin1Char(' '));
    return {words.begin(), words.end()};
}

} // namespace

std::vector<ComparedWord> comparedWords(const QString& answer)
{
    std::vector<ComparedWord> words;
    const int size = int(answer.size());
    for (int start = 0; start < size;) {
        const int end = endOfWord(answer, start);
        if (end > start) {
            words.push_back(
                {prepared(QStringView(answer).mid(start, end - start)), {start, end - start}});
        }
        start = std::max(end, start + 1);
    }
    return words;
}

bool isEveryday(const QString& word)
{
    static const QSet<QString> words = everydayWords();
    return words.contains(word);
}

Stemmer::Stemmer(const QString& language)
    : m_stemmer(sb_stemmer_new(mainLanguage(language).toLatin1().constData(), nullptr))
{
}

void Stemmer::Closed::operator()(sb_stemmer* stemmer) const
{
    sb_stemmer_delete(stemmer);
}

QString Stemmer::stem(const QString& word) const
{
    if (!m_stemmer)
        return word;
    const QByteArray bytes = word.toUtf8();
    const sb_symbol* stemmed = sb_stemmer_stem(
        m_stemmer.get(), reinterpret_cast<const sb_symbol*>(bytes.constData()), int(bytes.size()));
    return QString::fromUtf8(
        reinterpret_cast<const char*>(stemmed), sb_stemmer_length(m_stemmer.get()));
}

} // namespace wainscot
