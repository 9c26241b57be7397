// Rows out of a broken database, and the references between them mended. Private to core/store.
#pragma once

#include "core/base/result.h"
#include "core/model/book.h"

#include <QStringList>

#include <set>

namespace wainscot {

class Database;

struct Salvaged {
    Book book;
    std::set<QString> broken; // tables of which a part could not be read
    QStringList problems; // a sentence for each
};

// Every row of every table that can be read. REQUIRES: a database of the current version
[[nodiscard]] Salvaged salvage(Database& database);

// Takes what is missing in tables that are broken from an earlier state. Nothing is allowed for a
// child and nobody is known in a picture that come from there, whatever was said in those days.
void fillFrom(const Book& earlier, const QString& when, Salvaged& salvaged);

// Makes everything point at something that is there again.
void mendReferences(Salvaged& salvaged);

} // namespace wainscot
