// What can be saved of a damaged book, in a new one. The damaged book is only read.
#pragma once

#include "core/base/result.h"

#include <QString>
#include <QStringList>

#include <functional>

namespace wainscot {

struct RepairReport {
    int children = 0; // all that the new book holds
    int quotes = 0;
    int pictures = 0;
    int panels = 0;
    // A sentence for each thing that could not be saved, or not as it was.
    QStringList problems;
    [[nodiscard]] bool all() const { return problems.isEmpty(); }
};

// Makes a book in `newFolder`, which must not exist or be empty (WrongUse), of every row and every
// original of the book at `path` that can still be read. Rows on broken pages are taken from the
// newest earlier state that has them: a child then without any permission, a picture as if nobody
// had said who is in it. What pointed at something lost points at nothing, or at a stand-in where
// a child's words would be lost otherwise. A changed original is kept as it is now and named.
// NotFound when there is no book; CannotRead when neither its database nor an earlier state nor a
// picture can be read; CannotWrite. `progress` as in BookStore::verify.
Result<RepairReport> repairBook(const QString& path,
    const QString& newFolder,
    const std::function<bool(int, int)>& progress = {});

} // namespace wainscot
