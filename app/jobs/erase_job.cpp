#include "app/jobs/erase_job.h"

#include "app/jobs/covered_copies.h"
#include "app/jobs/proxies_folder.h"
#include "app/jobs/sentences.h"
#include "core/media/proxies.h"
#include "core/store/book_store.h"

#include <QTemporaryDir>

namespace wainscot {

namespace {

Error sharedAndUnsettled(const std::vector<Picture>& shared, const QString& child)
{
    QStringList names;
    for (const Picture& picture : shared)
        names << QStringLiteral("%1 (%2)").arg(picture.fileName,
            isCovered(picture) ? QStringLiteral("covered") : QStringLiteral("nothing covered"));
    return {ErrorCode::Refused,
        QStringLiteral("%1 is in pictures with other children").arg(child),
        QStringLiteral("%1; say that they may go, or that the covered ones stay")
            .arg(listInWords(names))};
}

// The files with their covers burnt in come into the book; the rows that name them follow.
Result<KeptPictures> keepCovered(
    BookStore& store, const std::vector<Picture>& shared, const QString& child, const JobRun& run)
{
    const QTemporaryDir place;
    const auto copies = coveredCopies(
        shared,
        childByName(store.book(), child)->id,
        [&](const QString& sha256) { return store.originalPath(sha256); },
        place.path(),
        run);
    if (!copies)
        return copies.error();
    KeptPictures kept;
    for (const CoveredCopy& copy : *copies) {
        if (const auto done = store.keepOriginal(copy.file); !done)
            return done.error();
        kept.emplace(copy.picture.id, copy.picture);
    }
    return kept;
}

} // namespace

Result<ErasePlan> EraseJob::run(const JobRun& run) const
{
    run.report(QStringLiteral("Looking for everything about %1").arg(child));
    const auto store = BookStore::open(folder);
    if (!store)
        return store.error();
    const auto together = sharedPictures((*store)->book(), child);
    if (!together)
        return together.error();
    if (shared == SharedPictures::Ask && !together->empty())
        return sharedAndUnsettled(*together, child);
    KeptPictures kept;
    if (shared == SharedPictures::KeepCovered) {
        auto done = keepCovered(**store, *together, child, run);
        if (!done)
            return done.error();
        kept = std::move(*done);
    }
    auto plan = planErasing((*store)->book(), child, kept);
    if (!plan)
        return plan;
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
