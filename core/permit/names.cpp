#include "core/base/in_words.h"
#include "core/permit/cleared.h"

#include "core/base/wall_text.h"
#include "core/permit/piece_clearing.h"
#include "core/permit/reasons.h"
#include "core/permit/sentence_start.h"

#include <algorithm>

namespace wainscot {

namespace {

// "4 to 5" for 4 and 5, "2 to 3" for 2 and 3.
int bandStart(int years)
{
    return years / 2 * 2;
}

} // namespace

bool startsSentence(const QString& text, qsizetype at)
{
    for (qsizetype i = at - 1; i >= 0; --i) {
        const QChar c = text.at(i);
        if (c == QLatin1Char('\n') || QStringLiteral(".!?").contains(c))
            return true;
        if (!c.isSpace() && c != QLatin1Char('"')
            && c.category() != QChar::Punctuation_InitialQuote)
            return false;
    }
    return true;
}

void addLeftOut(std::vector<LeftOut>& leftOut, const LeftOut& entry)
{
    const bool known = std::any_of(leftOut.begin(), leftOut.end(), [&](const LeftOut& other) {
        return other.what == entry.what && other.id == entry.id && other.piece == entry.piece;
    });
    if (!known)
        leftOut.push_back(entry);
}

QString PermissionRules::ageBand(int years) const
{
    const int first = bandStart(years);
    const auto& rows = m_book.children.rows();
    const auto sharing = std::count_if(rows.begin(), rows.end(), [&](const auto& row) {
        const Child& child = row.second;
        const auto months = child.born ? ageInMonths(*child.born, m_on) : std::nullopt;
        return months && bandStart(*months / 12) == first;
    });
    if (sharing < 2)
        return {};
    return wallText(WallText::AgesFromTo, wallLanguage()).arg(first).arg(first + 1);
}

QString PermissionRules::shownName(const Child& child) const
{
    const bool named = mayBeNamed(child);
    const QString name = named ? displayName(child) : aChild(wallLanguage());
    const auto months = child.born ? ageInMonths(*child.born, m_on) : std::nullopt;
    if (!months)
        return name;
    const bool goesOut =
        m_display.audience == Audience::Families || m_display.audience == Audience::Public;
    const bool exact = named && !(goesOut && isSeen(child.id));
    const QString age = exact ? ageInYears(*months) : ageBand(*months / 12);
    return age.isEmpty() ? name : QStringLiteral("%1, %2").arg(name, age);
}

QString PermissionRules::withPermittedNames(const QString& text, bool childsWords) const
{
    std::vector<LeftOut> ignored;
    return withPermittedNames(text, childsWords, {wallLanguage(), PieceId()}, ignored);
}

QString PermissionRules::wallLanguage() const
{
    return m_display.language.isEmpty() ? m_book.info.language : m_display.language;
}

QString PermissionRules::aChild(const QString& language) const
{
    return wallText(WallText::AChild, hasWallTexts(language) ? language : wallLanguage());
}

QString PermissionRules::withPermittedNames(
    const QString& text, bool childsWords, const Where& where, std::vector<LeftOut>& leftOut) const
{
    QString shown = text;
    const auto found = m_names.in(text);
    for (auto name = found.rbegin(); name != found.rend(); ++name) {
        QString instead;
        for (const ChildId id : name->who) {
            const Child& child = *m_book.children.find(id);
            if (const auto why = namingRefusal(child)) {
                instead = aChild(where.language);
                addLeftOut(leftOut, {QStringLiteral("name"), id.number(), where.piece, *why});
            }
        }
        // The family name is not covered by the permission for the first name.
        if (instead.isEmpty() && name->whole) {
            const Child& child = *m_book.children.find(name->who.front());
            instead = displayName(child);
            if (instead.compare(text.mid(name->start, name->length), Qt::CaseInsensitive) == 0)
                continue;
            addLeftOut(leftOut,
                {QStringLiteral("name"),
                    child.id.number(),
                    where.piece,
                    reasons::firstNameOnly(child)});
        }
        if (instead.isEmpty())
            continue;
        if (childsWords)
            instead = QStringLiteral("[%1]").arg(instead);
        else if (startsSentence(text, name->start))
            instead = capitalised(instead);
        shown.replace(name->start, name->length, instead);
    }
    return shown;
}

} // namespace wainscot
