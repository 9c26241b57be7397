// A folder of data out of a book.
#include "core/base/commit_file.h"
#include "core/store/book_data.h"
#include "core/store/book_store.h"
#include "core/store/data_text.h"
#include "core/store/database.h"
#include "core/store/disk.h"
#include "core/store/folder_beside.h"
#include "core/store/originals.h"
#include "core/store/schema.h"

#include <QDir>
#include <QFile>
#include <QSaveFile>

#include <map>

namespace wainscot {

namespace {

Result<> writeWhole(const QString& path, const QByteArray& bytes)
{
    QSaveFile file(path);
    const bool written =
        file.open(QIODevice::WriteOnly) && file.write(bytes) == bytes.size() && commitWhole(file);
    if (!written)
        return Error{ErrorCode::CannotWrite, path, file.errorString()};
    return Done{};
}

class Taking {
public:
    Taking(BookStore& store, const QString& folder, DataOut what, const DataProgress& progress)
        : m_store(store)
        , m_what(what)
        , m_progress(progress)
        , m_beside(folder, QStringLiteral("writing"))
    {
    }

    Result<DataReport> take()
    {
        if (auto free = m_beside.isFree(); !free)
            return free.error();
        for (auto step :
            {&Taking::readTables, &Taking::writeTables, &Taking::copyPictures, &Taking::show}) {
            if (auto done = (this->*step)(); !done)
                return done.error();
        }
        return m_report;
    }

private:
    // A copy is read, so that all of it is the book at one moment.
    Result<> readTables()
    {
        const QString copy = m_beside.filePath(QStringLiteral("copy"));
        if (auto copied = m_store.copyDatabaseTo(copy); !copied)
            return copied;
        auto read = readCopy(copy);
        if (read && !QFile::remove(copy))
            return Error{ErrorCode::CannotWrite, copy, {}};
        for (const DataTable& table : m_tables)
            m_report.rows += int(table.rows.size());
        return read;
    }

    Result<> readCopy(const QString& copy)
    {
        const auto database = Database::open(copy, Database::Mode::ReadOnly);
        if (!database)
            return database.error();
        auto tables = dataTables(**database);
        if (!tables)
            return tables.error();
        m_tables = std::move(*tables);
        return readData(**database, m_tables);
    }

    [[nodiscard]] QString at(const QString& name) const { return m_beside.filePath(name); }

    Result<> writeTables()
    {
        const DataHead head{currentSchemaVersion()};
        auto written = writeWhole(at(QStringLiteral("format.txt")), dataFormat().toUtf8());
        if (written && m_what.json)
            written = writeWhole(at(QStringLiteral("data.json")), dataToJson(m_tables, head));
        if (!written || !m_what.csv)
            return written;
        const QString csv = QStringLiteral("csv/");
        if (!QDir(m_beside.path()).mkdir(QStringLiteral("csv")))
            return Error{ErrorCode::CannotWrite, at(csv), {}};
        for (const DataTable& table : m_tables) {
            if (written)
                written = writeWhole(at(csv + table.name + QStringLiteral(".csv")),
                    dataToCsv(table, m_what.byteOrderMark));
        }
        if (!written)
            return written;
        return writeWhole(at(csv + kVersionFile), dataToCsv(versionTable(head), false));
    }

    Result<> copyPictures()
    {
        if (!QDir(m_beside.path()).mkdir(QStringLiteral("pictures")))
            return Error{ErrorCode::CannotWrite, at(QStringLiteral("pictures")), {}};
        std::map<QString, QString> names; // a file may be shown by several pictures
        for (const auto& [id, picture] : m_store.book().pictures.rows())
            names.try_emplace(picture.sha256, dataPictureName(picture));
        int done = 0;
        for (const auto& [sha256, name] : names) {
            if (m_progress && !m_progress(done++, int(names.size())))
                return Error{ErrorCode::Cancelled, {}, {}};
            if (auto copied = copyPicture(sha256, at(name)); !copied)
                return copied;
        }
        return Done{};
    }

    Result<> copyPicture(const QString& sha256, const QString& to)
    {
        const QString from = m_store.originalPath(sha256);
        const auto content = Originals::sha256Of(from);
        if (!content || *content != sha256) {
            m_report.problems << QStringLiteral("The picture %1 is missing or not what it was.")
                                     .arg(sha256.left(12));
            return Done{};
        }
        if (!QFile::copy(from, to) || !syncFile(to))
            return Error{ErrorCode::CannotWrite, to, {}};
        QFile::setPermissions(to, QFile::ReadOwner | QFile::WriteOwner);
        ++m_report.pictures;
        return Done{};
    }

    Result<> show() { return m_beside.moveIntoPlace(); }

    BookStore& m_store;
    DataOut m_what;
    const DataProgress& m_progress;
    FolderBeside m_beside;
    std::vector<DataTable> m_tables;
    DataReport m_report;
};

} // namespace

Result<DataReport> takeDataOut(
    BookStore& store, const QString& folder, const DataOut& what, const DataProgress& progress)
{
    return Taking(store, folder, what, progress).take();
}

} // namespace wainscot
