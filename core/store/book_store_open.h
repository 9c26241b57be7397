// What an open book holds. Private to core/store.
#pragma once

#include "core/store/book_store.h"
#include "core/store/database.h"

#include <QLockFile>

#include <optional>

namespace wainscot {

struct BookStore::Open {
    Open(QString where, std::unique_ptr<QLockFile> held, std::unique_ptr<Database> opened)
        : folder(std::move(where))
        , lock(std::move(held))
        , database(std::move(opened))
        , originals(folder + QStringLiteral("/pictures"))
    {
    }

    QString folder;
    std::unique_ptr<QLockFile> lock; // released after the database is closed; none = read-only
    std::unique_ptr<Database> database;
    Originals originals;
    Book book;
    std::optional<History> history;
};

} // namespace wainscot
