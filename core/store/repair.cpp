#include "core/store/repair.h"

#include "core/model/tables.h"
#include "core/store/book_store.h"
#include "core/store/database.h"
#include "core/store/earlier_states.h"
#include "core/store/made_file_rows.h"
#include "core/store/originals.h"
#include "core/store/rows.h"
#include "core/store/salvage.h"
#include "core/store/schema.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QSet>
#include <QTemporaryDir>

namespace wainscot {

namespace {

const QString kFileName = QStringLiteral("/book.wainscot");

class Repair {
public:
    Repair(QString folder, QString newFolder, const std::function<bool(int, int)>& progress)
        : m_folder(std::move(folder))
        , m_newFolder(std::move(newFolder))
        , m_progress(progress)
        , m_originals(m_folder + QStringLiteral("/pictures"))
    {
    }

    Result<RepairReport> run()
    {
        if (auto read = readDatabase(); !read)
            return read.error();
        fillFromEarlierState();
        if (m_isUnreadable && !m_isFilled && m_originals.all().isEmpty())
            return Error{ErrorCode::CannotRead,
                m_folder,
                QStringLiteral("neither the book, nor an earlier day of it, nor a picture")};
        if (m_saved.book.info.title.isEmpty())
            m_saved.book.info.title = QStringLiteral("Repaired book");
        auto store = BookStore::create(m_newFolder, m_saved.book.info);
        if (!store)
            return store.error();
        auto written = write(**store);
        if (!written) {
            store->reset();
            QDir(m_newFolder).removeRecursively(); // it was empty before
            return written.error();
        }
        const Book& book = store->get()->book();
        return RepairReport{int(book.children.size()),
            int(book.quotes.size()),
            int(book.pictures.size()),
            int(book.panels.size()),
            m_saved.problems};
    }

private:
    // A copy is read, so that nothing touches the damaged file, not even what SQLite takes back.
    Result<> readDatabase()
    {
        const QTemporaryDir place;
        const QString copy = place.path() + kFileName;
        if (!place.isValid())
            return Error{ErrorCode::CannotWrite, place.path(), {}};
        QString why = QStringLiteral("it is missing");
        if (QFile::copy(m_folder + kFileName, copy)) {
            const QString journal = QStringLiteral("-journal");
            QFile::copy(m_folder + kFileName + journal, copy + journal);
            for (const QString& file : {copy, copy + journal})
                QFile::setPermissions(file, QFile::ReadOwner | QFile::WriteOwner);
            const auto read = readCopy(copy);
            if (read || read.error().code == ErrorCode::TooNew)
                return read;
            why = read.error().detail;
        }
        m_isUnreadable = true;
        m_saved = {};
        m_saved.problems << QStringLiteral("The book's own file cannot be read: %1.").arg(why);
        forEachTable(m_saved.book, [&](auto& table) {
            using T = typename std::decay_t<decltype(table)>::ValueType;
            m_saved.broken.insert(
                QString::fromLatin1(formOf(static_cast<const T*>(nullptr)).table));
        });
        return Done{};
    }

    Result<> readCopy(const QString& copy)
    {
        auto database = Database::open(copy, Database::Mode::ReadWrite);
        if (!database)
            return database.error();
        const auto version = schemaVersionOf(**database, m_folder + kFileName);
        if (!version)
            return version.error();
        if (*version < currentSchemaVersion()) {
            const auto migrated =
                (*database)->inTransaction([&] { return migrate(**database, *version); });
            if (!migrated)
                return migrated;
        }
        m_saved = salvage(**database);
        if (auto made = readMadeFiles(**database))
            m_madeFiles = std::move(*made);
        else
            m_saved.problems << QStringLiteral("Which files were made of the book is lost.");
        if (auto day = readKeptUntil(**database))
            m_keptUntil = *day;
        return Done{};
    }

    void fillFromEarlierState()
    {
        if (m_saved.broken.empty())
            return;
        const EarlierStates earlier(m_folder);
        for (const EarlierState& state : earlier.all()) {
            const auto book = earlier.read(state.name);
            if (!book)
                continue;
            fillFrom(*book, state.at.toString(QStringLiteral("yyyy-MM-dd")), m_saved);
            m_isFilled = true;
            return;
        }
    }

    Result<> write(BookStore& store)
    {
        if (auto kept = keepPictures(store); !kept)
            return kept;
        if (auto kept = keepUnmentioned(store); !kept)
            return kept;
        mendReferences(m_saved);
        EditBuilder edit(store.book(), QStringLiteral("Repair"));
        forEachTable(m_saved.book, [&](auto& table) {
            for (const auto& [id, value] : table.rows())
                edit.put(value);
        });
        if (auto done = store.history().perform(edit.take()); !done)
            return done;
        for (const MadeFile& made : m_madeFiles) {
            if (auto done = rememberMadeFile(m_newFolder, made); !done)
                return done;
        }
        return m_keptUntil ? keepUntil(m_newFolder, m_keptUntil) : Done{};
    }

    Result<> keepPictures(BookStore& store)
    {
        const Table<Picture> pictures = m_saved.book.pictures;
        int done = 0;
        for (auto [id, picture] : pictures.rows()) {
            if (m_progress && !m_progress(done++, int(pictures.size())))
                return Error{ErrorCode::Cancelled, m_newFolder, {}};
            m_mentioned.insert(picture.sha256);
            const auto kept = store.keepOriginal(m_originals.pathOf(picture.sha256));
            if (kept && *kept == picture.sha256)
                continue;
            if (!kept && kept.error().code == ErrorCode::CannotWrite)
                return kept.error();
            if (kept) {
                m_saved.problems << QStringLiteral("%1 has changed since it was gathered; it is "
                                                   "kept as it is now.")
                                        .arg(picture.fileName);
                picture.sha256 = *kept;
                picture.people.lookedAt = false; // who can tell what it shows
                m_saved.book.pictures.put(picture);
            } else {
                m_saved.problems << QStringLiteral("%1 is lost.").arg(picture.fileName);
                m_saved.book.pictures.remove(id);
            }
        }
        return Done{};
    }

    // Where rows of pictures are lost, their originals may still be there.
    Result<> keepUnmentioned(BookStore& store)
    {
        if (m_saved.broken.count(QStringLiteral("pictures")) == 0)
            return Done{};
        int kept = 0;
        for (const QString& name : m_originals.all()) {
            if (m_mentioned.contains(name))
                continue;
            const auto one = store.keepOriginal(m_originals.pathOf(name));
            if (!one && one.error().code == ErrorCode::CannotWrite)
                return one.error();
            kept += one ? 1 : 0;
        }
        if (kept > 0)
            m_saved.problems << QStringLiteral("%1 pictures are kept of which nothing else is "
                                               "known; gather them from %2.")
                                    .arg(kept)
                                    .arg(store.picturesFolder());
        return Done{};
    }

    QString m_folder;
    QString m_newFolder;
    const std::function<bool(int, int)>& m_progress;
    Originals m_originals; // of the damaged book
    Salvaged m_saved;
    std::vector<MadeFile> m_madeFiles;
    std::optional<QDate> m_keptUntil;
    QSet<QString> m_mentioned;
    bool m_isUnreadable = false;
    bool m_isFilled = false;
};

} // namespace

Result<RepairReport> repairBook(
    const QString& path, const QString& newFolder, const std::function<bool(int, int)>& progress)
{
    const QFileInfo given(path);
    if (!given.exists())
        return Error{ErrorCode::NotFound, path, {}};
    const QString folder = given.isDir() ? QDir(path).absolutePath() : given.absolutePath();
    const bool isBook = QFileInfo::exists(folder + kFileName)
        || QFileInfo::exists(folder + QStringLiteral("/pictures"));
    if (!isBook)
        return Error{ErrorCode::NotFound, folder + kFileName, {}};
    return Repair(folder, QDir(newFolder).absolutePath(), progress).run();
}

} // namespace wainscot
