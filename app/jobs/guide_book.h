// The book that the pictures of the built-in guide are taken of.
#pragma once

#include "app/jobs/job_run.h"
#include "core/base/result.h"

#include <QString>

namespace wainscot {

// The sample class in a small form, with groups, a panel and a wall it hangs on. What was made
// before is taken as it is.
struct GuideBookJob {
    QString folder; // for the guide alone

    // The book's folder. As SampleJob and ArrangeJob; Cancelled.
    Result<QString> run(const JobRun& run) const;
};

} // namespace wainscot
