// Tables in text files: one header row, any column order, any common separator and encoding.
#pragma once

#include "core/base/result.h"

#include <QByteArray>
#include <QMap>
#include <QString>
#include <QStringList>

#include <vector>

namespace wainscot {

// A column's name as it is looked up: lower case, spaces inside it as "_" ("Shown as" =
// "shown_as").
[[nodiscard]] QString csvColumn(const QString& header);

struct CsvRow {
    int row = 0; // as a spreadsheet counts: the header is row 1
    int line = 0; // 1-based line of the file on which the row starts
    QMap<QString, QString> cells; // by column; a quoted cell keeps its inner line breaks as "\n"

    // Without outer spaces; empty for a blank cell and for a column the table does not have.
    [[nodiscard]] QString cell(const QString& column) const
    {
        return cells.value(csvColumn(column)).trimmed();
    }
};

// A row that could not be read, and why, as one sentence with file, row and cause.
struct CsvFault {
    int row = 0;
    int line = 0;
    QString why;
};

struct CsvTable {
    QString file; // without its folder
    QStringList columns; // in the order of the file; columns without a name are left out
    std::vector<CsvRow> rows; // blank ones left out
    std::vector<CsvFault> faults; // ragged rows; they are not among `rows`

    [[nodiscard]] bool has(const QString& column) const
    {
        return columns.contains(csvColumn(column));
    }
};

enum class CsvBreaks {
    AsOne, // every kind of line break in a cell is read as "\n"
    AsWritten, // a quoted cell keeps its own
};

// Comma, semicolon or tab, whichever the header row uses most; UTF-8 with or without a byte order
// mark, UTF-16 with one, else Windows-1252. Cells may be quoted with ", a doubled "" is one.
// Empty cells beyond the header are ignored, others make the row ragged, and so do missing ones.
// NotFound, CannotRead or Refused (over 64 MB) for the file; Damaged for what is no table: empty,
// not text, a column twice, a quotation that never ends.
Result<CsvTable> readCsv(const QString& path);
Result<CsvTable> parseCsv(
    const QByteArray& bytes, const QString& fileName, CsvBreaks breaks = CsvBreaks::AsOne);

} // namespace wainscot
