// Commands that make one file of pages: open the book, run the job, answer with what it made.
#pragma once

#include "app/cli/command.h"
#include "app/cli/json.h"
#include "app/jobs/sentences.h"
#include "core/base/paper_size.h"
#include "core/store/book_store.h"

namespace wainscot::cli {

// --paper, into `paper` when it is given.
[[nodiscard]] inline Result<> takePaper(const Arguments& arguments, SizeMm& paper)
{
    if (!arguments.has("paper"))
        return Done{};
    const Result<SizeMm> size = paperSizeFromText(arguments.value("paper"));
    if (!size)
        return size.error();
    paper = *size;
    return Done{};
}

// `more`: what the answer's JSON says besides, of the outcome.
template <class Job, class More>
Result<Answer> makePages(
    const Arguments& arguments, const JobRun& run, Result<Job> job, const More& more)
{
    if (!job)
        return job.error();
    auto store = BookStore::open(arguments.positional(0), Access::ReadOnly);
    if (!store)
        return store.error();
    job->picturesFolder = (*store)->picturesFolder();
    const auto outcome = job->run((*store)->book(), run);
    if (!outcome)
        return outcome.error();
    Answer answer;
    answer.json = more(*outcome);
    answer.json[QStringLiteral("files")] = toJson(QStringList{outcome->file});
    answer.json[QStringLiteral("pages")] = outcome->pages;
    answer.json[QStringLiteral("left_out")] = toJson(outcome->leftOut);
    answer.notes.append(reasonsOf(outcome->leftOut));
    answer.lines.append(QStringLiteral("%1: %2 pages").arg(outcome->file).arg(outcome->pages));
    remember(arguments.positional(0), outcome->made, answer);
    return answer;
}

} // namespace wainscot::cli
