#include "core/store/book_store.h"

#include "core/store/book_reader.h"
#include "core/store/book_store_open.h"
#include "core/store/database.h"
#include "core/store/edit_writer.h"
#include "core/store/schema.h"
#include "core/store/verify.h"

#include <QDir>
#include <QFileInfo>
#include <QLockFile>
#include <QThread>

namespace wainscot {

namespace {

constexpr int kMomentMs = 250; // who reads may hold the lock, to take back what was left half done
constexpr int kSittingSecs = 3600; // opened again within it, a book's state is as good as kept

const QLatin1String kFileName("book.wainscot");
const QLatin1String kPictures("pictures");
const QLatin1String kLock("book.wainscot.lock");

QString inside(const QString& folder, QLatin1String name)
{
    return folder + QLatin1Char('/') + name;
}

// A program that died, or met a full disk, between making its lock and writing its name into it
// left one that is nobody's; one that lives writes it at once.
bool isNobodys(const QLockFile& lock)
{
    qint64 process = 0;
    QString host;
    QString program;
    if (lock.getLockInfo(&process, &host, &program))
        return false;
    QThread::msleep(200);
    return !lock.getLockInfo(&process, &host, &program);
}

// One writer. A lock left by a program that died is taken over, never one that is merely old.
Result<std::unique_ptr<QLockFile>> lockFolder(const QString& folder)
{
    auto lock = std::make_unique<QLockFile>(inside(folder, kLock));
    lock->setStaleLockTime(0);
    if (lock->tryLock(kMomentMs))
        return lock;
    if (lock->error() == QLockFile::LockFailedError && isNobodys(*lock)) {
        lock->removeStaleLockFile();
        if (lock->tryLock(0))
            return lock;
    }
    if (lock->error() == QLockFile::LockFailedError)
        return Error{ErrorCode::InUse, folder, {}};
    return Error{ErrorCode::CannotWrite, folder, QStringLiteral("the folder is read-only")};
}

// Bytes changed by accident show up here before anything is read from them.
Result<> quickCheck(Database& database, const QString& path)
{
    const auto answer = database.one(QStringLiteral("PRAGMA quick_check(1)"));
    if (!answer)
        return answer.error();
    if (answer->toString() != QLatin1String("ok"))
        return Error{ErrorCode::Damaged, path, answer->toString()};
    return Done{};
}

} // namespace

BookStore::BookStore(std::unique_ptr<Open> open)
    : m_open(std::move(open))
{
    m_open->history.emplace(m_open->book, *this);
}

BookStore::~BookStore() = default;

Result<std::unique_ptr<BookStore>> BookStore::create(const QString& folder, const BookInfo& info)
{
    const QString where = QDir(folder).absolutePath();
    const bool existed = QFileInfo::exists(where);
    if (existed
        && (!QFileInfo(where).isDir()
            || !QDir(where).isEmpty(QDir::AllEntries | QDir::Hidden | QDir::NoDotAndDotDot)))
        return Error{
            ErrorCode::WrongUse, where, QStringLiteral("a new book needs an empty folder")};
    if (!QDir().mkpath(inside(where, kPictures)))
        return Error{ErrorCode::CannotWrite, where, {}};
    auto made = makeIn(where, info);
    // What another program is making in the same folder at this moment is not ours to remove.
    if (!made && made.error().code != ErrorCode::InUse) {
        QDir(inside(where, kPictures)).removeRecursively();
        QFile::remove(inside(where, kFileName));
        if (!existed)
            QDir().rmdir(where);
    }
    return made;
}

BookStore::Opened BookStore::makeIn(const QString& folder, const BookInfo& info)
{
    auto lock = lockFolder(folder);
    if (!lock)
        return lock.error();
    auto database = Database::open(inside(folder, kFileName), Database::Mode::Create);
    if (!database)
        return database.error();
    auto open = std::make_unique<Open>(folder, std::move(*lock), std::move(*database));
    EditBuilder first(open->book, {});
    PromptSet prompts = defaultPromptSet(info.language);
    prompts.id = first.newId<PromptSet>();
    first.put(prompts);
    const Edit edit = first.take();
    const auto written = open->database->inTransaction([&]() -> Result<> {
        if (auto migrated = migrate(*open->database, 0); !migrated)
            return migrated;
        if (auto named = writeInfo(*open->database, info); !named)
            return named;
        return writeEdit(*open->database, edit, EditSide::After);
    });
    if (!written)
        return written.error();
    open->book.info = info;
    apply(edit, open->book);
    return std::unique_ptr<BookStore>(new BookStore(std::move(open)));
}

Result<std::unique_ptr<BookStore>> BookStore::open(const QString& path, Access access)
{
    const QFileInfo given(path);
    const QString folder = given.isDir() ? QDir(path).absolutePath() : given.absolutePath();
    const QString file = given.isDir() ? inside(folder, kFileName) : given.absoluteFilePath();
    if (!QFileInfo(file).isFile())
        return Error{ErrorCode::NotFound, file, {}};
    if (QFileInfo(file).size() == 0)
        return Error{ErrorCode::Damaged, file, QStringLiteral("the file is empty")};
    return access == Access::ReadWrite ? openForWriting(folder, file)
                                       : openForReading(folder, file);
}

BookStore::Opened BookStore::openForWriting(const QString& folder, const QString& file)
{
    if (!QFileInfo(file).isWritable() || !QFileInfo(folder).isWritable())
        return Error{ErrorCode::CannotWrite, folder, QStringLiteral("the folder is read-only")};
    auto lock = lockFolder(folder);
    if (!lock)
        return lock.error();
    auto database = Database::open(file, Database::Mode::ReadWrite);
    if (!database)
        return database.error();
    auto open = std::make_unique<Open>(folder, std::move(*lock), std::move(*database));
    const auto version = schemaVersionOf(*open->database, file);
    if (!version)
        return version.error();
    if (*version < currentSchemaVersion()) {
        (void)open->earlier.keep(*open->database, QDateTime::currentDateTime());
        const auto migrated =
            open->database->inTransaction([&] { return migrate(*open->database, *version); });
        if (!migrated)
            return migrated.error();
    }
    open->originals.removeHalfWritten();
    open->earlier.removeHalfWritten();
    auto store = loaded(std::move(open), file);
    // What cannot be finished now (a full disk) is tried again the next time.
    if (store)
        (void)(*store)->finishErasing();
    return store;
}

BookStore::Opened BookStore::openForReading(const QString& folder, const QString& file)
{
    // What a program that died left half done is taken back before reading; that takes a writer.
    if (QFileInfo::exists(file + QStringLiteral("-journal"))) {
        if (auto repaired = openForWriting(folder, file);
            !repaired && repaired.error().code != ErrorCode::InUse)
            return repaired.error();
    }
    auto database = Database::open(file, Database::Mode::ReadOnly);
    if (!database)
        return database.error();
    auto open = std::make_unique<Open>(folder, nullptr, std::move(*database));
    const auto version = schemaVersionOf(*open->database, file);
    if (!version)
        return version.error();
    if (*version < currentSchemaVersion()) {
        return Error{ErrorCode::CannotRead,
            file,
            QStringLiteral("an earlier version made it; open it once for writing")};
    }
    return loaded(std::move(open), file);
}

BookStore::Opened BookStore::loaded(std::unique_ptr<Open> open, const QString& file)
{
    if (auto checked = quickCheck(*open->database, file); !checked)
        return checked.error();
    auto book = readBook(*open->database, file);
    if (!book)
        return book.error();
    open->book = std::move(*book);
    return std::unique_ptr<BookStore>(new BookStore(std::move(open)));
}

const Book& BookStore::book() const
{
    return m_open->book;
}

History& BookStore::history()
{
    return *m_open->history;
}

bool BookStore::isReadOnly() const
{
    return !m_open->lock;
}

QString BookStore::folder() const
{
    return m_open->folder;
}

QString BookStore::picturesFolder() const
{
    return m_open->originals.folder();
}

Result<QString> BookStore::keepOriginal(const QString& filePath)
{
    if (isReadOnly())
        return Error{ErrorCode::CannotWrite, folder(), QStringLiteral("it was opened for reading")};
    return m_open->originals.keep(filePath);
}

QString BookStore::originalPath(const QString& sha256) const
{
    return m_open->originals.pathOf(sha256);
}

Result<VerifyReport> BookStore::verify(const std::function<bool(int, int)>& progress)
{
    return verifyBook(*m_open->database, m_open->book, m_open->originals, progress);
}

QList<EarlierState> BookStore::earlierStates() const
{
    return m_open->earlier.all();
}

Result<Book> BookStore::earlierState(const QString& name) const
{
    return m_open->earlier.read(name);
}

void BookStore::keepEarlierState()
{
    const QDateTime now = QDateTime::currentDateTime();
    const bool bare = book().children.isEmpty() && book().experiences.isEmpty();
    if (bare || m_open->earlierKeptOn == now.date())
        return;
    m_open->earlierKeptOn = now.date();
    if (!m_open->earlier.hasOneOf(now, now.addSecs(-kSittingSecs)))
        (void)m_open->earlier.keep(*m_open->database, now);
}

Result<> BookStore::copyDatabaseTo(const QString& file)
{
    return m_open->database->run(QStringLiteral("VACUUM INTO ?"), {file});
}

Result<> BookStore::limitSize(qint64 bytes)
{
    const auto pageSize = m_open->database->one(QStringLiteral("PRAGMA page_size"));
    if (!pageSize)
        return pageSize.error();
    // SQLite never sets the limit below the present size.
    const qint64 pages = std::max<qint64>(1, bytes / pageSize->toLongLong());
    const auto set = m_open->database->one(QStringLiteral("PRAGMA max_page_count = %1").arg(pages));
    if (!set)
        return set.error();
    return Done{};
}

Result<> BookStore::save(const Edit& edit)
{
    return write(edit, EditSide::After);
}

Result<> BookStore::saveReverted(const Edit& edit)
{
    return write(edit, EditSide::Before);
}

Result<> BookStore::write(const Edit& edit, EditSide side)
{
    if (isReadOnly())
        return Error{ErrorCode::CannotWrite, folder(), QStringLiteral("it was opened for reading")};
    keepEarlierState();
    return m_open->database->inTransaction(
        [&] { return writeEdit(*m_open->database, edit, side); });
}

} // namespace wainscot
