// Forgetting a child for good.
#pragma once

#include "app/jobs/erase_plan.h"
#include "app/jobs/job_run.h"

namespace wainscot {

// What becomes of pictures that show other children too.
enum class SharedPictures {
    Ask, // nothing is done while there are any, and they are listed
    Delete,
    KeepCovered, // where something is covered the cover becomes part of the file; the others go
};

struct EraseJob {
    QString folder; // of the book
    QString child; // the whole name, as in the class list
    SharedPictures shared = SharedPictures::Ask;

    // Refused, naming the shared pictures; as planErasing, coveredCopies and the store.
    Result<ErasePlan> run(const JobRun& run) const;
};

} // namespace wainscot
