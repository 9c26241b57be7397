#include "app/jobs/pack_job.h"

#include "core/store/book_store.h"

namespace wainscot {

namespace {

constexpr qint64 kMegabyte = 1024 * 1024;

PackProgress progressOf(const JobRun& run, const QString& doing)
{
    return [&run, doing](qint64 done, qint64 of) {
        run.report(doing, int(done / kMegabyte), int(of / kMegabyte));
        return !run.cancelled();
    };
}

} // namespace

Result<PackReport> PackJob::run(const JobRun& run) const
{
    const auto store = BookStore::open(folder, Access::ReadOnly);
    if (!store)
        return store.error();
    return packBook(**store,
        file,
        progressOf(run, QStringLiteral("Packing the book, megabytes")),
        PackLock{phrase});
}

Result<PackReport> UnpackJob::run(const JobRun& run) const
{
    return unpackBook(
        file, folder, progressOf(run, QStringLiteral("Unpacking the book, megabytes")), phrase);
}

} // namespace wainscot
