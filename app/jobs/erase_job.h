// Forgetting a child for good.
#pragma once

#include "app/jobs/erase_plan.h"
#include "app/jobs/job_run.h"

namespace wainscot {

struct EraseJob {
    QString folder; // of the book
    QString child; // the whole name, as in the class list
    // Pictures that show other children too go as well; without this nothing is done while there
    // are any, and they are listed.
    bool sharedToo = false;

    // Refused, naming the shared pictures; as planErasing and the store.
    Result<ErasePlan> run(const JobRun& run) const;
};

} // namespace wainscot
