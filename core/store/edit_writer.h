// Writes an edit into the tables. Private to core/store.
#pragma once

#include "core/base/result.h"
#include "core/edit/edit.h"

namespace wainscot {

class Database;

enum class EditSide { Before, After };

// Makes the rows what the edit says on one side. REQUIRES: inside a transaction
Result<> writeEdit(Database& database, const Edit& edit, EditSide side);
Result<> writeInfo(Database& database, const BookInfo& info);

} // namespace wainscot
