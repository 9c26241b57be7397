// A book out of a folder of data. Everything in the folder may be wrong or meant badly.
#include "core/store/book_data.h"
#include "core/store/book_reader.h"
#include "core/store/data_text.h"
#include "core/store/database.h"
#include "core/store/folder_beside.h"
#include "core/store/originals.h"
#include "core/store/schema.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QRegularExpression>

#include <set>

namespace wainscot {

namespace {

constexpr qint64 kLargestFile = 512LL * 1024 * 1024;

Result<QByteArray> bytesOf(const QString& path)
{
    QFile file(path);
    if (!QFileInfo(path).isFile())
        return Error{ErrorCode::NotFound, path, {}};
    if (file.size() > kLargestFile)
        return Error{ErrorCode::Refused, path, QStringLiteral("it is larger than 512 MB")};
    if (!file.open(QIODevice::ReadOnly))
        return Error{ErrorCode::CannotRead, path, file.errorString()};
    QByteArray bytes = file.readAll();
    if (file.error() != QFileDevice::NoError)
        return Error{ErrorCode::CannotRead, path, file.errorString()};
    return bytes;
}

class Bringing {
public:
    Bringing(
        const QString& from, const QString& folder, DataForm form, const DataProgress& progress)
        : m_from(QDir(from).absolutePath())
        , m_isJson(form == DataForm::Json)
        , m_progress(progress)
        , m_beside(folder, QStringLiteral("writing"))
    {
    }

    Result<DataReport> bring()
    {
        if (auto free = m_beside.isFree(); !free)
            return free.error();
        if (!QFileInfo(m_from).isDir())
            return Error{ErrorCode::NotFound, m_from, {}};
        for (auto step : {&Bringing::readVersion,
                 &Bringing::makeDatabase,
                 &Bringing::keepPictures,
                 &Bringing::show}) {
            if (auto done = (this->*step)(); !done)
                return done.error();
        }
        return m_report;
    }

private:
    [[nodiscard]] QString csvFile(const QString& name) const
    {
        return m_from + QStringLiteral("/csv/") + name;
    }

    Result<> readVersion()
    {
        if (!m_isJson)
            return readCsvVersion();
        auto bytes = bytesOf(m_from + QStringLiteral("/data.json"));
        if (!bytes)
            return bytes.error();
        m_json = std::move(*bytes);
        const auto head = headOfJson(m_json, currentSchemaVersion());
        if (!head)
            return head.error();
        m_version = head->version;
        return Done{};
    }

    Result<> readCsvVersion()
    {
        const auto bytes = bytesOf(csvFile(kVersionFile));
        if (!bytes)
            return bytes.error();
        const auto head = headOfCsv(*bytes, currentSchemaVersion());
        if (!head)
            return head.error();
        m_version = head->version;
        return Done{};
    }

    // The tables as they were in that version, filled, then brought to the present one.
    Result<> makeDatabase()
    {
        const QString file = m_beside.filePath(QStringLiteral("book.wainscot"));
        const auto database = Database::open(file, Database::Mode::Create);
        if (!database)
            return database.error();
        const auto made = (*database)->inTransaction([&] { return fill(**database); });
        if (!made)
            return made;
        auto book = readBook(**database, m_from);
        if (!book)
            return book.error();
        m_book = std::move(*book);
        return Done{};
    }

    Result<> fill(Database& database)
    {
        if (auto made = migrate(database, 0, m_version); !made)
            return made;
        auto tables = dataTables(database);
        if (!tables)
            return tables.error();
        auto done = readTables(*tables);
        const DataSource source{m_isJson ? QStringLiteral("data.json") : QString()};
        if (done)
            done = writeData(database, *tables, source);
        if (!done)
            return done;
        for (const DataTable& table : *tables)
            m_report.rows += int(table.rows.size());
        return migrate(database, m_version, currentSchemaVersion());
    }

    Result<> readTables(std::vector<DataTable>& tables)
    {
        if (m_isJson)
            return dataFromJson(m_json, tables);
        for (DataTable& table : tables) {
            const auto bytes = bytesOf(csvFile(table.name + QStringLiteral(".csv")));
            if (!bytes)
                return bytes.error();
            if (auto read = dataFromCsv(*bytes, table); !read)
                return read;
        }
        return Done{};
    }

    Result<> keepPictures()
    {
        const QString pictures = m_beside.filePath(QStringLiteral("pictures"));
        if (!QDir().mkdir(pictures))
            return Error{ErrorCode::CannotWrite, pictures, {}};
        const Originals originals(pictures);
        std::set<QString> kept;
        int done = 0;
        for (const auto& [id, picture] : m_book.pictures.rows()) {
            if (m_progress && !m_progress(done++, int(m_book.pictures.size())))
                return Error{ErrorCode::Cancelled, {}, {}};
            if (!kept.insert(picture.sha256).second)
                continue;
            if (auto taken = keepPicture(originals, picture); !taken)
                return taken;
        }
        return Done{};
    }

    Result<> keepPicture(const Originals& originals, const Picture& picture)
    {
        static const QRegularExpression digits(QStringLiteral("\\A[0-9a-f]{64}\\z"));
        if (!digits.match(picture.sha256).hasMatch()) {
            return Error{ErrorCode::Damaged,
                m_from,
                QStringLiteral("picture %1 has no name of 64 hexadecimal digits")
                    .arg(picture.id.number())};
        }
        const QString name = dataPictureName(picture);
        const QString file = m_from + QLatin1Char('/') + name;
        const auto content = Originals::sha256Of(file);
        if (!content || *content != picture.sha256) {
            m_report.problems
                << QStringLiteral("%1 is missing or not what its name says.").arg(name);
            return Done{};
        }
        const auto kept = originals.keep(file);
        if (!kept)
            return kept.error();
        ++m_report.pictures;
        return Done{};
    }

    Result<> show() { return m_beside.moveIntoPlace(); }

    QString m_from;
    bool m_isJson;
    const DataProgress& m_progress;
    FolderBeside m_beside;
    QByteArray m_json;
    int m_version = 0;
    Book m_book;
    DataReport m_report;
};

} // namespace

Result<DataReport> bringDataIn(
    const QString& folder, const QString& newFolder, DataForm form, const DataProgress& progress)
{
    return Bringing(folder, newFolder, form, progress).bring();
}

} // namespace wainscot
