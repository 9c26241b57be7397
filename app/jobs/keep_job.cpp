#include "app/jobs/keep_job.h"

#include "app/jobs/drawn_display.h"
#include "app/jobs/made_files.h"
#include "core/store/originals.h"
#include "layout/paper/original_pictures.h"
#include "layout/paper/term_file.h"

namespace wainscot {

namespace {

std::optional<Error> misuse(const KeepJob& job)
{
    if (job.from.isValid() && job.to.isValid() && job.from <= job.to)
        return std::nullopt;
    return Error{ErrorCode::WrongUse,
        QStringLiteral("The term"),
        QStringLiteral("it goes from one day to a later one, written as 2026-09-01")};
}

TermWishes wishesOf(const KeepJob& job)
{
    TermWishes wishes;
    wishes.paper = job.paper;
    wishes.parts = job.parts;
    wishes.styleOf = [](const ClearedPanel& panel) { return styleFor(panel); };
    return wishes;
}

KeepOutcome outcomeOf(const ClearedTerm& term, const TermReport& report)
{
    KeepOutcome outcome;
    outcome.experiences = static_cast<int>(term.experiences().size());
    outcome.pages = report.paper.pages;
    outcome.frontPages = report.front;
    outcome.pagesOf = report.pages;
    outcome.pictures = report.paper.pictures;
    outcome.leftOut = term.leftOut();
    return outcome;
}

} // namespace

Result<KeepOutcome> KeepJob::plan(const Book& book, const JobRun& run) const
{
    if (const auto error = misuse(*this))
        return *error;
    const ClearedTerm term = ClearedTerm::of(book, audience, from, to, run.today);
    return outcomeOf(term, planTerm(term, wishesOf(*this)));
}

Result<KeepOutcome> KeepJob::run(const Book& book, const JobRun& run) const
{
    if (const auto error = misuse(*this))
        return *error;
    const ClearedTerm term = ClearedTerm::of(book, audience, from, to, run.today);
    OriginalPictures pictures([originals = Originals(picturesFolder)](const ClearedPicture& one) {
        return originals.pathOf(one.sha256);
    });
    PaperWatch watch;
    watch.cancel = run.cancel;
    watch.onProgress = [&run](int done, int of) {
        run.report(QStringLiteral("Making the term's file: page"), done, of);
    };
    const Result<TermReport> report =
        writeTerm(file, term, wishesOf(*this), pictures, PaperOptions{}, watch);
    if (!report)
        return report.error();
    KeepOutcome outcome = outcomeOf(term, *report);
    outcome.file = file;
    outcome.made = madeFileOf(term, file);
    return outcome;
}

} // namespace wainscot
