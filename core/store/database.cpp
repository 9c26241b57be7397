#include "core/store/database.h"

#include <QSqlError>
#include <QUuid>

namespace wainscot {

namespace {

// Primary result codes of SQLite (sqlite.org/rescode.html); the extended ones add high bits.
ErrorCode codeFrom(const QSqlError& error)
{
    switch (error.nativeErrorCode().toInt() & 0xff) {
    case 5: // SQLITE_BUSY
    case 6: // SQLITE_LOCKED
        return ErrorCode::InUse;
    case 8: // SQLITE_READONLY
    case 10: // SQLITE_IOERR
    case 13: // SQLITE_FULL
        return ErrorCode::CannotWrite;
    case 11: // SQLITE_CORRUPT
    case 26: // SQLITE_NOTADB
        return ErrorCode::Damaged;
    case 14: // SQLITE_CANTOPEN
        return ErrorCode::CannotRead;
    case 19: // SQLITE_CONSTRAINT
        return ErrorCode::WrongUse;
    default:
        return ErrorCode::Internal;
    }
}

Error errorFrom(const QSqlError& error, const QString& path)
{
    QString detail = error.databaseText().trimmed();
    return Error{codeFrom(error), path, detail.isEmpty() ? error.driverText() : detail};
}

} // namespace

Database::Database(QString path, QString connection)
    : m_path(std::move(path))
    , m_connection(std::move(connection))
    , m_db(QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), m_connection))
{
}

Database::~Database()
{
    qDeleteAll(m_prepared);
    m_db.close();
    m_db = QSqlDatabase();
    QSqlDatabase::removeDatabase(m_connection);
}

Result<std::unique_ptr<Database>> Database::open(const QString& path, Mode mode)
{
    const QString name = QUuid::createUuid().toString(QUuid::WithoutBraces);
    std::unique_ptr<Database> database(new Database(path, name));
    database->m_db.setDatabaseName(path);
    database->m_db.setConnectOptions(mode == Mode::ReadOnly
            ? QStringLiteral("QSQLITE_OPEN_READONLY;QSQLITE_BUSY_TIMEOUT=5000")
            : QStringLiteral("QSQLITE_BUSY_TIMEOUT=5000"));
    if (!database->m_db.open())
        return errorFrom(database->m_db.lastError(), path);
    if (auto set = database->setRules(mode); !set)
        return set.error();
    return database;
}

Result<> Database::setRules(Mode mode)
{
    // Others may have made the file: what SQLite advises for such (sqlite.org/security.html).
    for (const char* rule : {"PRAGMA foreign_keys = ON",
             "PRAGMA trusted_schema = OFF",
             "PRAGMA cell_size_check = ON"}) {
        if (auto set = run(QString::fromLatin1(rule)); !set)
            return set;
    }
    if (mode != Mode::ReadOnly) {
        if (auto journal = one(QStringLiteral("PRAGMA journal_mode = DELETE")); !journal)
            return journal.error();
        if (auto full = run(QStringLiteral("PRAGMA synchronous = FULL")); !full)
            return full;
        // What is deleted is overwritten: a child's words do not linger in free pages.
        if (auto secure = one(QStringLiteral("PRAGMA secure_delete = ON")); !secure)
            return secure.error();
        const auto synchronous = one(QStringLiteral("PRAGMA synchronous"));
        if (!synchronous || synchronous->toInt() != 2)
            return Error{ErrorCode::Internal, m_path, QStringLiteral("commits are not forced out")};
    }
    // SQLite ignores the switch when it was built without foreign keys.
    const auto keys = one(QStringLiteral("PRAGMA foreign_keys"));
    if (!keys || keys->toInt() != 1)
        return Error{ErrorCode::Internal, m_path, QStringLiteral("foreign keys are off")};
    return Done{};
}

Result<QSqlQuery*> Database::executed(const QString& sql, const QVariantList& values)
{
    QSqlQuery*& query = m_prepared[sql];
    if (!query) {
        query = new QSqlQuery(m_db);
        query->setForwardOnly(true);
        if (!query->prepare(sql)) {
            const Error error = errorFrom(query->lastError(), m_path);
            delete query;
            m_prepared.remove(sql);
            return error;
        }
    }
    for (qsizetype i = 0; i < values.size(); ++i)
        query->bindValue(static_cast<int>(i), values.at(i));
    if (!query->exec()) {
        const Error error = errorFrom(query->lastError(), m_path);
        query->finish();
        return error;
    }
    return query;
}

Result<> Database::run(const QString& sql, const QVariantList& values)
{
    const auto query = executed(sql, values);
    if (!query)
        return query.error();
    (*query)->finish();
    return Done{};
}

Result<> Database::each(const QString& sql, const TakeRow& take, const QVariantList& values)
{
    const auto executedQuery = executed(sql, values);
    if (!executedQuery)
        return executedQuery.error();
    QSqlQuery& query = **executedQuery;
    while (query.next()) {
        if (auto taken = take(query); !taken) {
            query.finish();
            return taken;
        }
    }
    const QSqlError error = query.lastError();
    query.finish();
    if (error.isValid())
        return errorFrom(error, m_path);
    return Done{};
}

Result<QVariant> Database::one(const QString& sql)
{
    QVariant answer;
    const auto read = each(sql, [&](const QSqlQuery& row) -> Result<> {
        if (!answer.isValid())
            answer = row.value(0);
        return Done{};
    });
    if (!read)
        return read.error();
    return answer;
}

Result<> Database::inTransaction(const std::function<Result<>()>& work)
{
    return transact(QStringLiteral("BEGIN IMMEDIATE"), work);
}

Result<> Database::inSnapshot(const std::function<Result<>()>& work)
{
    return transact(QStringLiteral("BEGIN"), work);
}

Result<> Database::transact(const QString& begin, const std::function<Result<>()>& work)
{
    if (auto begun = run(begin); !begun)
        return begun;
    auto done = work();
    if (done)
        done = run(QStringLiteral("COMMIT"));
    if (!done) {
        // After a full disk SQLite may have rolled back by itself; then this fails and is done.
        if (const auto undone = run(QStringLiteral("ROLLBACK")); !undone)
            return done;
    }
    return done;
}

} // namespace wainscot
