// erase: forgets a child for good.
#include "app/cli/command.h"
#include "app/cli/json.h"
#include "app/jobs/erase_job.h"
#include "app/jobs/sentences.h"

#include <array>

namespace wainscot::cli {

namespace {

constexpr std::array kErase{
    OptionSpec{"child", "NAME", "who is to be forgotten: the whole name", true},
    OptionSpec{"shared", "delete", "pictures that show other children too go as well"},
};

QStringList linesFor(const EraseJob& job, const ErasePlan& plan)
{
    QStringList lines{QStringLiteral("%1 is erased: %2 answers, %3 pictures, %4 pieces on panels; "
                                     "%5 texts no longer have the name.")
                          .arg(job.child)
                          .arg(plan.quotes)
                          .arg(plan.pictures.size())
                          .arg(plan.pieces)
                          .arg(plan.texts)};
    if (!plan.takeDown.isEmpty())
        lines << QStringLiteral("Take down what hangs: %1.").arg(listInWords(plan.takeDown));
    if (!plan.alsoNamedSo.isEmpty())
        lines << QStringLiteral(
            "%1 goes by the same name, so it stays in texts; look through them.")
                     .arg(listInWords(plan.alsoNamedSo));
    lines << QStringLiteral("Backups, packed books and prints made before are out of reach.");
    return lines;
}

Result<Answer> runErase(const Arguments& arguments, const JobRun& run)
{
    const QString shared = arguments.value("shared");
    if (!shared.isEmpty() && shared != QLatin1String("delete"))
        return Error{ErrorCode::WrongUse,
            QStringLiteral("--shared %1").arg(shared),
            QStringLiteral("it takes \"delete\"")};
    const EraseJob job{arguments.positional(0), arguments.value("child"), !shared.isEmpty()};
    const auto plan = job.run(run);
    if (!plan)
        return plan.error();
    Answer answer;
    answer.json = {{QStringLiteral("quotes"), plan->quotes},
        {QStringLiteral("pictures"), cli::toJson(plan->pictures)},
        {QStringLiteral("pieces"), plan->pieces},
        {QStringLiteral("texts"), plan->texts},
        {QStringLiteral("take_down"), cli::toJson(plan->takeDown)},
        {QStringLiteral("also_named_so"), cli::toJson(plan->alsoNamedSo)}};
    answer.lines = linesFor(job, *plan);
    return answer;
}

} // namespace

std::vector<Command> eraseCommands()
{
    return {{"erase",
        "BOOK --child NAME [--shared delete]",
        "Forgets a child: words, likeness and name, for good.",
        kErase,
        {QStringLiteral("BOOK")},
        runErase}};
}

} // namespace wainscot::cli
