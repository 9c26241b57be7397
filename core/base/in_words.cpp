#include "core/base/in_words.h"

#include "core/base/wall_text.h"

#include <QLocale>
#include <QRegularExpression>

namespace wainscot {

namespace {

// Days and months go with the words: of a language without words, as in English.
QLocale localeOf(const QString& language)
{
    return hasWallTexts(language) && !language.startsWith(QLatin1String("en"))
        ? QLocale(language)
        : QLocale(QLocale::English, QLocale::UnitedKingdom);
}

QString written(QDate day, WallText form, const QString& language)
{
    return localeOf(language).toString(day, wallText(form, language));
}

// Begins with the sound of i, not with a diphthong of it ("Ines", "Hilda"; not "hielo"): where
// Spanish says e for y (Real Academia, Diccionario panhispanico, "y").
bool beginsLikeI(const QString& word)
{
    static const QRegularExpression sound(QStringLiteral("^h?[i\u00ed](?![ae\u00f3o\u00e1\u00e9])"),
        QRegularExpression::CaseInsensitiveOption | QRegularExpression::UseUnicodePropertiesOption);
    return word.contains(sound);
}

} // namespace

QString capitalised(QString text)
{
    if (!text.isEmpty())
        text[0] = text.at(0).toUpper();
    return text;
}

QString dayInWords(QDate day, const QString& language)
{
    return capitalised(written(day, WallText::DayOfWeekAndMonth, language));
}

QString dayOfRecord(QDate day, const QString& language)
{
    return capitalised(written(day, WallText::DayOfWeekMonthAndYear, language));
}

QString weekdayInWords(QDate day, const QString& language)
{
    return localeOf(language).dayName(day.dayOfWeek());
}

QString dateInWords(QDate day, const QString& language)
{
    return written(day, WallText::DayOfMonthAndYear, language);
}

QString daysInWords(QDate first, QDate last, const QString& language)
{
    const QString end = written(last, WallText::DayOfMonth, language);
    if (first == last)
        return end;
    const bool sameMonth = first.month() == last.month() && first.year() == last.year();
    if (sameMonth)
        return written(first, WallText::FirstDayOfTwo, language) + QChar(0x2013) + end;
    return written(first, WallText::DayOfMonth, language)
        + QStringLiteral(" %1 ").arg(QChar(0x2013)) + end;
}

QString daysOfTerm(QDate from, QDate to, const QString& language)
{
    const WallText form =
        from.year() == to.year() ? WallText::DayOfMonth : WallText::DayOfMonthAndYear;
    return wallText(WallText::FromTo, language)
        .arg(written(from, form, language), dateInWords(to, language));
}

QString listInWords(const QStringList& items, const QString& language)
{
    if (items.size() < 2)
        return items.join(QString());
    const QString others = items.mid(0, items.size() - 1).join(QStringLiteral(", "));
    const WallText with = beginsLikeI(items.last()) ? WallText::AndBeforeI : WallText::And;
    return wallText(with, language).arg(others, items.last());
}

} // namespace wainscot
