// What an open book holds. Private to core/store.
#pragma once

#include "core/store/book_store.h"
#include "core/store/database.h"
#include "core/store/earlier_states.h"

#include <QLockFile>

#include <optional>

namespace wainscot {

struct BookStore::Open {
    Open(QString where, std::unique_ptr<QLockFile> held, std::unique_ptr<Database> opened)
        : folder(std::move(where))
        , lock(std::move(held))
        , database(std::move(opened))
        , originals(folder + QStringLiteral("/pictures"))
        , earlier(folder)
    {
    }

    QString folder;
    std::unique_ptr<QLockFile> lock; // released after the database is closed; none = read-only
    std::unique_ptr<Database> database;
    Originals originals;
    EarlierStates earlier;
    QDate earlierKeptOn; // the last day that was seen to
    Book book;
    std::optional<History> history;
};

} // namespace wainscot
