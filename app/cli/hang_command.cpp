#include "app/cli/command.h"
#include "app/cli/json.h"
#include "app/jobs/hang_job.h"
#include "app/jobs/kept_limits.h"
#include "app/jobs/wall_plan.h"
#include "core/base/length.h"
#include "core/store/book_store.h"

#include <QRegularExpression>

#include <algorithm>
#include <array>

namespace wainscot::cli {

namespace {

constexpr std::array kOptions{
    OptionSpec{"display", "NAME", "which display; may be left out with a wall of the book"},
    OptionSpec{"wall", "WALL", "a bare wall, 6000x2700mm, or the name of one in the book", true},
    OptionSpec{"stands-out",
        "LENGTH",
        "how far what hangs stands out (default: 10mm, or as set in the window)"},
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

void addPanel(Answer& answer, QJsonArray& panels, const ProposedPlace& hung, const SizeMm& wall)
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

const Wall* wallCalled(const Book& book, const QString& name)
{
    for (const auto& [id, wall] : book.walls.rows()) {
        if (wall.name.compare(name.trimmed(), Qt::CaseInsensitive) == 0)
            return &wall;
    }
    return nullptr;
}

// "1850 mm (72 7/8 in)"
QString bothWays(Mm length)
{
    return QStringLiteral("%1 mm (%2)").arg(length.value(), 0, 'f', 0).arg(inchesInWords(length));
}

void addLine(Answer& answer, QJsonArray& panels, const Book& book, const HangingLine& line)
{
    QJsonArray nails;
    QStringList lefts;
    for (const Nail& nail : line.nails()) {
        nails.append(QJsonObject{{QStringLiteral("left_mm"), hundredths(nail.left.value())},
            {QStringLiteral("up_mm"), hundredths(nail.up.value())}});
        lefts << bothWays(nail.left);
    }
    panels.append(QJsonObject{{QStringLiteral("panel"), book.panels.find(line.panel)->number},
        {QStringLiteral("name"), line.name},
        {QStringLiteral("left_mm"), hundredths(line.left().value())},
        {QStringLiteral("right_mm"), hundredths(line.right().value())},
        {QStringLiteral("bottom_mm"), hundredths(line.bottom.value())},
        {QStringLiteral("centre_mm"), hundredths(line.middle().value())},
        {QStringLiteral("top_mm"), hundredths(line.top.value())},
        {QStringLiteral("nails"), nails}});
    answer.lines.append(
        QStringLiteral("%1  %2 from the left, lower edge %3, upper edge %4")
            .arg(line.name, bothWays(line.left()), bothWays(line.bottom), bothWays(line.top)));
    answer.lines.append(
        QStringLiteral("    nails %1 up, %2 from the left")
            .arg(bothWays(line.nails().front().up), lefts.join(QStringLiteral(" and "))));
}

void addFindings(Answer& answer, const std::vector<Finding>& findings)
{
    QJsonArray all;
    for (const Finding& finding : findings) {
        all.append(toJson(finding));
        const QString where =
            finding.panel > 0 ? QStringLiteral("panel %1: ").arg(finding.panel) : QString();
        answer.lines.append(
            QStringLiteral("%1  %2%3  (%4)")
                .arg(nameOf(finding.severity), where, finding.says, finding.source));
    }
    answer.json[QStringLiteral("findings")] = all;
}

Result<Mm> standOutFrom(const Arguments& arguments)
{
    return arguments.has("stands-out") ? lengthFromText(arguments.value("stands-out"))
                                       : Result<Mm>(keptStandOut());
}

void noteStandOut(const Arguments& arguments, Mm standsOut, Answer& answer)
{
    if (!arguments.has("stands-out") && standsOut != kUsualStandOut)
        answer.notes.append(QStringLiteral("Panels stand out %1 mm, as set on this computer.")
                                .arg(standsOut.value()));
}

// A wall of the book as it hangs, or with the panels of a display as they would be proposed. The
// book stays as it is.
Result<Answer> runOnKeptWall(const Arguments& arguments, const Book& book)
{
    const Wall* kept = wallCalled(book, arguments.value("wall"));
    if (kept == nullptr) {
        return Error{ErrorCode::NotFound,
            QStringLiteral("The wall \"%1\"").arg(arguments.value("wall")),
            QStringLiteral("it is no size such as 6000x2700mm, and no wall of this book")};
    }
    const Result<Mm> standsOut = standOutFrom(arguments);
    if (!standsOut)
        return standsOut.error();
    Wall wall = *kept;
    if (arguments.has("display")) {
        const Display* display = displayByName(book, arguments.value("display"));
        if (display == nullptr) {
            return Error{ErrorCode::NotFound,
                QStringLiteral("The display \"%1\"").arg(arguments.value("display")),
                QStringLiteral("this book has no display of that name")};
        }
        wall = withProposedPlaces(book, wall, display->id);
    }
    const WallPlan plan = planOf(book, wall, *standsOut);
    Answer answer;
    QJsonArray panels;
    for (const HangingLine& line : plan.list)
        addLine(answer, panels, book, line);
    answer.json = {{QStringLiteral("wall"), wall.name},
        {QStringLiteral("panels"), panels},
        {QStringLiteral("covered_share"), plan.coveredShare},
        {QStringLiteral("limit"), plan.limit.share},
        {QStringLiteral("limit_source"), QString::fromUtf8(plan.limit.source)}};
    addFindings(answer, plan.findings);
    noteStandOut(arguments, *standsOut, answer);
    return answer;
}

Result<Answer> runOnBareWall(const Arguments& arguments, const JobRun& run)
{
    if (!arguments.has("display")) {
        return Error{ErrorCode::WrongUse,
            QStringLiteral("A bare wall"),
            QStringLiteral("say with --display what is to hang there")};
    }
    const Result<HangJob> job = jobFrom(arguments);
    const Result<Mm> standsOut = standOutFrom(arguments);
    if (!job || !standsOut)
        return job ? standsOut.error() : job.error();
    auto store = BookStore::open(arguments.positional(0), Access::ReadOnly);
    if (!store)
        return store.error();
    auto outcome = job->run((*store)->book(), run);
    if (!outcome)
        return outcome.error();
    Answer answer;
    QJsonArray panels;
    for (const ProposedPlace& hung : outcome->panels) {
        addPanel(answer, panels, hung, job->wallSize);
        if (!hung.place)
            continue;
        HangingLine line;
        line.name = QStringLiteral("%1, panel %2").arg(job->display).arg(hung.panel);
        line.bottom = job->wallSize.height - hung.place->bottom();
        line.top = job->wallSize.height - hung.place->y;
        if (const auto walkedInto = protrusionOf(line, hung.panel, *standsOut))
            outcome->findings.push_back(*walkedInto);
    }
    answer.json = {{QStringLiteral("panels"), panels},
        {QStringLiteral("covered_share"), outcome->coveredShare},
        {QStringLiteral("limit"), outcome->limit.share},
        {QStringLiteral("limit_source"), QString::fromUtf8(outcome->limit.source)}};
    addFindings(answer, outcome->findings);
    noteStandOut(arguments, *standsOut, answer);
    return answer;
}

Result<Answer> runHang(const Arguments& arguments, const JobRun& run)
{
    if (wallFromText(arguments.value("wall")))
        return runOnBareWall(arguments, run);
    for (const char* one : {"viewers", "ages", "limit"}) {
        if (arguments.has(one)) {
            return Error{ErrorCode::WrongUse,
                QStringLiteral("--%1").arg(QLatin1String(one)),
                QStringLiteral("a wall of the book has its own; a bare one is 6000x2700mm")};
        }
    }
    auto store = BookStore::open(arguments.positional(0), Access::ReadOnly);
    if (!store)
        return store.error();
    return runOnKeptWall(arguments, (*store)->book());
}

} // namespace

std::vector<Command> hangCommands()
{
    return {{"hang",
        "BOOK --display NAME --wall 6000x2700mm [--viewers WHO] [--ages 4-6] [--limit PRESET]",
        "Proposes where panels hang on a bare wall or one of the book, and measures how much of it "
        "they cover.",
        kOptions,
        {QStringLiteral("BOOK")},
        runHang}};
}

} // namespace wainscot::cli
