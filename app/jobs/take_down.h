// What stands on panels although it may not be seen by their audience now: what to take down from
// walls when a family has withdrawn a permission.
#pragma once

#include "app/jobs/job_run.h"
#include "core/model/book.h"

#include <vector>

namespace wainscot {

struct TakeDown {
    QString display;
    Audience audience = Audience::Classroom;
    int panel = 1; // 1-based; 0 = a photo of the wall, kept with the term
    QString what; // "quote", "photo", "work" or "name"
    std::vector<ChildId> children; // whose it is: who said it, who is in it, who is named
    QString why; // one sentence, ready to read
};

// By display and panel. A panel made again leaves these out by itself; one that hangs does not.
struct TakeDownJob {
    QString child; // only what concerns this one, by name; empty = everybody
    // NotFound when nobody is called so.
    Result<std::vector<TakeDown>> run(const Book& book, const JobRun& run) const;
};

} // namespace wainscot
