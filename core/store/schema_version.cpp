// Whether a database is a book, and of which version.
#include "core/store/database.h"
#include "core/store/schema.h"

namespace wainscot {

// By the statements that SQLite reads its tables from, because those are what it runs.
Result<> holdsTablesAlone(Database& database, const QString& path)
{
    const auto other = database.one(QStringLiteral(
        "SELECT COUNT(*) FROM sqlite_master WHERE sql IS NOT NULL AND sql NOT LIKE 'CREATE TABLE "
        "%' "
        "AND sql NOT LIKE 'CREATE INDEX %' AND sql NOT LIKE 'CREATE UNIQUE INDEX %'"));
    if (!other)
        return other.error();
    if (other->toInt() > 0)
        return Error{ErrorCode::Damaged, path, QStringLiteral("it holds more than a book does")};
    return Done{};
}

Result<int> schemaVersionOf(Database& database, const QString& path)
{
    const auto application = database.one(QStringLiteral("PRAGMA application_id"));
    if (!application)
        return application.error();
    if (application->toInt() != kApplicationId)
        return Error{ErrorCode::Damaged, path, QStringLiteral("it is not a book of this program")};
    const auto version = database.one(QStringLiteral("PRAGMA user_version"));
    if (!version)
        return version.error();
    if (version->toInt() > currentSchemaVersion())
        return Error{ErrorCode::TooNew, path, {}};
    if (version->toInt() < 1)
        return Error{ErrorCode::Damaged, path, QStringLiteral("it says no version")};
    if (const auto alone = holdsTablesAlone(database, path); !alone)
        return alone.error();
    return version->toInt();
}

} // namespace wainscot
