#include "app/cli/json.h"

#include <cmath>

namespace wainscot::cli {

namespace {

QJsonValue numberOrNull(const std::optional<double>& value)
{
    return value ? QJsonValue(std::round(*value * 1000) / 1000) : QJsonValue();
}

} // namespace

QJsonObject toJson(const Finding& finding)
{
    return {{QStringLiteral("severity"), nameOf(finding.severity)},
        {QStringLiteral("rule"), finding.rule},
        {QStringLiteral("panel"), finding.panel},
        {QStringLiteral("piece"), static_cast<qint64>(finding.piece)},
        {QStringLiteral("measured"), numberOrNull(finding.measured)},
        {QStringLiteral("limit"), numberOrNull(finding.limit)},
        {QStringLiteral("unit"), finding.unit},
        {QStringLiteral("source"), finding.source},
        {QStringLiteral("says"), finding.says}};
}

QJsonObject toJson(const LeftOut& left)
{
    return {{QStringLiteral("what"), left.what},
        {QStringLiteral("id"), static_cast<qint64>(left.id)},
        {QStringLiteral("why"), left.why}};
}

QJsonArray toJson(const std::vector<LeftOut>& left)
{
    QJsonArray array;
    for (const LeftOut& one : left)
        array.append(toJson(one));
    return array;
}

QJsonArray toJson(const QStringList& texts)
{
    return QJsonArray::fromStringList(texts);
}

QJsonValue toJson(const std::optional<QDate>& day)
{
    return day ? QJsonValue(day->toString(Qt::ISODate)) : QJsonValue();
}

double hundredths(double value)
{
    return std::round(value * 100) / 100;
}

} // namespace wainscot::cli
