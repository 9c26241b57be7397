#include "core/store/data_table.h"

#include "core/model/permission.h"
#include "core/store/database.h"
#include "core/store/rows.h"

#include <QStringList>

namespace wainscot {

namespace {

// The one column that is taken apart: a number made of yes and no says nothing to a person.
const QLatin1String kBits("permissions");

CellKind kindOf(const QString& type)
{
    if (type == QLatin1String("SMALLINT"))
        return CellKind::YesNo;
    if (type == QLatin1String("DOUBLE PRECISION"))
        return CellKind::Real;
    return type == QLatin1String("TEXT") ? CellKind::Text : CellKind::Number;
}

void addColumn(DataTable& table, const QString& name, const QString& type, bool mayBeMissing)
{
    if (name != kBits) {
        table.columns.push_back({name, kindOf(type), mayBeMissing});
        return;
    }
    for (const Permission permission : kPermissions) {
        table.columns.push_back({nameOf(permission), CellKind::Audiences, false});
    }
}

// As the database names them.
QStringList stored(const DataTable& table)
{
    QStringList names;
    for (const DataColumn& column : table.columns) {
        if (column.kind != CellKind::Audiences)
            names << column.name;
        else if (!names.contains(kBits))
            names << kBits;
    }
    return names;
}

QVariant cellFrom(const QVariant& value, CellKind kind)
{
    if (value.isNull())
        return {};
    if (kind == CellKind::Text)
        return value.toString();
    if (kind == CellKind::Real)
        return value.toDouble();
    return kind == CellKind::YesNo ? QVariant(value.toInt() != 0) : QVariant(value.toLongLong());
}

void addAudiences(std::vector<QVariant>& cells, const Permissions& permissions)
{
    for (const Permission permission : kPermissions) {
        QStringList audiences;
        for (const Audience audience : kAudiences) {
            if (permissions.allows(permission, audience))
                audiences << nameOf(audience);
        }
        cells.emplace_back(audiences);
    }
}

std::vector<QVariant> cellsFrom(const QSqlQuery& row, const DataTable& table)
{
    std::vector<QVariant> cells;
    cells.reserve(table.columns.size());
    for (int at = 0; cells.size() < table.columns.size(); ++at) {
        const CellKind kind = table.columns[cells.size()].kind;
        if (kind == CellKind::Audiences)
            addAudiences(cells, Permissions::fromBits(row.value(at).toUInt()));
        else
            cells.push_back(cellFrom(row.value(at), kind));
    }
    return cells;
}

QVariant nothing(CellKind kind)
{
    return kind == CellKind::Text ? QVariant(QMetaType::fromType<QString>())
                                  : QVariant(QMetaType::fromType<qlonglong>());
}

// What the database takes for the cells of a row.
QVariantList valuesFor(const DataRow& row, const DataTable& table)
{
    QVariantList values;
    Permissions permissions;
    qsizetype permissionsAt = -1;
    for (std::size_t i = 0; i < table.columns.size(); ++i) {
        const DataColumn& column = table.columns[i];
        const QVariant& cell = row.cells[i];
        if (column.kind == CellKind::Audiences) {
            if (permissionsAt < 0) {
                permissionsAt = values.size();
                values << QVariant();
            }
            for (const Permission permission : kPermissions) {
                for (const Audience audience : kAudiences) {
                    if (nameOf(permission) == column.name
                        && cell.toStringList().contains(nameOf(audience)))
                        permissions.set(permission, audience, true);
                }
            }
        } else if (!cell.isValid()) {
            values << nothing(column.kind);
        } else {
            values << (column.kind == CellKind::YesNo ? QVariant(int(cell.toBool()))
                    : column.kind == CellKind::Text   ? sqlText(cell.toString())
                                                      : cell);
        }
    }
    if (permissionsAt >= 0)
        values[permissionsAt] = permissions.bits();
    return values;
}

Result<QString> keysOf(Database& database, const QString& table)
{
    QStringList keys;
    const auto read = database.each(
        QStringLiteral("SELECT name FROM pragma_table_info('%1') WHERE pk > 0 ORDER BY pk")
            .arg(table),
        [&](const QSqlQuery& row) -> Result<> {
            keys << row.value(0).toString();
            return Done{};
        });
    if (!read)
        return read.error();
    return keys.join(QStringLiteral(", "));
}

QString causeOf(const Error& error)
{
    if (error.detail.contains(QLatin1String("UNIQUE")))
        return QStringLiteral("its number stands there twice");
    if (error.detail.contains(QLatin1String("CHECK")))
        return QStringLiteral("a value is out of range");
    return error.detail;
}

Result<> writeTable(Database& database, const DataTable& table, const DataSource& source)
{
    const QStringList columns = stored(table);
    const QString insert =
        QStringLiteral("INSERT INTO %1 (%2) VALUES (%3)")
            .arg(table.name,
                columns.join(QStringLiteral(", ")),
                QStringList(columns.size(), QStringLiteral("?")).join(QStringLiteral(", ")));
    for (const DataRow& row : table.rows) {
        const auto written = database.run(insert, valuesFor(row, table));
        if (!written && written.error().code == ErrorCode::CannotWrite)
            return written;
        if (!written)
            return source.wrong(table, row.number, causeOf(written.error()));
    }
    return Done{};
}

// Rows were put into empty tables one by one, so the n-th has the row number n.
Result<> checkReferences(
    Database& database, const std::vector<DataTable>& tables, const DataSource& source)
{
    return database.each(
        QStringLiteral("PRAGMA foreign_key_check"), [&](const QSqlQuery& found) -> Result<> {
            const QString name = found.value(0).toString();
            const auto row = std::size_t(found.value(1).toLongLong());
            for (const DataTable& table : tables) {
                if (table.name == name && row >= 1 && row <= table.rows.size()) {
                    return source.wrong(table,
                        table.rows[row - 1].number,
                        QStringLiteral("it names a row of %1 that is not there")
                            .arg(found.value(2).toString()));
                }
            }
            return Error{ErrorCode::Damaged, source.file, name};
        });
}

} // namespace

Result<std::vector<DataTable>> dataTables(Database& database)
{
    std::vector<DataTable> tables;
    auto read = database.each(
        QStringLiteral("SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE "
                       "'sqlite%' ORDER BY rowid"),
        [&](const QSqlQuery& row) -> Result<> {
            tables.push_back({row.value(0).toString(), {}, {}});
            return Done{};
        });
    for (DataTable& table : tables) {
        if (!read)
            break;
        read = database.each(
            QStringLiteral("SELECT name, type, \"notnull\", pk FROM pragma_table_info('%1')")
                .arg(table.name),
            [&](const QSqlQuery& row) -> Result<> {
                const bool needed = row.value(2).toInt() != 0 || row.value(3).toInt() != 0;
                addColumn(table, row.value(0).toString(), row.value(1).toString(), !needed);
                return Done{};
            });
    }
    if (!read)
        return read.error();
    return tables;
}

Result<> readData(Database& database, std::vector<DataTable>& tables)
{
    for (DataTable& table : tables) {
        const auto keys = keysOf(database, table.name);
        if (!keys)
            return keys.error();
        const QString sql = QStringLiteral("SELECT %1 FROM %2 ORDER BY %3")
                                .arg(stored(table).join(QStringLiteral(", ")), table.name, *keys);
        const auto read = database.each(sql, [&](const QSqlQuery& row) -> Result<> {
            table.rows.push_back({int(table.rows.size()) + 1, cellsFrom(row, table)});
            return Done{};
        });
        if (!read)
            return read;
    }
    return Done{};
}

Error DataSource::wrong(const DataTable& table, int row, const QString& cause) const
{
    if (file.isEmpty()) {
        return Error{ErrorCode::Damaged,
            table.name + QStringLiteral(".csv"),
            QStringLiteral("row %1: %2").arg(row).arg(cause)};
    }
    return Error{ErrorCode::Damaged,
        file,
        QStringLiteral("row %1 of %2: %3").arg(row).arg(table.name, cause)};
}

Result<> writeData(
    Database& database, const std::vector<DataTable>& tables, const DataSource& source)
{
    auto done = database.run(QStringLiteral("PRAGMA defer_foreign_keys = ON"));
    for (const DataTable& table : tables) {
        if (done)
            done = database.run(QStringLiteral("DELETE FROM %1").arg(table.name));
    }
    for (const DataTable& table : tables) {
        if (done)
            done = writeTable(database, table, source);
    }
    return done ? checkReferences(database, tables, source) : done;
}

} // namespace wainscot
