// Tables of data as the text of a file. Private to core/store.
#pragma once

#include "core/model/experience.h"
#include "core/store/data_table.h"

#include <QByteArray>
#include <QLatin1String>

namespace wainscot {

inline constexpr QLatin1String kDataFormat("wainscot data");

// The version of the tables, which tells what they hold.
struct DataHead {
    int version = 0;
};

// "pictures/SHA-256.jpg"; a format that is not known gives no ending.
[[nodiscard]] QString dataPictureName(const Picture& picture);

// One object: "format", "version", and under "tables" a list of objects for each table, one row to
// a line. The same tables make the same bytes.
[[nodiscard]] QByteArray dataToJson(const std::vector<DataTable>& tables, DataHead head);

// The version alone, so that the tables it had can be made. Damaged, TooNew.
Result<DataHead> headOfJson(const QByteArray& json, int newest);

// Fills tables that have no rows. Damaged names row, table and cause, for anything unknown,
// missing or of another kind too.
Result<> dataFromJson(const QByteArray& json, std::vector<DataTable>& tables);

// One table as CSV (RFC 4180, UTF-8). A text that a spreadsheet could take for a formula gets an
// apostrophe before it, and so does one that begins with an apostrophe: reading takes it off.
[[nodiscard]] QByteArray dataToCsv(const DataTable& table, bool byteOrderMark);

// Fills a table that has no rows. Damaged names row and cause.
Result<> dataFromCsv(const QByteArray& bytes, DataTable& table);

// The version beside the tables.
inline constexpr QLatin1String kVersionFile("version.csv");
[[nodiscard]] DataTable versionTable(DataHead head);
Result<DataHead> headOfCsv(const QByteArray& csv, int newest);

} // namespace wainscot
