// A book as tables that any program reads, and back; see core/store/book_data.h.
#pragma once

#include "app/jobs/job_run.h"
#include "core/store/book_data.h"

namespace wainscot {

struct TakeDataOutJob {
    QString folder; // of the book
    QString to; // must not exist or be empty
    DataOut what = {};
    Result<DataReport> run(const JobRun& run) const;
};

struct BringDataInJob {
    QString from; // what TakeDataOutJob made
    QString folder; // to make; must not exist or be empty
    DataForm form = DataForm::Json;
    Result<DataReport> run(const JobRun& run) const;
};

// Said wherever data is offered: what goes out is not cleared for anybody.
[[nodiscard]] QString dataCaution();

} // namespace wainscot
