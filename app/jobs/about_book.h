// What a book is called, and which language its walls speak.
#pragma once

#include "app/jobs/job_run.h"
#include "core/edit/edit.h"

#include <optional>

namespace wainscot {

// A code of BCP 47, as it is kept: "es", "pt-BR". Says what is wrong with one that names no
// language.
[[nodiscard]] Result<QString> languageCode(const QString& written);

// The step that changes it. What was begun in the language so far goes along: experiences,
// displays, and ready questions that nobody has changed. Words on panels stay until they are
// proposed anew.
[[nodiscard]] Edit aboutBook(const Book& book, const BookInfo& info, const QString& says);

struct AboutBookJob {
    QString folder;
    std::optional<QString> title = {}; // to set
    std::optional<QString> language = {}; // to set
    Result<BookInfo> run(const JobRun& run) const; // as it is afterwards
};

} // namespace wainscot
