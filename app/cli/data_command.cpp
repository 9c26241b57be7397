// data, from-data: a book as tables that any program reads.
#include "app/cli/command.h"
#include "app/cli/json.h"
#include "app/jobs/data_job.h"
#include "app/jobs/made_files.h"

#include <array>

namespace wainscot::cli {

namespace {

constexpr std::array kData{OptionSpec{"to", "FOLDER", "folder to make", true},
    OptionSpec{"as", "FORM", "json or csv; both when not given"},
    OptionSpec{"no-bom", nullptr, "CSV without a byte order mark"}};
constexpr std::array kFromData{OptionSpec{"to", "BOOK", "folder to make", true},
    OptionSpec{"as", "FORM", "read json or csv; json when not given"}};

// "json", "csv", or nothing when not given.
Result<std::optional<DataForm>> formOf(const Arguments& arguments)
{
    const QString form = arguments.value("as").toLower();
    if (!arguments.has("as"))
        return std::optional<DataForm>();
    if (form == QLatin1String("json"))
        return std::optional(DataForm::Json);
    if (form == QLatin1String("csv"))
        return std::optional(DataForm::Csv);
    return Error{ErrorCode::WrongUse, QStringLiteral("--as takes json or csv"), form};
}

Answer answerFor(const DataReport& report, const QString& key, const QString& made)
{
    Answer answer;
    answer.json = {{key, made},
        {QStringLiteral("rows"), report.rows},
        {QStringLiteral("pictures"), report.pictures},
        {QStringLiteral("problems"), toJson(report.problems)}};
    answer.lines = report.problems;
    answer.lines << QStringLiteral("%1 holds %2 rows and %3 pictures.")
                        .arg(made)
                        .arg(report.rows)
                        .arg(report.pictures);
    answer.exit = report.problems.isEmpty() ? kDone : kStopFinding;
    return answer;
}

Result<Answer> runData(const Arguments& arguments, const JobRun& run)
{
    const auto form = formOf(arguments);
    if (!form)
        return form.error();
    TakeDataOutJob job{arguments.positional(0), arguments.value("to"), {}};
    job.what.json = *form != DataForm::Csv;
    job.what.csv = *form != DataForm::Json;
    job.what.byteOrderMark = !arguments.has("no-bom");
    const auto taken = job.run(run);
    if (!taken)
        return taken.error();
    Answer answer = answerFor(*taken, QStringLiteral("folder"), job.to);
    answer.lines << dataCaution()
                 << QStringLiteral("What the columns mean is told in format.txt beside them.");
    remember(job.folder, madeFileOf(MadeFileKind::Data, job.to, run.today), answer);
    return answer;
}

Result<Answer> runFromData(const Arguments& arguments, const JobRun& run)
{
    const auto form = formOf(arguments);
    if (!form)
        return form.error();
    const BringDataInJob job{
        arguments.positional(0), arguments.value("to"), form->value_or(DataForm::Json)};
    const auto brought = job.run(run);
    if (!brought)
        return brought.error();
    return answerFor(*brought, QStringLiteral("book"), job.folder);
}

} // namespace

std::vector<Command> dataCommands()
{
    return {
        {"data",
            "BOOK --to FOLDER [--as json|csv] [--no-bom]",
            "Takes everything out as JSON, CSV and pictures; not cleared for anybody.",
            kData,
            {QStringLiteral("BOOK")},
            runData},
        {"from-data",
            "FOLDER --to BOOK [--as json|csv]",
            "Makes a book of data that was taken out.",
            kFromData,
            {QStringLiteral("FOLDER")},
            runFromData},
    };
}

} // namespace wainscot::cli
