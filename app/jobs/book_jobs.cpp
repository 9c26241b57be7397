#include "app/jobs/book_jobs.h"

#include "core/store/book_store.h"

namespace wainscot {

Result<> NewBookJob::run(const JobRun& run) const
{
    if (title.simplified().isEmpty())
        return Error{ErrorCode::WrongUse, QStringLiteral("A book needs a title"), {}};
    run.report(QStringLiteral("Making %1").arg(folder));
    BookInfo info;
    info.title = title.simplified();
    auto made = BookStore::create(folder, info);
    if (!made)
        return made.error();
    return Done{};
}

Result<VerifyOutcome> VerifyJob::run(const JobRun& run) const
{
    auto store = BookStore::open(folder, Access::ReadOnly);
    if (!store)
        return store.error();
    const auto report = (*store)->verify([&run](int done, int of) {
        run.report(QStringLiteral("Comparing pictures"), done, of);
        return !run.cancelled();
    });
    if (!report)
        return report.error();
    return VerifyOutcome{report->pictures, report->problems};
}

} // namespace wainscot
