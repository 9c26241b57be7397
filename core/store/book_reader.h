// Reads a whole book from its tables. Private to core/store.
#pragma once

#include "core/base/result.h"
#include "core/model/book.h"

namespace wainscot {

class Database;

// Damaged with table and row when a row makes no sense.
Result<Book> readBook(Database& database, const QString& path);

} // namespace wainscot
