// What verifying finds in the database itself. Random books mention pictures that never existed.
#pragma once

#include "core/store/book_store.h"

namespace wainscot {

inline QStringList databaseProblems(BookStore& store)
{
    const auto report = store.verify();
    if (!report)
        return {report.error().detail};
    QStringList problems;
    for (const QString& problem : report->problems) {
        if (!problem.endsWith(QStringLiteral("is missing from the book.")))
            problems << problem;
    }
    return problems;
}

} // namespace wainscot
