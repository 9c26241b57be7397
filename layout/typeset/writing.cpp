#include "layout/typeset/writing.h"

#include "core/base/language_name.h"

#include <QLocale>
#include <QTextBoundaryFinder>

#include <algorithm>
#include <array>

namespace wainscot {

namespace {

bool isBreakingSpace(QChar c)
{
    // A no-break space, a figure space and a narrow no-break space keep their neighbours together.
    return c.isSpace() && c != QChar(0x00A0) && c != QChar(0x2007) && c != QChar(0x202F);
}

char32_t characterAt(const QString& text, qsizetype at)
{
    const QChar c = text.at(at);
    if (c.isHighSurrogate() && at + 1 < text.size() && text.at(at + 1).isLowSurrogate())
        return QChar::surrogateToUcs4(c, text.at(at + 1));
    return c.unicode();
}

bool isWrittenWithoutSpaces(char32_t character)
{
    switch (QChar::script(character)) {
    case QChar::Script_Han:
    case QChar::Script_Hiragana:
    case QChar::Script_Katakana:
    case QChar::Script_Bopomofo:
    case QChar::Script_Thai:
    case QChar::Script_Lao:
    case QChar::Script_Khmer:
    case QChar::Script_Myanmar:
        return true;
    default:
        // Full-width punctuation belongs to every script.
        return (character >= 0x3000 && character <= 0x303F)
            || (character >= 0xFF00 && character <= 0xFF65);
    }
}

bool endsPhrase(QChar c)
{
    static const QString points = QStringLiteral("。！？，、；：…」』”’）.!?,;:");
    return points.contains(c);
}

// Splits a stretch without spaces at the places Unicode's line breaking allows (UAX 14, as Qt
// implements it).
void splitStretch(const QString& text, int start, int end, std::vector<Unit>& units)
{
    QTextBoundaryFinder finder(QTextBoundaryFinder::Line, text);
    finder.setPosition(start);
    int from = start;
    while (from < end) {
        qsizetype next = finder.toNextBoundary();
        if (next < 0 || next > end)
            next = end;
        const bool parts = next < end && isWrittenWithoutSpaces(characterAt(text, next - 1))
            && isWrittenWithoutSpaces(characterAt(text, next));
        if (!parts && next < end)
            continue;
        Unit unit;
        unit.start = from;
        unit.length = static_cast<int>(next) - from;
        unit.insidePhrase = next < end && !endsPhrase(text.at(next - 1));
        units.push_back(unit);
        from = static_cast<int>(next);
    }
}

// A phrase keeps its first two and its last two characters together.
void guardPhrases(std::vector<Unit>& units)
{
    for (std::size_t i = 0; i < units.size(); ++i) {
        if (!units[i].insidePhrase)
            continue;
        const bool first = i == 0 || !units[i - 1].insidePhrase;
        const bool last = i + 1 < units.size() && !units[i + 1].insidePhrase;
        units[i].noBreak = (first && units[i].length == 1)
            || (last && units[i + 1].length <= 2 && units[i].insidePhrase);
    }
}

// What an adult put in keeps its short first word with the next: "[a child]".
void guardInsertions(const QString& text, std::vector<Unit>& units)
{
    constexpr int kShort = 3; // letters
    for (std::size_t i = 0; i + 1 < units.size(); ++i) {
        const QStringView word = QStringView(text).mid(units[i].start, units[i].length);
        if (word.startsWith(QLatin1Char('[')) && word.size() <= kShort + 1
            && !word.contains(QLatin1Char(']')))
            units[i].noBreak = true;
    }
}

} // namespace

Direction directionOf(const QString& text, const QString& language)
{
    static const std::array rightToLeft{QLatin1String("ar"),
        QLatin1String("he"),
        QLatin1String("fa"),
        QLatin1String("ur"),
        QLatin1String("ps"),
        QLatin1String("yi"),
        QLatin1String("ckb"),
        QLatin1String("dv")};
    const QString tag = mainLanguage(language);
    const auto same = [&](QLatin1String one) { return tag == one; };
    for (qsizetype i = 0; i < text.size(); ++i) {
        switch (QChar::direction(characterAt(text, i))) {
        case QChar::DirL:
            return Direction::LeftToRight;
        case QChar::DirR:
        case QChar::DirAL:
            return Direction::RightToLeft;
        default:
            break;
        }
    }
    return std::any_of(rightToLeft.begin(), rightToLeft.end(), same) ? Direction::RightToLeft
                                                                     : Direction::LeftToRight;
}

std::vector<ScriptStretch> scriptStretches(const QString& text)
{
    std::vector<ScriptStretch> stretches;
    for (qsizetype i = 0; i < text.size();) {
        const char32_t character = characterAt(text, i);
        const int length = character > 0xFFFF ? 2 : 1;
        QChar::Script script = QChar::script(character);
        if (isWrittenWithoutSpaces(character) && script <= QChar::Script_Common)
            script = QChar::Script_Han;
        const bool shared = script <= QChar::Script_Common;
        if (stretches.empty()) {
            stretches.push_back({0, length, script});
        } else {
            ScriptStretch& last = stretches.back();
            if (last.script <= QChar::Script_Common && !shared)
                last.script = script;
            if (shared || script == last.script)
                last.length += length;
            else
                stretches.push_back({static_cast<int>(i), length, script});
        }
        i += length;
    }
    if (!stretches.empty() && stretches.front().script <= QChar::Script_Common)
        stretches.front().script = QChar::Script_Latin;
    return stretches;
}

QuoteMarks quoteMarks(const QString& language)
{
    // From memory: marks that the style sets otherwise than the Unicode locale data.
    const QString tag = mainLanguage(language);
    if (tag == QLatin1String("fr"))
        return {QStringLiteral("«\u202F"), QStringLiteral("\u202F»")};
    if (tag == QLatin1String("ar"))
        return {QStringLiteral("«"), QStringLiteral("»")};
    if (tag == QLatin1String("he"))
        return {QStringLiteral("”"), QStringLiteral("“")};
    const QLocale known(tag);
    if (known.language() == QLocale::C || tag == QLatin1String("ja"))
        return {QStringLiteral("“"), QStringLiteral("”")};
    // All others as in the Unicode locale data (CLDR, delimiters).
    const QString around = known.quoteString(QStringView(u"-"));
    const qsizetype middle = around.indexOf(QLatin1Char('-'));
    return {around.left(middle), around.mid(middle + 1)};
}

double leadFactor(const QString& text, TypeRole role)
{
    int tall = 0;
    int square = 0;
    int other = 0;
    for (const ScriptStretch& stretch : scriptStretches(text)) {
        switch (stretch.script) {
        case QChar::Script_Latin:
        case QChar::Script_Greek:
        case QChar::Script_Cyrillic:
        case QChar::Script_Hebrew:
        case QChar::Script_Georgian:
        case QChar::Script_Armenian:
            other += stretch.length;
            break;
        case QChar::Script_Han:
        case QChar::Script_Hiragana:
        case QChar::Script_Katakana:
        case QChar::Script_Hangul:
        case QChar::Script_Bopomofo:
            square += stretch.length;
            break;
        default:
            tall += stretch.length; // Arabic, Indic, South-East Asian: marks above and below
        }
    }
    const bool mostlyTall = tall > square && tall > other;
    const bool mostlySquare = square > tall && square > other;
    if (role == TypeRole::Title)
        return mostlyTall ? 1.17 : 1.0;
    if (role == TypeRole::ChildsWords)
        return mostlyTall ? 1.12 : mostlySquare ? 1.06 : 1.0;
    return 1.0;
}

std::vector<Unit> lineUnits(const QString& text)
{
    std::vector<Unit> units;
    int at = 0;
    const int size = static_cast<int>(text.size());
    while (at < size) {
        int end = at;
        while (end < size && !isBreakingSpace(text.at(end)))
            ++end;
        int next = end;
        while (next < size && isBreakingSpace(text.at(next)))
            ++next;
        const std::size_t before = units.size();
        splitStretch(text, at, end, units);
        if (units.size() == before)
            units.push_back({at, 0, 0, false, false}); // spaces at the very beginning
        units.back().spaces = next - end;
        at = next;
    }
    guardPhrases(units);
    guardInsertions(text, units);
    return units;
}

QStringList paragraphsOf(const QString& text)
{
    QString plain = text;
    plain.replace(QStringLiteral("\r\n"), QStringLiteral("\n"));
    plain.replace(QLatin1Char('\r'), QLatin1Char('\n'));
    plain.replace(QChar(QChar::LineSeparator), QLatin1Char('\n'));
    plain.replace(QChar(QChar::ParagraphSeparator), QLatin1Char('\n'));
    QStringList result;
    for (const QString& paragraph : plain.split(QLatin1Char('\n'))) {
        if (!paragraph.trimmed().isEmpty())
            result.push_back(paragraph.trimmed());
    }
    return result;
}

std::vector<TextRange> quotedWords(const QString& text)
{
    struct Pair {
        QChar opening;
        QString closing;
    };
    static const std::array pairs{Pair{u'\u201C', QStringLiteral("\u201D")},
        Pair{u'\u201E', QStringLiteral("\u201C\u201D")},
        Pair{u'\u00AB', QStringLiteral("\u00BB")},
        Pair{u'\u300C', QStringLiteral("\u300D")},
        Pair{u'"', QStringLiteral("\"")}};
    std::vector<TextRange> ranges;
    for (int i = 0; i < text.size(); ++i) {
        const auto pair = std::find_if(
            pairs.begin(), pairs.end(), [&](const Pair& one) { return one.opening == text.at(i); });
        if (pair == pairs.end())
            continue;
        int end = i + 1;
        while (end < text.size() && !pair->closing.contains(text.at(end)))
            ++end;
        if (end == text.size())
            continue; // a mark without its partner quotes nothing
        ranges.push_back({i, end - i + 1});
        i = end;
    }
    return ranges;
}

} // namespace wainscot
