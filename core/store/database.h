// One connection to a SQLite file with its rules set, and transactions. Private to core/store.
#pragma once

#include "core/base/result.h"

#include <QHash>
#include <QSqlDatabase>
#include <QSqlQuery>
#include <QString>
#include <QVariant>

#include <functional>
#include <memory>

namespace wainscot {

// Foreign keys on, rollback journal, every commit forced to the disk; all asserted when opening.
class Database {
public:
    enum class Mode { Create, ReadWrite, ReadOnly };
    static Result<std::unique_ptr<Database>> open(const QString& path, Mode mode);
    Database(const Database&) = delete;
    Database& operator=(const Database&) = delete;
    ~Database();

    // A statement without an answer.
    Result<> run(const QString& sql, const QVariantList& values = {});
    // Calls take(query) for each row, until it answers with an error.
    using TakeRow = std::function<Result<>(const QSqlQuery&)>;
    Result<> each(const QString& sql, const TakeRow& take, const QVariantList& values = {});
    Result<QVariant> one(const QString& sql); // first column of the first row

    // BEGIN IMMEDIATE, work, COMMIT; ROLLBACK when the work or the commit fails.
    Result<> inTransaction(const std::function<Result<>()>& work);
    // The same for reading: all of it sees the book at one moment.
    Result<> inSnapshot(const std::function<Result<>()>& work);

private:
    Database(QString path, QString connection);
    Result<> transact(const QString& begin, const std::function<Result<>()>& work);
    Result<QSqlQuery*> executed(const QString& sql, const QVariantList& values);
    Result<> setRules(Mode mode);

    QString m_path;
    QString m_connection;
    QSqlDatabase m_db;
    QHash<QString, QSqlQuery*> m_prepared; // owned
};

} // namespace wainscot
