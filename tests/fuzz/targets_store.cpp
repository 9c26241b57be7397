// What the store reads: data, a book, a packed book. Files lie in memory where the system has such
// a place, and the folder of a book stays from run to run; what is opened is opened as ever.
#include "core/base/csv.h"
#include "core/store/book_reader.h"
#include "core/store/book_store.h"
#include "core/store/data_text.h"
#include "core/store/database.h"
#include "core/store/pack.h"
#include "core/store/schema.h"
#include "tests/fuzz/targets.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>

#include <algorithm>
#include <map>

namespace wainscot::fuzz {

namespace {

// A database of that version in memory.
std::unique_ptr<Database> databaseOf(int version)
{
    auto database = Database::open(QStringLiteral(":memory:"), Database::Mode::Create);
    must(database.ok(), "a database in memory");
    const auto made = (*database)->inTransaction([&] { return migrate(**database, 0, version); });
    must(made.ok(), "every version can be made");
    return std::move(*database);
}

// Without rows.
const std::vector<DataTable>& tablesOf(int version)
{
    static std::map<int, std::vector<DataTable>> known;
    auto at = known.find(version);
    if (at == known.end()) {
        auto tables = dataTables(*databaseOf(version));
        must(tables.ok(), "the tables of every version");
        at = known.emplace(version, std::move(*tables)).first;
    }
    return at->second;
}

const QString& bookFolder()
{
    static const QString folder = [] {
        const QString made = place() + QStringLiteral("/book");
        QDir().mkpath(made + QStringLiteral("/pictures"));
        return made;
    }();
    return folder;
}

void forgetBook()
{
    QFile::remove(bookFolder() + QStringLiteral("/book.wainscot-journal"));
    QDir earlier(bookFolder() + QStringLiteral("/earlier"));
    if (earlier.exists())
        earlier.removeRecursively();
}

QByteArray bytesOfBook()
{
    QFile file(bookFolder() + QStringLiteral("/book.wainscot"));
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

} // namespace

std::vector<QByteArray> broughtUp(const std::vector<QByteArray>& books)
{
    std::vector<QByteArray> present;
    for (const QByteArray& one : books) {
        put(bookFolder() + QStringLiteral("/book.wainscot"),
            reinterpret_cast<const std::uint8_t*>(one.constData()),
            std::size_t(one.size()));
        if (BookStore::open(bookFolder()))
            present.push_back(bytesOfBook());
        forgetBook();
    }
    return present;
}

QByteArray dataOf(const QByteArray& book)
{
    const QString file = place() + QStringLiteral("/data.wainscot");
    put(file, reinterpret_cast<const std::uint8_t*>(book.constData()), std::size_t(book.size()));
    const auto database = Database::open(file, Database::Mode::ReadOnly);
    must(database.ok(), "a book of the present version");
    auto tables = dataTables(**database);
    must(tables && readData(**database, *tables), "its tables");
    return dataToJson(*tables, {currentSchemaVersion()});
}

// As bringDataIn does it, but for the files: the database is in memory, and one of the present
// version is used again, for it is filled anew each time.
void data(const std::uint8_t* bytes, std::size_t count)
{
    const QByteArray json = view(bytes, count);
    const int newest = currentSchemaVersion();
    const auto head = headOfJson(json, newest);
    if (!head) {
        must(!head.error().detail.isEmpty() || head.error().code == ErrorCode::TooNew, "a reason");
        return;
    }
    std::vector<DataTable> tables = tablesOf(head->version);
    if (const auto read = dataFromJson(json, tables); !read) {
        must(!read.error().detail.isEmpty(), "a reason");
        return;
    }
    static const auto present = databaseOf(newest);
    const auto old = head->version == newest ? nullptr : databaseOf(head->version);
    Database& database = old ? *old : *present;
    const auto written = database.inTransaction([&]() -> Result<> {
        auto done = writeData(database, tables, {QStringLiteral("data.json")});
        return done ? migrate(database, head->version, newest) : done;
    });
    const auto book = written ? readBook(database, {}) : written.error();
    must(book.ok() || !book.error().detail.isEmpty(), "a book or a reason");
}

// A spreadsheet runs nothing of what is written, and reads back what was read.
void table(const std::uint8_t* bytes, std::size_t count)
{
    const QByteArray csv = view(bytes, count);
    for (const char* name : {"children", "quotes", "prompts"}) {
        const auto& all = tablesOf(currentSchemaVersion());
        DataTable table = *std::find_if(all.begin(), all.end(), [&](const DataTable& one) {
            return one.name == QLatin1String(name);
        });
        DataTable again = table;
        if (const auto read = dataFromCsv(csv, table); !read) {
            must(!read.error().detail.isEmpty(), "a reason");
            continue;
        }
        const QByteArray written = dataToCsv(table, true);
        must(dataFromCsv(written, again).ok(), "what was read can be written and read");
        must(dataToCsv(again, true) == written, "and is the same");
        const auto seen = parseCsv(written, QStringLiteral("seen.csv"));
        must(seen.ok() && seen->rows.size() == table.rows.size(), "as many rows");
        for (const CsvRow& row : seen->rows) {
            for (const DataColumn& column : table.columns) {
                const QString cell = row.cell(column.name);
                const bool isText = column.kind == CellKind::Text;
                must(!isText || cell.isEmpty() || !QStringLiteral("=+-@").contains(cell.front()),
                    "no text is a formula");
            }
        }
    }
}

void book(const std::uint8_t* bytes, std::size_t count)
{
    put(bookFolder() + QStringLiteral("/book.wainscot"), bytes, count);
    {
        const auto store = BookStore::open(bookFolder()); // for writing: older ones are brought up
        if (store) {
            const auto report = (*store)->verify();
            must(report.ok() || !report.error().detail.isEmpty(), "a report or a reason");
        }
    }
    forgetBook();
}

void pack(const std::uint8_t* bytes, std::size_t count)
{
    static const QString file = place() + QStringLiteral("/book.zip");
    static const QString folder = place() + QStringLiteral("/unpacked");
    put(file, bytes, count);
    const auto unpacked = unpackBook(file, folder);
    must(unpacked.ok() == QFileInfo::exists(folder), "a book or nothing");
    must(QDir(place()).entryList({QStringLiteral("unpacked.*")}).isEmpty(), "nothing left beside");
    must(!QFileInfo::exists(place() + QStringLiteral("/../evil")), "nothing outside");
    if (unpacked)
        QDir(folder).removeRecursively();
}

} // namespace wainscot::fuzz
