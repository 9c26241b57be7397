#include "app/cli/command.h"
#include "app/cli/json.h"
#include "app/cli/sheet_options.h"
#include "app/jobs/check_job.h"
#include "core/store/book_store.h"

#include <array>

namespace wainscot::cli {

namespace {

constexpr std::array kOptions{
    OptionSpec{"display", "NAME", "which display", true},
    OptionSpec{"limit", "RULE=VALUE", "a limit of your own; several with commas between"},
    OptionSpec{"limits", nullptr, "list every limit with its value, unit and source"},
    OptionSpec{"sheets", "PAPER", "look at the seams on this paper too: A4, Letter ..."},
    OptionSpec{"overlap", "LENGTH", "of neighbouring sheets (10mm)"},
    OptionSpec{"margin", "LENGTH", "edge that the printer cannot reach (7mm)"},
};

Error wrongUse(const QString& says)
{
    return {ErrorCode::WrongUse, says, {}};
}

// "type.voice=22,words.level=6"
Result<check::Limits> limitsFrom(const Arguments& arguments)
{
    check::Limits limits;
    const QStringList set = arguments.value("limit").split(u',', Qt::SkipEmptyParts);
    for (const QString& one : set) {
        const QString rule = one.section(u'=', 0, 0).trimmed();
        bool isNumber = false;
        const double value = one.section(u'=', 1).trimmed().toDouble(&isNumber);
        const check::LimitRow* row = check::limitCalled(rule);
        if (row == nullptr || !isNumber || !limits.set(row->limit, value)) {
            return wrongUse(QStringLiteral("\"%1\" sets no limit; check --limits lists those that "
                                           "can be set, for example type.voice=22")
                                .arg(one));
        }
    }
    return limits;
}

Result<std::optional<SheetWishes>> maybeSheets(const Arguments& arguments)
{
    if (!arguments.has("sheets")) {
        if (arguments.has("overlap") || arguments.has("margin"))
            return wrongUse(QStringLiteral("--overlap and --margin belong to --sheets"));
        return std::optional<SheetWishes>();
    }
    Result<SheetWishes> sheets = sheetsFrom(arguments);
    if (!sheets)
        return sheets.error();
    return std::optional(std::move(sheets).value());
}

void addLimits(Answer& answer, const check::Limits& limits)
{
    QJsonArray rows;
    for (const check::LimitRow& row : check::allLimits()) {
        const double value = limits.of(row.limit);
        rows.append(QJsonObject{{QStringLiteral("rule"), QString::fromLatin1(row.rule)},
            {QStringLiteral("name"), QString::fromLatin1(check::nameOf(row.limit))},
            {QStringLiteral("severity"), nameOf(row.severity)},
            {QStringLiteral("limit"), value},
            {QStringLiteral("unit"), QString::fromLatin1(row.unit)},
            {QStringLiteral("source"), QString::fromLatin1(row.source)},
            {QStringLiteral("can_be_set"), check::isMeasure(row)}});
        answer.lines.append(QStringLiteral("%1  %2  %3 %4  (%5)")
                                .arg(QLatin1String(row.rule), -20)
                                .arg(QLatin1String(check::nameOf(row.limit)))
                                .arg(value)
                                .arg(QLatin1String(row.unit), QLatin1String(row.source)));
    }
    answer.json.insert(QStringLiteral("limits"), rows);
}

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
    const Result<check::Limits> limits = limitsFrom(arguments);
    if (!limits)
        return limits.error();
    const auto sheets = maybeSheets(arguments);
    if (!sheets)
        return sheets.error();
    auto store = BookStore::open(arguments.positional(0), Access::ReadOnly);
    if (!store)
        return store.error();
    const CheckJob job{arguments.value("display"), *limits, *sheets};
    const auto outcome = job.run((*store)->book(), run);
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
    if (arguments.has("limits"))
        addLimits(answer, *limits);
    answer.exit = outcome->mustStop() ? kStopFinding : kDone;
    return answer;
}

} // namespace

std::vector<Command> checkCommands()
{
    return {{"check",
        "BOOK --display NAME [--limit RULE=VALUE,...] [--limits]\n"
        "       [--sheets PAPER [--overlap 10mm] [--margin 7mm]]",
        "Measures a display against the limits of reading, of paper and of what families allowed.",
        kOptions,
        {QStringLiteral("BOOK")},
        runCheck}};
}

} // namespace wainscot::cli
