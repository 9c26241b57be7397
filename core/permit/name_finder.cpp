#include "core/permit/name_finder.h"

#include <QStringList>

#include <algorithm>

namespace wainscot {

namespace {

// "Zoë" as "Zoe". Only Latin accents go; vowel signs of other scripts are part of the letters.
QString withoutAccents(const QString& text)
{
    QString plain;
    for (const QChar c : text.normalized(QString::NormalizationForm_D)) {
        if (c < QChar(0x0300) || c > QChar(0x036f))
            plain.append(c);
    }
    return plain.normalized(QString::NormalizationForm_C);
}

QString folded(const QString& form)
{
    QString plain = withoutAccents(form.simplified()).toCaseFolded();
    return plain.replace(QChar(0x2019), QLatin1Char('\''));
}

// Scripts that put no space between words.
bool runsOn(const QString& form)
{
    return std::any_of(form.begin(), form.end(), [](QChar c) {
        switch (c.script()) {
        case QChar::Script_Han:
        case QChar::Script_Hiragana:
        case QChar::Script_Katakana:
        case QChar::Script_Thai:
        case QChar::Script_Lao:
        case QChar::Script_Khmer:
        case QChar::Script_Myanmar:
        case QChar::Script_Tibetan:
            return true;
        default:
            return c.isSurrogate(); // rarer Chinese characters; safe for whatever else it is
        }
    });
}

// A single letter such as the initial in "J." names nobody, and "a" would be found everywhere.
bool isTooShort(const QString& form)
{
    const auto letters =
        std::count_if(form.begin(), form.end(), [](QChar c) { return c.isLetter(); });
    return form.isEmpty() || (letters < 2 && !runsOn(form));
}

QString patternOf(const QString& form)
{
    const QString letter = QStringLiteral("[\\p{L}\\p{M}\\p{N}]");
    QString words = QRegularExpression::escape(form);
    words.replace(
        QRegularExpression(QStringLiteral("\\\\?['\u2019]")), QStringLiteral("['\u2019]"));
    words.replace(QRegularExpression(QStringLiteral("\\\\? ")), QStringLiteral("\\s+"));
    if (runsOn(form))
        return words;
    QString before = QStringLiteral("(?<!%1)").arg(letter);
    const QChar::Script script = form.at(0).script();
    if (script == QChar::Script_Arabic || script == QChar::Script_Hebrew) {
        // "and", "to", "with", "like" are written as one letter joined to the word.
        before = QStringLiteral("(?:(?<!%1)|(?<=(?<!%1)[\u0648\u0641\u0628\u0644\u0643"
                                "\u05d5\u05d1\u05dc\u05db\u05de\u05d4\u05e9]))")
                     .arg(letter);
    }
    return before + words + QStringLiteral("(?!%1)").arg(letter);
}

} // namespace

NameFinder::NameFinder(const Table<Child>& children)
{
    for (const auto& [id, child] : children.rows()) {
        const QString name = child.name.simplified();
        const QString first = name.section(QLatin1Char(' '), 0, 0);
        add(name, id, name != first);
        add(first, id, false);
        add(child.shownAs.simplified(), id, false);
    }
    QStringList forms;
    for (auto at = m_owners.cbegin(); at != m_owners.cend(); ++at) {
        for (const QString& form : at->spellings) {
            forms << form << form.normalized(QString::NormalizationForm_C)
                  << form.normalized(QString::NormalizationForm_D) << withoutAccents(form);
        }
    }
    forms.removeDuplicates();
    std::sort(forms.begin(), forms.end(), [](const QString& a, const QString& b) {
        return a.size() != b.size() ? a.size() > b.size() : a < b;
    });
    QStringList patterns;
    std::transform(forms.begin(), forms.end(), std::back_inserter(patterns), patternOf);
    m_pattern = QRegularExpression(patterns.join(QLatin1Char('|')),
        QRegularExpression::CaseInsensitiveOption | QRegularExpression::UseUnicodePropertiesOption);
}

void NameFinder::add(const QString& form, ChildId child, bool whole)
{
    if (isTooShort(form))
        return;
    Owners& owners = m_owners[folded(form)];
    if (std::find(owners.who.begin(), owners.who.end(), child) == owners.who.end())
        owners.who.push_back(child);
    owners.whole = owners.whole || whole;
    owners.spellings << form;
}

std::vector<NameFinder::Found> NameFinder::in(const QString& text) const
{
    std::vector<Found> all;
    if (m_owners.isEmpty())
        return all;
    QRegularExpressionMatchIterator matches = m_pattern.globalMatch(text);
    while (matches.hasNext()) {
        const QRegularExpressionMatch match = matches.next();
        if (isEverydayWord(match.captured()))
            continue;
        const auto at = m_owners.constFind(folded(match.captured()));
        if (at != m_owners.cend())
            all.push_back({match.capturedStart(), match.capturedLength(), at->who, at->whole});
    }
    return all;
}

} // namespace wainscot
