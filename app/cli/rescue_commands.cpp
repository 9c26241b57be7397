// earlier, repair: what helps when something went wrong.
#include "app/cli/command.h"
#include "app/cli/json.h"
#include "app/jobs/book_jobs.h"
#include "app/jobs/go_back.h"

#include <array>

namespace wainscot::cli {

namespace {

constexpr std::array kEarlier{
    OptionSpec{"back-to", "NAME", "make the book what it was then; undone in the window"}};
constexpr std::array kRepair{OptionSpec{"to", "NEWBOOK", "folder to make", true}};

QJsonObject toJson(const EarlierState& state)
{
    return {{QStringLiteral("name"), state.name},
        {QStringLiteral("at"), state.at.toString(Qt::ISODate)},
        {QStringLiteral("children"), state.children},
        {QStringLiteral("quotes"), state.quotes},
        {QStringLiteral("panels"), state.panels}};
}

Result<Answer> goBack(const GoBackJob& job, const JobRun& run)
{
    const auto state = job.run(run);
    if (!state)
        return state.error();
    Answer answer;
    answer.json = {{QStringLiteral("back_to"), toJson(*state)}};
    answer.lines << QStringLiteral("The book is again as it was on %1.").arg(inWords(*state))
                 << QStringLiteral("Permissions, who is in pictures and what is covered stay as "
                                   "they are today.");
    return answer;
}

Result<Answer> runEarlier(const Arguments& arguments, const JobRun& run)
{
    if (arguments.has("back-to"))
        return goBack({arguments.positional(0), arguments.value("back-to")}, run);
    const auto states = EarlierStatesJob{arguments.positional(0)}.run(run);
    if (!states)
        return states.error();
    Answer answer;
    QJsonArray all;
    for (const EarlierState& state : *states) {
        all.append(toJson(state));
        answer.lines << QStringLiteral("%1  %2").arg(state.name, inWords(state));
    }
    if (answer.lines.isEmpty())
        answer.lines << QStringLiteral("No earlier day is kept yet.");
    answer.json = {{QStringLiteral("earlier"), all}};
    return answer;
}

Result<Answer> runRepair(const Arguments& arguments, const JobRun& run)
{
    const RepairJob job{arguments.positional(0), arguments.value("to")};
    const auto outcome = job.run(run);
    if (!outcome)
        return outcome.error();
    Answer answer;
    answer.json = {{QStringLiteral("ok"), outcome->problems.isEmpty()},
        {QStringLiteral("book"), job.newFolder},
        {QStringLiteral("children"), outcome->children},
        {QStringLiteral("quotes"), outcome->quotes},
        {QStringLiteral("pictures"), outcome->pictures},
        {QStringLiteral("panels"), outcome->panels},
        {QStringLiteral("problems"), cli::toJson(outcome->problems)}};
    answer.lines = outcome->problems;
    answer.lines << QStringLiteral("%1 holds %2 children, %3 answers, %4 pictures and %5 panels.")
                        .arg(job.newFolder)
                        .arg(outcome->children)
                        .arg(outcome->quotes)
                        .arg(outcome->pictures)
                        .arg(outcome->panels);
    answer.exit = outcome->problems.isEmpty() ? kDone : kStopFinding;
    return answer;
}

} // namespace

std::vector<Command> rescueCommands()
{
    const QStringList book{QStringLiteral("BOOK")};
    return {
        {"earlier",
            "BOOK [--back-to NAME]",
            "Lists the earlier days that are kept, or goes back to one.",
            kEarlier,
            book,
            runEarlier},
        {"repair",
            "BOOK --to NEWBOOK",
            "Saves all that can be saved of a damaged book in a new one.",
            kRepair,
            book,
            runRepair},
    };
}

} // namespace wainscot::cli
