#include "app/jobs/book_jobs.h"

#include "app/jobs/about_book.h"
#include "app/jobs/sentences.h"
#include "core/base/says.h"
#include "core/store/book_store.h"
#include "core/store/made_files.h"
#include "core/store/repair.h"

namespace wainscot {

Result<> NewBookJob::run(const JobRun& run) const
{
    if (title.simplified().isEmpty())
        return Error{ErrorCode::WrongUse, Says::tr("A book needs a title"), {}};
    const auto code = languageCode(language);
    if (!code)
        return code.error();
    run.report(Says::tr("Making %1").arg(folder));
    BookInfo info;
    info.title = title.simplified();
    info.language = *code;
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
        run.report(Says::tr("Comparing pictures"), done, of);
        return !run.cancelled();
    });
    if (!report)
        return report.error();
    return VerifyOutcome{report->pictures, report->problems};
}

Result<RepairOutcome> RepairJob::run(const JobRun& run) const
{
    const auto report = repairBook(folder, newFolder, [&run](int done, int of) {
        run.report(QStringLiteral("Saving pictures"), done, of);
        return !run.cancelled();
    });
    if (!report)
        return report.error();
    return RepairOutcome{
        report->children, report->quotes, report->pictures, report->panels, report->problems};
}

Retention retentionOf(const std::optional<QDate>& until, QDate today)
{
    return {until, until && *until < today};
}

QString inWords(const Retention& retention)
{
    if (!retention.until)
        return Says::tr("No day is set until which this book is kept.");
    const QString day = dateInWords(*retention.until);
    return retention.isOver
        ? Says::tr("This book was to be kept until %1. Pack it away, or erase what is in it.")
              .arg(day)
        : Says::tr("This book is kept until %1.").arg(day);
}

Result<Retention> RetentionJob::run(const JobRun& run) const
{
    if (sets) {
        if (auto done = keepUntil(folder, until); !done)
            return done.error();
    }
    const auto kept = keptUntil(folder);
    if (!kept)
        return kept.error();
    return retentionOf(*kept, run.today);
}

} // namespace wainscot
