// A term as one file to keep: what was asked, said, made and hung between two days, as one audience
// may see it today.
#pragma once

#include "app/jobs/job_run.h"
#include "core/model/book.h"
#include "core/permit/cleared.h"
#include "core/store/made_files.h"
#include "layout/typeset/term_pages.h"

#include <map>
#include <set>

namespace wainscot {

struct KeepOutcome {
    QString file; // empty while it is only planned
    int experiences = 0;
    int pages = 0;
    int frontPages = 0; // of these, cover and contents
    std::map<TermPart, int> pagesOf;
    int pictures = 0; // stored in the file
    std::vector<LeftOut> leftOut;
    MadeFile made; // for the book to remember; nothing while it is only planned
};

// WrongUse when the days are not two days in order, or nothing of the book lies between them.
struct KeepJob {
    QDate from;
    QDate to; // this day too
    QString file;
    QString picturesFolder;
    Audience audience = Audience::Families;
    SizeMm paper{Mm(210), Mm(297)};
    std::set<TermPart> parts{kTermParts.begin(), kTermParts.end()};
    Result<KeepOutcome> run(const Book& book, const JobRun& run) const;
    // How long it would be; touches no picture and writes nothing.
    Result<KeepOutcome> plan(const Book& book, const JobRun& run) const;
};

} // namespace wainscot
