// Made files, and how long a book is kept, as rows of its database. Private to core/store.
#pragma once

#include "core/base/result.h"
#include "core/edit/edit.h"
#include "core/store/made_files.h"

#include <vector>

namespace wainscot {

class Database;

Result<std::vector<MadeFile>> readMadeFiles(Database& database); // in the order they were made
Result<> writeMadeFile(Database& database, const MadeFile& made); // REQUIRES: in a transaction

Result<std::optional<QDate>> readKeptUntil(Database& database);

// Takes out of the names of files what tells of children whom the edit removes. REQUIRES: as above
Result<> forgetInFileNames(Database& database, const Edit& edit);

} // namespace wainscot
