// Looks at everything a book consists of. Private to core/store.
#pragma once

#include "core/store/book_store.h"

namespace wainscot {

class Database;

Result<VerifyReport> verifyBook(Database& database,
    const Book& book,
    const Originals& originals,
    const std::function<bool(int, int)>& progress);

} // namespace wainscot
