// The tables of a book and the way from each earlier version to this one. Private to core/store.
#pragma once

#include "core/base/result.h"

namespace wainscot {

class Database;

// Marks the file as a book of this program: "WNSC".
inline constexpr int kApplicationId = 0x574e5343;

// The version this program writes (PRAGMA user_version).
[[nodiscard]] int currentSchemaVersion();

// Takes an empty or earlier database to a later version. REQUIRES: inside a transaction
Result<> migrate(Database& database, int fromVersion, int toVersion = currentSchemaVersion());

// Damaged for a database with more in it than tables and their indexes: views, triggers and virtual
// tables would run, or never end, whenever the book is read or written.
Result<> holdsTablesAlone(Database& database, const QString& path);

// Damaged for a file that is not a book, or holds more than one; TooNew for one of a later version.
Result<int> schemaVersionOf(Database& database, const QString& path);

} // namespace wainscot
