#include "core/model/child.h"

#include "core/model/plain_name.h"

#include <QRegularExpression>

namespace wainscot {

QString displayName(const Child& child)
{
    const QString shownAs = plainName(child.shownAs);
    return shownAs.isEmpty() ? plainName(child.name).section(QLatin1Char(' '), 0, 0) : shownAs;
}

std::optional<BirthDate> birthDateFromText(const QString& text)
{
    static const QRegularExpression form(QStringLiteral("^(\\d{4})-(\\d{2})(?:-(\\d{2}))?$"));
    const QRegularExpressionMatch match = form.match(text.trimmed());
    if (!match.hasMatch())
        return std::nullopt;
    const BirthDate born{
        match.captured(1).toInt(), match.captured(2).toInt(), match.captured(3).toInt()};
    const bool dayGiven = !match.captured(3).isEmpty();
    if (!QDate::isValid(born.year, born.month, dayGiven ? born.day : 1))
        return std::nullopt;
    return born;
}

QString textOf(const BirthDate& born)
{
    const QString month = QStringLiteral("%1-%2")
                              .arg(born.year, 4, 10, QLatin1Char('0'))
                              .arg(born.month, 2, 10, QLatin1Char('0'));
    if (born.day == 0)
        return month;
    return month + QStringLiteral("-%1").arg(born.day, 2, 10, QLatin1Char('0'));
}

std::optional<int> ageInMonths(const BirthDate& born, QDate on)
{
    int months = (on.year() - born.year) * 12 + on.month() - born.month;
    if (born.day > 0 && on.day() < born.day)
        --months;
    if (months < 0)
        return std::nullopt;
    return months;
}

QString ageNotation(int months)
{
    return QStringLiteral("%1;%2").arg(months / 12).arg(months % 12);
}

QString ageInYears(int months)
{
    return QString::number(months / 12);
}

} // namespace wainscot
