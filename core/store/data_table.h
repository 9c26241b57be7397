// The tables of a book as values without types of ours. They are asked of the database itself, so
// a column that is stored cannot be forgotten. Private to core/store.
#pragma once

#include "core/base/result.h"

#include <QString>
#include <QVariant>

#include <vector>

namespace wainscot {

class Database;

enum class CellKind {
    Text, // QString
    Number, // qlonglong
    Real, // double
    YesNo, // bool
    Audiences, // QStringList: for whom one permission is given
};

struct DataColumn {
    QString name;
    CellKind kind = CellKind::Text;
    bool mayBeMissing = false; // a null QVariant
};

struct DataRow {
    int number = 0; // as the file counts it, for messages
    std::vector<QVariant> cells; // one for each column
};

struct DataTable {
    QString name;
    std::vector<DataColumn> columns;
    std::vector<DataRow> rows;
};

// The tables in the order they were made, owners before what they own; without rows.
Result<std::vector<DataTable>> dataTables(Database& database);

// Fills the tables, each in the order of its keys.
Result<> readData(Database& database, std::vector<DataTable>& tables);

// Where the tables came from: names the file of each and its rows.
struct DataSource {
    QString file; // "data.json", or of CSV "" for TABLE.csv
    [[nodiscard]] Error wrong(const DataTable& table, int row, const QString& cause) const;
};

// Writes the rows over whatever the tables hold. REQUIRES: inside a transaction. Damaged names
// file, row and cause: a number twice, a value out of range, something pointed at that is not
// there.
Result<> writeData(
    Database& database, const std::vector<DataTable>& tables, const DataSource& source);

} // namespace wainscot
