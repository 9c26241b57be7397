#include "app/cli/command.h"
#include "app/cli/json.h"
#include "app/cli/sheet_options.h"
#include "app/jobs/check_job.h"
#include "app/jobs/kept_limits.h"
#include "core/store/book_store.h"

#include <array>

namespace wainscot::cli {

namespace {

constexpr std::array kOptions{
    OptionSpec{"display", "NAME", "which display; may be left out with --limits"},
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

// "type.voice=22,words.level=6", on top of what was set on this computer.
Result<check::Limits> limitsFrom(const Arguments& arguments)
{
    check::Limits limits = keptLimits();
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

// "2 limits are as set on this computer: line.voice 12, words.level 6."
QString keptInWords(const check::Limits& kept)
{
    QStringList each;
    for (const auto& [limit, value] : kept.own())
        each << QStringLiteral("%1 %2").arg(QLatin1String(check::limitOf(limit).rule)).arg(value);
    const QString count = each.size() == 1 ? QStringLiteral("1 limit is")
                                           : QStringLiteral("%1 limits are").arg(each.size());
    return QStringLiteral("%1 as set on this computer: %2.")
        .arg(count, each.join(QStringLiteral(", ")));
}

QString lineFor(const Finding& finding)
{
    const QString where = finding.panel > 0 ? QStringLiteral("panel %1").arg(finding.panel)
                                            : QStringLiteral("display");
    return QStringLiteral("%1  %2  %3  (%4; %5)")
        .arg(nameOf(finding.severity), -4)
        .arg(where, finding.says, finding.rule, finding.source);
}

// A display against the limits.
Result<Answer> measured(const Arguments& arguments, const check::Limits& limits, const JobRun& run)
{
    const auto sheets = maybeSheets(arguments);
    if (!sheets)
        return sheets.error();
    auto store = BookStore::open(arguments.positional(0), Access::ReadOnly);
    if (!store)
        return store.error();
    const CheckJob job{arguments.value("display"), limits, *sheets};
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
    answer.exit = outcome->mustStop() ? kStopFinding : kDone;
    return answer;
}

Result<Answer> runCheck(const Arguments& arguments, const JobRun& run)
{
    const Result<check::Limits> limits = limitsFrom(arguments);
    if (!limits)
        return limits.error();
    if (!arguments.has("display") && (!arguments.has("limits") || arguments.has("sheets")))
        return wrongUse(QStringLiteral("Say with --display what is to be measured"));
    Result<Answer> answer =
        arguments.has("display") ? measured(arguments, *limits, run) : Result<Answer>(Answer{});
    if (!answer)
        return answer;
    if (arguments.has("limits"))
        addLimits(*answer, *limits);
    if (const check::Limits kept = keptLimits(); !kept.own().empty())
        answer->notes.append(keptInWords(kept));
    return answer;
}

} // namespace

std::vector<Command> checkCommands()
{
    return {{"check",
        "BOOK --display NAME [--limit RULE=VALUE,...] [--limits]\n"
        "       [--sheets PAPER [--overlap 10mm] [--margin 7mm]]\n"
        "       wainscot-cli check BOOK --limits",
        "Measures a display against the limits of reading, of paper and of what families allowed.",
        kOptions,
        {QStringLiteral("BOOK")},
        runCheck}};
}

} // namespace wainscot::cli
