#include "core/model/left_finding.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

namespace wainscot {

QString textOf(const std::vector<LeftFinding>& left)
{
    if (left.empty())
        return {};
    QJsonArray array;
    for (const LeftFinding& one : left) {
        array.append(QJsonObject{{QStringLiteral("rule"), one.rule},
            {QStringLiteral("piece"), static_cast<qint64>(one.piece.number())},
            {QStringLiteral("why"), one.why}});
    }
    return QString::fromUtf8(QJsonDocument(array).toJson(QJsonDocument::Compact));
}

std::optional<std::vector<LeftFinding>> leftFindingsFromText(const QString& text)
{
    std::vector<LeftFinding> left;
    if (text.isEmpty())
        return left;
    const QJsonDocument document = QJsonDocument::fromJson(text.toUtf8());
    if (!document.isArray())
        return std::nullopt;
    const QJsonArray rows = document.array();
    for (const auto& row : rows) {
        const QJsonObject value = row.toObject();
        const QString rule = value[u"rule"].toString();
        if (rule.isEmpty())
            return std::nullopt;
        left.push_back({rule, PieceId(value[u"piece"].toInteger()), value[u"why"].toString()});
    }
    return left;
}

} // namespace wainscot
