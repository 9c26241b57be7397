#include "core/model/verbatim.h"

#include <QList>

#include <algorithm>
#include <vector>

namespace wainscot {

namespace {

const QChar kEllipsis(0x2026);

struct Token {
    QString text;
    int start = 0; // in the text it is from
    [[nodiscard]] int end() const { return start + int(text.size()); }
};

bool joinsWord(QChar c)
{
    // Apostrophes belong to a word, marks to their letter.
    return c.isLetterOrNumber() || c.isMark() || c.isSurrogate() || c == QLatin1Char('\'')
        || c == QChar(0x2019);
}

// Scripts written without spaces have no words to see: each letter counts.
bool standsAlone(QChar c)
{
    switch (c.script()) {
    case QChar::Script_Han:
    case QChar::Script_Hiragana:
    case QChar::Script_Katakana:
        return true;
    default:
        return false;
    }
}

std::vector<Token> tokensOf(const QString& text)
{
    std::vector<Token> tokens;
    for (int at = 0; at < text.size();) {
        const QChar c = text.at(at);
        if (c.isSpace()) {
            ++at;
            continue;
        }
        int end = at + 1;
        if (joinsWord(c) && !standsAlone(c)) {
            while (end < text.size() && joinsWord(text.at(end)) && !standsAlone(text.at(end)))
                ++end;
        }
        tokens.push_back({text.mid(at, end - at), at});
        at = end;
    }
    return tokens;
}

int closingBracket(const std::vector<Token>& tokens, std::size_t opening)
{
    for (std::size_t i = opening + 1; i < tokens.size(); ++i) {
        if (tokens[i].text == QLatin1String("["))
            return -1;
        if (tokens[i].text == QLatin1String("]"))
            return int(i);
    }
    return -1;
}

// Where one can be in the child's words, and whether an ellipsis stands there now.
struct Reading {
    std::vector<bool> plain;
    std::vector<bool> afterEllipsis;
    explicit Reading(std::size_t words)
        : plain(words + 1)
        , afterEllipsis(words + 1)
    {
    }
    void join(const Reading& other)
    {
        for (std::size_t at = 0; at < plain.size(); ++at) {
            plain[at] = plain[at] || other.plain[at];
            afterEllipsis[at] = afterEllipsis[at] || other.afterEllipsis[at];
        }
    }
    // At the end of the words, or somewhere with the rest left out.
    [[nodiscard]] bool canEnd() const
    {
        return plain.back()
            || std::find(afterEllipsis.begin(), afterEllipsis.end(), true) != afterEllipsis.end();
    }
};

// The longest common row of words, as positions in `typed` for each of `words` (-1 = left out).
// Of equal ones the earliest words of the child are kept.
std::vector<int> alignment(const std::vector<Token>& words, const std::vector<Token>& typed)
{
    const std::size_t rows = words.size();
    const std::size_t columns = typed.size();
    std::vector<std::vector<int>> common(rows + 1, std::vector<int>(columns + 1));
    for (std::size_t i = rows; i-- > 0;) {
        for (std::size_t j = columns; j-- > 0;) {
            common[i][j] = words[i].text == typed[j].text
                ? common[i + 1][j + 1] + 1
                : std::max(common[i + 1][j], common[i][j + 1]);
        }
    }
    std::vector<int> at(rows, -1);
    for (std::size_t i = 0, j = 0; i < rows && j < columns;) {
        if (words[i].text == typed[j].text)
            at[i++] = int(j++);
        else if (common[i + 1][j] >= common[i][j + 1])
            ++i;
        else
            ++j;
    }
    return at;
}

// Marks of an earlier round go; what stood in brackets stays as an insertion. The child's own marks
// come back with the alignment, because they stand in the words as well.
std::vector<Token> withoutTraces(const std::vector<Token>& typed, const std::vector<Token>& words)
{
    const auto childHas = [&](const QString& text) {
        return std::any_of(
            words.begin(), words.end(), [&](const Token& token) { return token.text == text; });
    };
    std::vector<Token> plain;
    for (const Token& token : typed) {
        const bool trace = token.text == kEllipsis || token.text == QLatin1String("[")
            || token.text == QLatin1String("]");
        if (!trace || childHas(token.text))
            plain.push_back(token);
    }
    return plain;
}

class TracedText {
public:
    explicit TracedText(const QString& words)
        : m_words(words)
    {
    }

    void keep(const Token& token)
    {
        if (m_lastEnd >= 0 && !m_marked)
            m_text += m_words.mid(m_lastEnd, token.start - m_lastEnd);
        else if (!m_text.isEmpty() && !m_text.back().isSpace() && wantsSpace(token))
            m_text += QLatin1Char(' ');
        m_text += token.text;
        m_lastEnd = token.end();
        m_marked = false;
    }
    void leaveOut() { mark(QString(kEllipsis)); }
    void insert(const QString& text) { mark(QLatin1Char('[') + text + QLatin1Char(']')); }
    [[nodiscard]] QString text() const { return m_text.trimmed(); }

private:
    static bool wantsSpace(const Token& token)
    {
        return joinsWord(token.text.front()) || token.text.front() == QLatin1Char('"');
    }
    void mark(const QString& mark)
    {
        if (!m_text.isEmpty() && !m_text.back().isSpace())
            m_text += QLatin1Char(' ');
        m_text += mark;
        m_marked = true;
    }

    const QString& m_words;
    QString m_text;
    int m_lastEnd = -1;
    bool m_marked = false;
};

} // namespace

bool isVerbatim(const QString& shown, const QString& words)
{
    const std::vector<Token> own = tokensOf(words);
    const std::vector<Token> tokens = tokensOf(shown);
    if (tokens.empty() || own.empty())
        return false;
    // Every way of reading the marks is followed at once: a child's words may hold them too.
    std::vector<Reading> readings(tokens.size() + 1, Reading(own.size()));
    readings[0].plain[0] = true;
    for (std::size_t t = 0; t < tokens.size(); ++t) {
        const Reading& reading = readings[t];
        const QString& text = tokens[t].text;
        Reading& next = readings[t + 1];
        bool gap = false; // an ellipsis stands anywhere before the position at hand
        for (std::size_t at = 0; at <= own.size(); ++at) {
            gap = gap || reading.afterEllipsis[at];
            if (text == kEllipsis && (reading.plain[at] || reading.afterEllipsis[at]))
                next.afterEllipsis[at] = true;
            if ((reading.plain[at] || gap) && at < own.size() && own[at].text == text)
                next.plain[at + 1] = true;
        }
        const int closing = text == QLatin1String("[") ? closingBracket(tokens, t) : -1;
        if (closing > int(t) + 1)
            readings[std::size_t(closing) + 1].join(reading);
    }
    const bool keepsSome = std::any_of(tokens.begin(), tokens.end(), [&](const Token& token) {
        return std::any_of(
            own.begin(), own.end(), [&](const Token& word) { return word.text == token.text; });
    });
    return keepsSome && readings.back().canEnd();
}

QString withTraces(const QString& asTyped, const QString& words)
{
    QString typed = asTyped;
    if (!words.contains(QLatin1String("...")))
        typed.replace(QLatin1String("..."), QString(kEllipsis));
    const std::vector<Token> own = tokensOf(words);
    const std::vector<Token> rest = withoutTraces(tokensOf(typed), own);
    const std::vector<int> places = alignment(own, rest);
    if (std::all_of(places.begin(), places.end(), [](int place) { return place < 0; }))
        return words;
    TracedText traced(words);
    int next = 0; // of `rest`
    const auto insertUntil = [&](int end) {
        if (next >= end)
            return;
        const Token& first = rest[std::size_t(next)];
        const Token& last = rest[std::size_t(end) - 1];
        QString text = typed.mid(first.start, last.end() - first.start);
        for (const QChar trace : {QLatin1Char('['), QLatin1Char(']')})
            text.remove(trace);
        text.remove(kEllipsis);
        if (!text.trimmed().isEmpty())
            traced.insert(text.simplified());
        next = end;
    };
    for (std::size_t i = 0; i < own.size(); ++i) {
        if (places[i] < 0) {
            if (i == 0 || places[i - 1] >= 0)
                traced.leaveOut();
            continue;
        }
        insertUntil(places[i]);
        traced.keep(own[i]);
        next = places[i] + 1;
    }
    insertUntil(int(rest.size()));
    return traced.text();
}

} // namespace wainscot
