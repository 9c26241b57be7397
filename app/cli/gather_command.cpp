#include "app/cli/command.h"
#include "app/cli/json.h"
#include "app/jobs/gather.h"
#include "app/jobs/gather_common.h"
#include "core/store/book_store.h"

#include <array>

namespace wainscot::cli {

namespace {

constexpr std::array kOptions{
    OptionSpec{"children", "FILE.csv", "a class list with permissions"},
    OptionSpec{"experience", "TITLE", "what the words or pictures belong to"},
    OptionSpec{"on", "YYYY-MM-DD", "the day it began"},
    OptionSpec{"quotes", "FILE.csv", "children's words"},
    OptionSpec{"photos", "FOLDER", "pictures, with a photos.csv if there is one"},
};

Error wrongUse(const QString& says)
{
    return {ErrorCode::WrongUse, says, {}};
}

std::optional<Error> faultIn(const Arguments& arguments)
{
    const int kinds = int(arguments.has("children")) + int(arguments.has("quotes"))
        + int(arguments.has("photos"));
    if (kinds != 1)
        return wrongUse(QStringLiteral("Say one of --children, --quotes and --photos"));
    if (arguments.has("children") && (arguments.has("experience") || arguments.has("on"))) {
        return wrongUse(
            QStringLiteral("A class list belongs to the book, not to an experience or a day"));
    }
    if (!arguments.has("children") && arguments.value("experience").simplified().isEmpty()) {
        return wrongUse(QStringLiteral("The option --experience TITLE is missing"));
    }
    if (arguments.has("on") && !dayFromText(arguments.value("on"))) {
        return wrongUse(QStringLiteral("--on takes a date like 2026-11-03, not \"%1\"")
                            .arg(arguments.value("on")));
    }
    return std::nullopt;
}

Result<GatherOutcome> gather(const Arguments& arguments, const BookStore& store, const JobRun& run)
{
    const std::optional<QDate> on = dayFromText(arguments.value("on"));
    if (arguments.has("children"))
        return GatherChildrenJob{arguments.value("children")}.run(store.book(), run);
    if (arguments.has("quotes")) {
        return GatherQuotesJob{arguments.value("quotes"), arguments.value("experience"), on}.run(
            store.book(), run);
    }
    const GatherPhotosJob job{
        arguments.value("photos"), arguments.value("experience"), store.picturesFolder(), on};
    return job.run(store.book(), run);
}

Answer answerFor(const GatherOutcome& outcome)
{
    Answer answer;
    QJsonArray skipped;
    for (const SkippedRow& row : outcome.skipped) {
        skipped.append(QJsonObject{{QStringLiteral("row"), row.row},
            {QStringLiteral("file"), row.file},
            {QStringLiteral("why"), row.why}});
        answer.notes.append(row.why);
    }
    answer.json = {{QStringLiteral("added"), outcome.added},
        {QStringLiteral("updated"), outcome.updated},
        {QStringLiteral("skipped"), skipped}};
    answer.lines.append(QStringLiteral("%1 added, %2 updated, %3 skipped.")
                            .arg(outcome.added)
                            .arg(outcome.updated)
                            .arg(outcome.skipped.size()));
    return answer;
}

Result<Answer> runGather(const Arguments& arguments, const JobRun& run)
{
    if (const auto fault = faultIn(arguments))
        return *fault;
    auto store = BookStore::open(arguments.positional(0));
    if (!store)
        return store.error();
    Result<GatherOutcome> outcome = gather(arguments, **store, run);
    if (!outcome)
        return outcome.error();
    if (const Result<> kept = (*store)->history().perform(outcome->edit); !kept)
        return kept.error();
    return answerFor(*outcome);
}

} // namespace

std::vector<Command> gatherCommands()
{
    return {{"gather",
        "BOOK --children FILE.csv\n"
        "       wainscot-cli gather BOOK --experience TITLE [--on YYYY-MM-DD] --quotes FILE.csv\n"
        "       wainscot-cli gather BOOK --experience TITLE --photos FOLDER",
        "Brings a class list, children's words or pictures into a book.",
        kOptions,
        {QStringLiteral("BOOK")},
        runGather}};
}

} // namespace wainscot::cli
