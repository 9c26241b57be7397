#include "app/ui/writing/spelling.h"

#include <QDir>
#include <QFile>
#include <QTextBoundaryFinder>

#include <algorithm>

#include <hunspell.hxx>

#include "app/jobs/program_settings.h"

namespace wainscot::ui {

namespace {

const QString kOwnWords = QStringLiteral("spelling/words");

// "en-GB" is looked for as en_GB, then en, then any country's English.
QString dictionaryFor(const QString& language)
{
    const QString name = QString(language).replace(QLatin1Char('-'), QLatin1Char('_'));
    const QString first = name.section(QLatin1Char('_'), 0, 0);
    if (first.isEmpty())
        return {};
    for (const QString& wanted : {name, first, first + QStringLiteral("_*")}) {
        for (const QString& folder : dictionaryFolders()) {
            const QStringList found = QDir(folder).entryList(
                {wanted + QStringLiteral(".dic")}, QDir::Files | QDir::Readable, QDir::Name);
            if (!found.isEmpty())
                return folder + QLatin1Char('/') + found.last().chopped(4);
        }
    }
    return {};
}

bool isLetterOrMark(QChar c)
{
    return c.isLetter() || c.isMark() || c.isSurrogate();
}

// Neither a number, nor a single letter, nor letters among digits.
bool isWord(const QString& text)
{
    return text.size() > 1 && isLetterOrMark(text.front())
        && std::none_of(text.begin(), text.end(), [](QChar c) { return c.isDigit(); });
}

std::vector<TextRange> wordsOf(const QString& text)
{
    std::vector<TextRange> words;
    QTextBoundaryFinder finder(QTextBoundaryFinder::Word, text);
    for (int start = 0, end = int(finder.toNextBoundary()); end >= 0;
         start = end, end = int(finder.toNextBoundary())) {
        if (isWord(text.mid(start, end - start)))
            words.push_back({start, end - start});
    }
    return words;
}

// What is quoted of a child, and what stands in brackets.
std::vector<TextRange> untouched(const QString& text)
{
    std::vector<TextRange> ranges = quotedWords(text);
    for (qsizetype open = text.indexOf(QLatin1Char('[')); open >= 0;
         open = text.indexOf(QLatin1Char('['), open + 1)) {
        const qsizetype close = text.indexOf(QLatin1Char(']'), open);
        if (close > open)
            ranges.push_back({int(open), int(close - open + 1)});
    }
    return ranges;
}

bool liesIn(const TextRange& word, const std::vector<TextRange>& ranges)
{
    return std::any_of(ranges.begin(), ranges.end(), [&](const TextRange& range) {
        return word.start >= range.start && word.start + word.length <= range.start + range.length;
    });
}

} // namespace

QString foldedWord(const QString& word)
{
    QString folded = word.toCaseFolded().replace(QChar(0x2019), QLatin1Char('\''));
    if (folded.endsWith(QLatin1String("'s")))
        folded.chop(2);
    return folded;
}

std::set<QString> ownWords()
{
    const QStringList kept = ProgramSettings().value(kOwnWords).toStringList();
    return {kept.begin(), kept.end()};
}

void keepOwnWord(const QString& word)
{
    std::set<QString> words = ownWords();
    words.insert(foldedWord(word));
    ProgramSettings().setValue(kOwnWords, QStringList(words.begin(), words.end()));
}

Spelling::Spelling(std::unique_ptr<Hunspell> dictionary, bool utf8)
    : m_dictionary(std::move(dictionary))
    , m_utf8(utf8)
{
}

Spelling::~Spelling() = default;

std::shared_ptr<Spelling> Spelling::of(const QString& language)
{
    static QHash<QString, std::shared_ptr<Spelling>> loaded;
    const QString path = dictionaryFor(language);
    if (path.isEmpty())
        return nullptr;
    auto at = loaded.find(path);
    if (at == loaded.end())
        at = loaded.insert(path, fromFiles(path));
    return *at;
}

std::shared_ptr<Spelling> Spelling::fromFiles(const QString& path)
{
    const QString rules = path + QStringLiteral(".aff");
    const QString words = path + QStringLiteral(".dic");
    if (!QFile::exists(rules) || !QFile::exists(words))
        return nullptr;
    auto dictionary = std::make_unique<Hunspell>(
        QFile::encodeName(rules).constData(), QFile::encodeName(words).constData());
    const QString encoding = QString::fromLatin1(dictionary->get_dict_encoding()).toUpper();
    const bool utf8 = encoding == QLatin1String("UTF-8");
    if (!utf8 && encoding != QLatin1String("ISO8859-1") && encoding != QLatin1String("ISO-8859-1"))
        return nullptr;
    return std::shared_ptr<Spelling>(new Spelling(std::move(dictionary), utf8));
}

std::string Spelling::encoded(const QString& word) const
{
    return m_utf8 ? word.toStdString() : word.toLatin1().toStdString();
}

QString Spelling::decoded(const std::string& word) const
{
    return m_utf8 ? QString::fromStdString(word) : QString::fromLatin1(word.c_str());
}

bool Spelling::knows(const QString& word) const
{
    const auto at = m_known.constFind(word);
    if (at != m_known.constEnd())
        return *at;
    const QString plain = QString(word).replace(QChar(0x2019), QLatin1Char('\''));
    const bool known = m_dictionary->spell(encoded(plain));
    m_known.insert(word, known);
    return known;
}

QStringList Spelling::suggestions(const QString& word, int most) const
{
    QStringList found;
    for (const std::string& one : m_dictionary->suggest(encoded(word))) {
        if (found.size() >= most)
            break;
        found << decoded(one);
    }
    return found;
}

std::vector<TextRange> Spelling::doubtful(const QString& text, const std::set<QString>& own) const
{
    std::vector<TextRange> doubts;
    const std::vector<TextRange> leftAlone = untouched(text);
    for (const TextRange& range : wordsOf(text)) {
        const QString word = text.mid(range.start, range.length);
        if (!liesIn(range, leftAlone) && own.count(foldedWord(word)) == 0 && !knows(word))
            doubts.push_back(range);
    }
    return doubts;
}

} // namespace wainscot::ui
