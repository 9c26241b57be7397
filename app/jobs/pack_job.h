// A book as one file to carry, and back.
#pragma once

#include "app/jobs/job_run.h"
#include "core/store/pack.h"

namespace wainscot {

struct PackJob {
    QString folder; // of the book
    QString file; // to write
    QString phrase = {}; // to lock it with; empty = it is not locked
    Result<PackReport> run(const JobRun& run) const;
};

struct UnpackJob {
    QString file;
    QString folder; // to make; must not exist or be empty
    QString phrase = {}; // of a locked file
    Result<PackReport> run(const JobRun& run) const;
};

} // namespace wainscot
