#include "app/jobs/erase_job.h"

#include "app/jobs/proxies_folder.h"
#include "app/jobs/sentences.h"
#include "core/media/proxies.h"
#include "core/store/book_store.h"

namespace wainscot {

Result<ErasePlan> EraseJob::run(const JobRun& run) const
{
    run.report(QStringLiteral("Looking for everything about %1").arg(child));
    const auto store = BookStore::open(folder);
    if (!store)
        return store.error();
    auto plan = planErasing((*store)->book(), child);
    if (!plan)
        return plan;
    if (!plan->shared.isEmpty() && !sharedToo) {
        return Error{ErrorCode::Refused,
            QStringLiteral("%1 is in pictures with other children").arg(child),
            QStringLiteral("%1; say that they may go too, or take %2 out of them first")
                .arg(listInWords(plan->shared), child)};
    }
    if (run.cancelled())
        return stoppedByPerson();
    run.report(QStringLiteral("Erasing"));
    const Proxies copies(proxiesFolderOf((*store)->folder()));
    for (const QString& sha256 : plan->sha256)
        copies.forget(sha256);
    if (const auto erased = (*store)->eraseForever(plan->edit); !erased)
        return erased.error();
    return plan;
}

} // namespace wainscot
