// erase: forgets a child for good.
#include "app/cli/command.h"
#include "app/cli/json.h"
#include "app/jobs/erase_job.h"
#include "app/jobs/made_files.h"
#include "app/jobs/sentences.h"
#include "core/store/book_store.h"

#include <array>

namespace wainscot::cli {

namespace {

constexpr std::array kErase{
    OptionSpec{"child", "NAME", "who is to be forgotten: the whole name", true},
    OptionSpec{"shared",
        "delete|covered",
        "pictures with other children too: all go, or those stay in which something is covered"},
};

QStringList linesFor(const EraseJob& job, const ErasePlan& plan, const QStringList& stillHeld)
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
    if (!stillHeld.isEmpty())
        lines << QStringLiteral("Delete or make anew what still holds the child: %1.")
                     .arg(listInWords(stillHeld));
    if (!plan.alsoNamedSo.isEmpty())
        lines << QStringLiteral(
            "%1 goes by the same name, so it stays in texts; look through them.")
                     .arg(listInWords(plan.alsoNamedSo));
    lines << QStringLiteral("Backups, packed books and prints made before are out of reach.");
    return lines;
}

// Asked before, because afterwards nothing knows the child.
QStringList filesThatHold(const EraseJob& job)
{
    const auto store = BookStore::open(job.folder, Access::ReadOnly);
    return store ? wainscot::filesThatHold(job.folder, (*store)->book(), job.child) : QStringList();
}

Result<Answer> runErase(const Arguments& arguments, const JobRun& run)
{
    const QString shared = arguments.value("shared");
    if (!shared.isEmpty() && shared != QLatin1String("delete")
        && shared != QLatin1String("covered"))
        return Error{ErrorCode::WrongUse,
            QStringLiteral("--shared %1").arg(shared),
            QStringLiteral("it takes \"delete\" or \"covered\"")};
    const EraseJob job{arguments.positional(0),
        arguments.value("child"),
        shared.isEmpty()                        ? SharedPictures::Ask
            : shared == QLatin1String("delete") ? SharedPictures::Delete
                                                : SharedPictures::KeepCovered};
    const QStringList stillHeld = filesThatHold(job);
    const auto plan = job.run(run);
    if (!plan)
        return plan.error();
    Answer answer;
    answer.json = {{QStringLiteral("quotes"), plan->quotes},
        {QStringLiteral("pictures"), cli::toJson(plan->pictures)},
        {QStringLiteral("kept_covered"), cli::toJson(plan->kept)},
        {QStringLiteral("pieces"), plan->pieces},
        {QStringLiteral("texts"), plan->texts},
        {QStringLiteral("take_down"), cli::toJson(plan->takeDown)},
        {QStringLiteral("made_files"), cli::toJson(stillHeld)},
        {QStringLiteral("also_named_so"), cli::toJson(plan->alsoNamedSo)}};
    answer.lines = linesFor(job, *plan, stillHeld);
    return answer;
}

} // namespace

std::vector<Command> eraseCommands()
{
    return {{"erase",
        "BOOK --child NAME [--shared delete|covered]",
        "Forgets a child: words, likeness and name, for good.",
        kErase,
        {QStringLiteral("BOOK")},
        runErase}};
}

} // namespace wainscot::cli
