// Everything worth knowing about a display before it is printed.
#pragma once

#include "app/jobs/export_job.h"
#include "app/jobs/job_run.h"
#include "core/base/finding.h"
#include "core/model/book.h"
#include "layout/check/limits.h"

#include <optional>
#include <vector>

namespace wainscot {

struct CheckOutcome {
    QString display;
    std::vector<Finding> findings; // stop first, then look, then note; by panel within
    [[nodiscard]] bool mustStop() const;
};

struct CheckJob {
    QString display;
    check::Limits limits;
    std::optional<SheetWishes> sheets; // paper it is printed on in parts, to look at the seams
    Result<CheckOutcome> run(const Book& book, const JobRun& run) const;
};

} // namespace wainscot
