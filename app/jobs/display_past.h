// What a display was like before the book was opened this time.
#pragma once

#include "app/jobs/job_run.h"
#include "core/model/book.h"
#include "core/store/book_store.h"

#include <memory>
#include <vector>

namespace wainscot {

struct DisplayThen {
    EarlierState state; // that it was kept in
    std::shared_ptr<const Book> book;
};

// The states of the book that are kept, newest first, as far as they show the display otherwise
// than the one after each: other panels, other pieces or other looks.
struct DisplayPastJob {
    QString folder; // of the book
    DisplayId display;
    int most = 12;

    // `now`: what the newest is compared with. States that cannot be read are passed over.
    // Cancelled.
    Result<std::vector<DisplayThen>> run(const Book& now, const JobRun& run) const;
};

} // namespace wainscot
