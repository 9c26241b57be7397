// keep-until: how long a book is kept.
#include "app/cli/command.h"
#include "app/cli/json.h"
#include "app/jobs/book_jobs.h"

#include <array>

namespace wainscot::cli {

namespace {

constexpr std::array kOptions{
    OptionSpec{"day", "DATE", "the last day: 2027-07-31"},
    OptionSpec{"no-day", nullptr, "no day is set any more"},
};

Result<Answer> runKeepUntil(const Arguments& arguments, const JobRun& run)
{
    RetentionJob job{arguments.positional(0), arguments.has("day") || arguments.has("no-day"), {}};
    if (arguments.has("day") && arguments.has("no-day"))
        return Error{ErrorCode::WrongUse, QStringLiteral("Say one of --day DATE and --no-day"), {}};
    if (arguments.has("day")) {
        job.until = QDate::fromString(arguments.value("day"), Qt::ISODate);
        if (!job.until->isValid())
            return Error{ErrorCode::WrongUse,
                QStringLiteral("--day \"%1\"").arg(arguments.value("day")),
                QStringLiteral("write a day as 2027-07-31")};
    }
    const auto kept = job.run(run);
    if (!kept)
        return kept.error();
    Answer answer;
    answer.json = {{QStringLiteral("until"), cli::toJson(kept->until)},
        {QStringLiteral("is_over"), kept->isOver}};
    answer.lines << inWords(*kept);
    answer.exit = kept->isOver ? kStopFinding : kDone;
    return answer;
}

} // namespace

std::vector<Command> retentionCommands()
{
    return {{"keep-until",
        "BOOK [--day DATE | --no-day]",
        "Tells or sets the day after which the book asks to be packed away or erased.",
        kOptions,
        {QStringLiteral("BOOK")},
        runKeepUntil}};
}

} // namespace wainscot::cli
