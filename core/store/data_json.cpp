#include "core/store/data_text.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <algorithm>
#include <optional>

namespace wainscot {

namespace {

const QString kFile = QStringLiteral("data.json");

QByteArray jsonOf(const QVariant& cell, CellKind kind)
{
    if (!cell.isValid())
        return QByteArrayLiteral("null");
    switch (kind) {
    case CellKind::Number:
        return QByteArray::number(cell.toLongLong());
    case CellKind::YesNo:
        return cell.toBool() ? QByteArrayLiteral("true") : QByteArrayLiteral("false");
    case CellKind::Audiences:
        return QJsonDocument(QJsonArray::fromStringList(cell.toStringList()))
            .toJson(QJsonDocument::Compact);
    default: {
        const QJsonValue value =
            kind == CellKind::Real ? QJsonValue(cell.toDouble()) : QJsonValue(cell.toString());
        const QByteArray list = QJsonDocument(QJsonArray{value}).toJson(QJsonDocument::Compact);
        return list.mid(1, list.size() - 2);
    }
    }
}

QByteArray lineOf(const DataRow& row, const DataTable& table)
{
    QByteArray line = "{";
    for (std::size_t i = 0; i < row.cells.size(); ++i) {
        line += i == 0 ? "\"" : ", \"";
        line += table.columns[i].name.toLatin1() + "\": ";
        line += jsonOf(row.cells[i], table.columns[i].kind);
    }
    return line + "}";
}

std::optional<QVariant> cellFrom(const QJsonValue& value, CellKind kind)
{
    switch (kind) {
    case CellKind::Text:
        return value.isString() ? std::optional<QVariant>(value.toString()) : std::nullopt;
    case CellKind::Real:
        return value.isDouble() ? std::optional<QVariant>(value.toDouble()) : std::nullopt;
    case CellKind::YesNo:
        return value.isBool() ? std::optional<QVariant>(value.toBool()) : std::nullopt;
    case CellKind::Number: {
        // A fraction has no whole number, and then the two defaults come back.
        const qint64 number = value.toInteger(-1);
        const bool whole = value.isDouble() && value.toInteger(-2) == number;
        return whole ? std::optional<QVariant>(number) : std::nullopt;
    }
    case CellKind::Audiences: {
        QStringList audiences;
        for (const QJsonValue one : value.toArray())
            audiences << one.toString();
        return value.isArray() ? std::optional<QVariant>(audiences) : std::nullopt;
    }
    }
    return std::nullopt;
}

const char* wantedFor(CellKind kind)
{
    switch (kind) {
    case CellKind::Text:
        return "a text";
    case CellKind::Number:
        return "a whole number";
    case CellKind::Real:
        return "a number";
    case CellKind::YesNo:
        return "true or false";
    case CellKind::Audiences:
        return "a list";
    }
    return "";
}

// The cells of a row; the cause when it is not one of this table.
Result<std::vector<QVariant>> cellsFrom(const QJsonObject& object, const DataTable& table)
{
    std::vector<QVariant> cells;
    cells.reserve(table.columns.size());
    const auto wrong = [](const QString& cause) { return Error{ErrorCode::Damaged, {}, cause}; };
    for (const DataColumn& column : table.columns) {
        const auto at = object.constFind(column.name);
        if (at == object.constEnd())
            return wrong(QStringLiteral("it has no \u201c%1\u201d").arg(column.name));
        if (at->isNull() && column.mayBeMissing) {
            cells.emplace_back();
            continue;
        }
        const auto cell = cellFrom(*at, column.kind);
        if (!cell) {
            return wrong(QStringLiteral("\u201c%1\u201d is not %2")
                             .arg(column.name, QLatin1String(wantedFor(column.kind))));
        }
        cells.push_back(*cell);
    }
    if (object.size() == qsizetype(cells.size()))
        return cells;
    for (const QString& key : object.keys()) {
        const auto isKey = [&](const DataColumn& column) { return column.name == key; };
        if (std::none_of(table.columns.begin(), table.columns.end(), isKey))
            return wrong(QStringLiteral("\u201c%1\u201d is not known").arg(key.left(60)));
    }
    return cells;
}

Result<> readTable(const QJsonValue& value, DataTable& table)
{
    if (!value.isArray())
        return Error{ErrorCode::Damaged,
            kFile,
            QStringLiteral("it has no list \u201c%1\u201d").arg(table.name)};
    const QJsonArray rows = value.toArray();
    table.rows.reserve(std::size_t(rows.size()));
    for (const QJsonValue row : rows) {
        const int number = int(table.rows.size()) + 1;
        const DataSource source{kFile};
        if (!row.isObject())
            return source.wrong(table, number, QStringLiteral("it is not a row"));
        auto cells = cellsFrom(row.toObject(), table);
        if (!cells)
            return source.wrong(table, number, cells.error().detail);
        table.rows.push_back({number, std::move(*cells)});
    }
    return Done{};
}

Result<QJsonObject> objectFrom(const QByteArray& json)
{
    QJsonParseError parsed;
    const QJsonDocument document = QJsonDocument::fromJson(json, &parsed);
    if (parsed.error != QJsonParseError::NoError) {
        const auto line = json.left(parsed.offset).count('\n') + 1;
        return Error{ErrorCode::Damaged,
            kFile,
            QStringLiteral("line %1: %2").arg(line).arg(parsed.errorString())};
    }
    if (document.object().value(QLatin1String("format")).toString() != kDataFormat)
        return Error{ErrorCode::Damaged, kFile, QStringLiteral("it is not the data of a book")};
    return document.object();
}

} // namespace

QByteArray dataToJson(const std::vector<DataTable>& tables, DataHead head)
{
    QByteArray json = "{\n\"format\": \"" + QByteArray(kDataFormat.latin1())
        + "\",\n\"version\": " + QByteArray::number(head.version) + ",\n\"tables\": {";
    for (const DataTable& table : tables) {
        json += &table == &tables.front() ? "\n\"" : ",\n\"";
        json += table.name.toLatin1() + "\": [";
        for (const DataRow& row : table.rows) {
            json += &row == &table.rows.front() ? "\n" : ",\n";
            json += lineOf(row, table);
        }
        json += "]";
    }
    return json + "\n}\n}\n";
}

Result<DataHead> headOfJson(const QByteArray& json, int newest)
{
    const auto object = objectFrom(json);
    if (!object)
        return object.error();
    const int version = object->value(QLatin1String("version")).toInt();
    if (version > newest)
        return Error{ErrorCode::TooNew, kFile, {}};
    if (version < 1)
        return Error{ErrorCode::Damaged, kFile, QStringLiteral("it says no version")};
    return DataHead{version};
}

Result<> dataFromJson(const QByteArray& json, std::vector<DataTable>& tables)
{
    const auto object = objectFrom(json);
    if (!object)
        return object.error();
    const QJsonObject given = object->value(QLatin1String("tables")).toObject();
    for (DataTable& table : tables) {
        if (auto read = readTable(given.value(table.name), table); !read)
            return read;
    }
    if (given.size() != qsizetype(tables.size()))
        return Error{ErrorCode::Damaged, kFile, QStringLiteral("it has a table that is not known")};
    return Done{};
}

} // namespace wainscot
