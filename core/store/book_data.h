// A book as tables of plain text that any program reads, and back: no lock-in. What the columns
// mean is told by data_format.txt, which goes along with every folder made.
#pragma once

#include "core/base/result.h"

#include <QString>
#include <QStringList>

#include <functional>

namespace wainscot {

class BookStore;

enum class DataForm {
    Json, // data.json
    Csv, // csv/TABLE.csv
};

struct DataOut {
    bool json = true;
    bool csv = true;
    // Spreadsheets on many computers take a CSV file for UTF-8 only with a byte order mark.
    bool byteOrderMark = true;
};

struct DataReport {
    int rows = 0;
    int pictures = 0;
    QStringList problems; // pictures that are missing or not what they were, one sentence each
};

// Told (done, of) in pictures; answering false stops (Cancelled).
using DataProgress = std::function<bool(int, int)>;

// Writes everything the book holds, whatever families allow: tables as JSON, as CSV or both, and
// `pictures/SHA-256.jpg`. The folder must not exist or be empty (WrongUse); it appears whole or
// not at all. CannotRead, CannotWrite, Cancelled.
Result<DataReport> takeDataOut(BookStore& store,
    const QString& folder,
    const DataOut& what = {},
    const DataProgress& progress = {});

// Makes a book of what takeDataOut wrote, also of an earlier version. The new folder must not
// exist or be empty (WrongUse). Damaged names file, row and cause; NotFound a file that is missing;
// TooNew, CannotRead, CannotWrite, Refused (a file over 512 MB), Cancelled. A failure leaves no
// book behind.
Result<DataReport> bringDataIn(const QString& folder,
    const QString& newFolder,
    DataForm form,
    const DataProgress& progress = {});

// What the tables and columns mean, for people: the text of data_format.txt.
[[nodiscard]] QString dataFormat();

} // namespace wainscot
