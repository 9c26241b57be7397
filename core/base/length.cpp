#include "core/base/length.h"

#include <QRegularExpression>

namespace wainscot {

namespace {

Mm unitFromName(const QString& name)
{
    if (name == QLatin1String("m"))
        return Mm(1000);
    if (name == QLatin1String("cm"))
        return Mm(10);
    if (name == QLatin1String("in"))
        return inches(1);
    return Mm(1);
}

} // namespace

Result<Mm> lengthFromText(const QString& text)
{
    static const QRegularExpression form(
        QStringLiteral("^(\\d{1,7}(?:[.,]\\d{1,9})?)\\s*(mm|cm|m|in)$"));
    const QRegularExpressionMatch match = form.match(text.trimmed().toLower());
    if (!match.hasMatch()) {
        return Error{ErrorCode::WrongUse,
            text,
            QStringLiteral("a length needs a number and a unit, for example 1.5m, 30mm or 2in")};
    }
    const double number = match.captured(1).replace(QLatin1Char(','), QLatin1Char('.')).toDouble();
    return number * unitFromName(match.captured(2));
}

} // namespace wainscot
