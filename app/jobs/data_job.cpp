#include "app/jobs/data_job.h"

#include "core/base/says.h"
#include "core/store/book_store.h"

namespace wainscot {

namespace {

DataProgress progressOf(const JobRun& run, const QString& doing)
{
    return [&run, doing](int done, int of) {
        run.report(doing, done, of);
        return !run.cancelled();
    };
}

} // namespace

Result<DataReport> TakeDataOutJob::run(const JobRun& run) const
{
    const auto store = BookStore::open(folder, Access::ReadOnly);
    if (!store)
        return store.error();
    return takeDataOut(**store, to, what, progressOf(run, Says::tr("Copying pictures")));
}

Result<DataReport> BringDataInJob::run(const JobRun& run) const
{
    return bringDataIn(from, folder, form, progressOf(run, Says::tr("Copying pictures")));
}

QString dataCaution()
{
    return Says::tr("It holds every child's words, name and pictures, also of those who may not be "
                    "shown. Keep it as you would keep the class list.");
}

} // namespace wainscot
