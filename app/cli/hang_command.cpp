#include "app/cli/command.h"
#include "app/cli/json.h"
#include "app/jobs/hang_job.h"
#include "core/base/length.h"
#include "core/store/book_store.h"

#include <QRegularExpression>

#include <algorithm>
#include <array>

namespace wainscot::cli {

namespace {

constexpr std::array kOptions{
    OptionSpec{"display", "NAME", "which display", true},
    OptionSpec{"wall", "SIZE", "width x height: 6000x2700mm", true},
    OptionSpec{"viewers", "WHO", "children, adults or both (default: both)"},
    OptionSpec{"ages", "FROM-TO", "ages of the children, 3 to 12 (default: 4-6)"},
    OptionSpec{"limit", "PRESET", "share of a wall: 5, 10, 20, 20-corridor, 50 (default: 20)"},
};
constexpr int kYoungest = 3;
constexpr int kOldest = 12;

Result<SizeMm> wallFromText(const QString& text)
{
    static const QRegularExpression form(
        QStringLiteral("^([0-9.,]+)\\s*[x\u00d7]\\s*([0-9.,]+)\\s*(mm|cm|m|in)$"));
    const auto match = form.match(text.trimmed().toLower());
    const Error wrong{ErrorCode::WrongUse,
        QStringLiteral("The wall \"%1\"").arg(text),
        QStringLiteral("write width x height and the unit: 6000x2700mm or 6x2.7m")};
    if (!match.hasMatch())
        return wrong;
    const Result<Mm> width = lengthFromText(match.captured(1) + match.captured(3));
    const Result<Mm> height = lengthFromText(match.captured(2) + match.captured(3));
    if (!width || !height || *width <= Mm(0) || *height <= Mm(0))
        return wrong;
    return SizeMm{*width, *height};
}

Result<Viewers> viewersFromText(const QString& text)
{
    if (text.isEmpty() || text == QLatin1String("both"))
        return Viewers::Both;
    if (text == QLatin1String("children"))
        return Viewers::Children;
    if (text == QLatin1String("adults"))
        return Viewers::GrownUps;
    return Error{ErrorCode::WrongUse,
        QStringLiteral("The viewers \"%1\"").arg(text),
        QStringLiteral("they are children, adults or both")};
}

// Ages into the job; WrongUse unless two whole years in order.
Result<HangJob> withAges(HangJob job, const QString& text)
{
    if (text.isEmpty())
        return job;
    static const QRegularExpression form(QStringLiteral("^(\\d{1,2})-(\\d{1,2})$"));
    const auto match = form.match(text.trimmed());
    job.youngest = match.captured(1).toInt();
    job.oldest = match.captured(2).toInt();
    if (!match.hasMatch() || job.youngest < kYoungest || job.oldest > kOldest
        || job.youngest > job.oldest) {
        return Error{ErrorCode::WrongUse,
            QStringLiteral("The ages \"%1\"").arg(text),
            QStringLiteral("write two years from 3 to 12: 4-6")};
    }
    return job;
}

Result<HangJob> jobFrom(const Arguments& arguments)
{
    HangJob job;
    job.display = arguments.value("display");
    if (arguments.has("limit"))
        job.limit = arguments.value("limit");
    const Result<SizeMm> wall = wallFromText(arguments.value("wall"));
    if (!wall)
        return wall.error();
    job.wallSize = *wall;
    const Result<Viewers> viewers = viewersFromText(arguments.value("viewers"));
    if (!viewers)
        return viewers.error();
    job.viewers = *viewers;
    const auto limits = wall::coverLimits();
    if (std::none_of(limits.begin(), limits.end(), [&](const wall::CoverLimit& one) {
            return job.limit == QLatin1String(one.name);
        }))
        return Error{ErrorCode::WrongUse,
            QStringLiteral("The limit \"%1\"").arg(job.limit),
            QStringLiteral("it is 5, 10, 20, 20-corridor or 50")};
    return withAges(job, arguments.value("ages"));
}

void addPanel(Answer& answer, QJsonArray& panels, const HungPanel& hung, const SizeMm& wall)
{
    if (!hung.place) {
        panels.append(QJsonObject{{QStringLiteral("panel"), hung.panel},
            {QStringLiteral("left_mm"), QJsonValue::Null},
            {QStringLiteral("bottom_mm"), QJsonValue::Null},
            {QStringLiteral("centre_mm"), QJsonValue::Null}});
        return;
    }
    const Mm bottom = wall.height - hung.place->bottom();
    const Mm centre = bottom + hung.place->height / 2;
    panels.append(QJsonObject{{QStringLiteral("panel"), hung.panel},
        {QStringLiteral("left_mm"), hundredths(hung.place->x.value())},
        {QStringLiteral("bottom_mm"), hundredths(bottom.value())},
        {QStringLiteral("centre_mm"), hundredths(centre.value())}});
    answer.lines.append(QStringLiteral("panel %1  %2 mm from the left, %3 mm from the floor, "
                                       "centre at %4 mm")
                            .arg(hung.panel)
                            .arg(hung.place->x.value(), 0, 'f', 0)
                            .arg(bottom.value(), 0, 'f', 0)
                            .arg(centre.value(), 0, 'f', 0));
}

Result<Answer> runHang(const Arguments& arguments, const JobRun& run)
{
    const Result<HangJob> job = jobFrom(arguments);
    if (!job)
        return job.error();
    auto store = BookStore::open(arguments.positional(0), Access::ReadOnly);
    if (!store)
        return store.error();
    const auto outcome = job->run((*store)->book(), run);
    if (!outcome)
        return outcome.error();
    Answer answer;
    QJsonArray panels;
    for (const HungPanel& hung : outcome->panels)
        addPanel(answer, panels, hung, job->wallSize);
    QJsonArray findings;
    for (const Finding& finding : outcome->findings) {
        findings.append(toJson(finding));
        const QString where =
            finding.panel > 0 ? QStringLiteral("panel %1: ").arg(finding.panel) : QString();
        answer.lines.append(
            QStringLiteral("%1  %2%3  (%4)")
                .arg(nameOf(finding.severity), where, finding.says, finding.source));
    }
    answer.json = {{QStringLiteral("panels"), panels},
        {QStringLiteral("covered_share"), outcome->coveredShare},
        {QStringLiteral("limit"), outcome->limit.share},
        {QStringLiteral("limit_source"), QString::fromUtf8(outcome->limit.source)},
        {QStringLiteral("findings"), findings}};
    return answer;
}

} // namespace

std::vector<Command> hangCommands()
{
    return {{"hang",
        "BOOK --display NAME --wall 6000x2700mm [--viewers WHO] [--ages 4-6] [--limit PRESET]",
        "Proposes where panels hang on a bare wall, and measures how much of it they cover.",
        kOptions,
        {QStringLiteral("BOOK")},
        runHang}};
}

} // namespace wainscot::cli
