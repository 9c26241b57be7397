// The pages of a scanned PDF, for the jobs that take pictures.
#pragma once

#include "app/jobs/job_run.h"
#include "core/media/scan.h"

#include <functional>

namespace wainscot {

// Calls `take` for every page that has a picture and `leaveOut` with a sentence for every other
// one, or once for a file that cannot be used; that is no error. Reports each page. Errors:
// Cancelled, CannotWrite, and what `take` answers.
Result<> takePagesOf(const QString& pdf,
    const JobRun& run,
    int mostPages,
    const std::function<Result<>(const ScannedPage&)>& take,
    const std::function<void(const QString& why)>& leaveOut);

} // namespace wainscot
