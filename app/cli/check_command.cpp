#include "app/cli/command.h"
#include "app/cli/json.h"
#include "app/jobs/check_job.h"
#include "core/store/book_store.h"

#include <array>

namespace wainscot::cli {

namespace {

constexpr std::array kOptions{OptionSpec{"display", "NAME", "which display", true}};

QString lineFor(const Finding& finding)
{
    const QString where = finding.panel > 0 ? QStringLiteral("panel %1").arg(finding.panel)
                                            : QStringLiteral("display");
    return QStringLiteral("%1  %2  %3  (%4; %5)")
        .arg(nameOf(finding.severity), -4)
        .arg(where, finding.says, finding.rule, finding.source);
}

Result<Answer> runCheck(const Arguments& arguments, const JobRun& run)
{
    auto store = BookStore::open(arguments.positional(0), Access::ReadOnly);
    if (!store)
        return store.error();
    const auto outcome = CheckJob{arguments.value("display")}.run((*store)->book(), run);
    if (!outcome)
        return outcome.error();
    Answer answer;
    QJsonArray findings;
    for (const Finding& finding : outcome->findings) {
        findings.append(toJson(finding));
        answer.lines.append(lineFor(finding));
    }
    answer.json = {
        {QStringLiteral("display"), outcome->display}, {QStringLiteral("findings"), findings}};
    if (outcome->findings.empty())
        answer.lines.append(QStringLiteral("Nothing to remark."));
    answer.exit = outcome->mustStop() ? kStopFinding : kDone;
    return answer;
}

} // namespace

std::vector<Command> checkCommands()
{
    return {{"check",
        "BOOK --display NAME",
        "Measures a display against the limits of reading, of paper and of what families allowed.",
        kOptions,
        {QStringLiteral("BOOK")},
        runCheck}};
}

} // namespace wainscot::cli
