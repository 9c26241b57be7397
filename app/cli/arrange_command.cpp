#include "app/cli/command.h"
#include "app/cli/json.h"
#include "app/jobs/arrange_job.h"
#include "app/jobs/why_job.h"
#include "core/base/length.h"
#include "core/base/paper_size.h"
#include "core/store/book_store.h"

#include <array>
#include <cmath>

namespace wainscot::cli {

namespace {

constexpr std::array kOptions{
    OptionSpec{"experience", "TITLE", "what the display tells of", true},
    OptionSpec{"display", "NAME", "what the display is called", true},
    OptionSpec{"audience", "AUDIENCE", "classroom, building, families or public", true},
    OptionSpec{"panel", "SIZE", "A0..A5, Letter, Legal, Tabloid, 24x36in, 600x900mm", true},
    OptionSpec{"landscape", nullptr, "the longer side across"},
    OptionSpec{"panels", "N", "how many panels (1)"},
    OptionSpec{"plan",
        "NAME",
        "days, voices, evening, drawing, thread, door, before, questions, or a template of the "
        "book"},
    OptionSpec{
        "words", "STEP", "size of the children's words: 1, 2 or 3; else what suits the plan"},
    OptionSpec{"reading-distance", "LENGTH", "from where people read; else 1.5m, up to A3 1m"},
    OptionSpec{"why", nullptr, "say what each panel is like and why"},
};

QString nameOf(engine::Obstacle obstacle)
{
    switch (obstacle) {
    case engine::Obstacle::WordTooWide:
        return QStringLiteral("word_too_wide");
    case engine::Obstacle::PictureTooFewPixels:
        return QStringLiteral("picture_too_few_pixels");
    case engine::Obstacle::TooMuchForPages:
        return QStringLiteral("too_much");
    case engine::Obstacle::PinsOverlap:
        return QStringLiteral("pins_overlap");
    case engine::Obstacle::PinsNotSliceable:
        return QStringLiteral("pins_not_sliceable");
    case engine::Obstacle::Cancelled:
        return QStringLiteral("cancelled");
    }
    return {};
}

Result<ArrangeJob> jobFrom(const Arguments& arguments)
{
    ArrangeJob job;
    job.experience = arguments.value("experience");
    job.display = arguments.value("display");
    const std::optional<Audience> audience = audienceFromName(arguments.value("audience"));
    if (!audience) {
        return Error{ErrorCode::WrongUse,
            QStringLiteral("\"%1\" is no audience; known are classroom, building, families and "
                           "public")
                .arg(arguments.value("audience")),
            {}};
    }
    job.audience = *audience;
    const Result<SizeMm> size = paperSizeFromText(arguments.value("panel"));
    if (!size)
        return size.error();
    job.panelSize = arguments.has("landscape") ? size->transposed() : *size;
    const Result<int> panels = arguments.number("panels", 1, 20, 1);
    if (!panels)
        return panels.error();
    job.panels = *panels;
    job.plan = arguments.value("plan");
    if (arguments.has("words")) {
        const Result<int> words = arguments.number("words", 1, 3, 2);
        if (!words)
            return words.error();
        job.voiceStep = *words;
    }
    if (arguments.has("reading-distance")) {
        const Result<Mm> distance = lengthFromText(arguments.value("reading-distance"));
        if (!distance)
            return distance.error();
        job.readingDistance = *distance;
    }
    return job;
}

QJsonObject toJson(const ArrangedPiece& one)
{
    const RectMm& cell = one.piece.cell;
    const bool picture = isPicture(one.piece.kind);
    return {{QStringLiteral("panel"), one.panel},
        {QStringLiteral("piece"), static_cast<qint64>(one.piece.id.number())},
        {QStringLiteral("kind"), nameOf(one.piece.kind)},
        {QStringLiteral("x_mm"), hundredths(cell.x.value())},
        {QStringLiteral("y_mm"), hundredths(cell.y.value())},
        {QStringLiteral("width_mm"), hundredths(cell.width.value())},
        {QStringLiteral("height_mm"), hundredths(cell.height.value())},
        {QStringLiteral("keep"), picture ? QJsonValue(hundredths(one.keep)) : QJsonValue()},
        {QStringLiteral("ppi"), picture ? QJsonValue(std::round(one.ppi)) : QJsonValue()}};
}

QJsonObject toJson(const Advice& advice)
{
    QJsonObject json{{QStringLiteral("kind"), nameOf(advice.kind)},
        {QStringLiteral("white_now"), hundredths(advice.whiteNow)},
        {QStringLiteral("white_then"), hundredths(advice.whiteThen)},
        {QStringLiteral("says"), advice.says}};
    if (!advice.panelSize.isEmpty())
        json[QStringLiteral("panel")] = nameOfPaper(advice.panelSize);
    if (advice.voiceStep > 0)
        json[QStringLiteral("words")] = advice.voiceStep;
    if (advice.panels > 0)
        json[QStringLiteral("panels")] = advice.panels;
    if (advice.missingMm2 > 0)
        json[QStringLiteral("missing_mm2")] = std::round(advice.missingMm2);
    return json;
}

Answer answerFor(const ArrangeOutcome& outcome)
{
    Answer answer;
    QJsonArray places;
    for (const ArrangedPiece& piece : outcome.pieces)
        places.append(toJson(piece));
    answer.json = {{QStringLiteral("display"), outcome.display.name},
        {QStringLiteral("panels"), outcome.panels},
        {QStringLiteral("pieces"), static_cast<int>(outcome.pieces.size())},
        {QStringLiteral("left_out"), cli::toJson(outcome.leftOut)},
        {QStringLiteral("arrangement"), places}};
    for (std::size_t i = 0; i < outcome.refused; ++i)
        answer.notes.append(outcome.leftOut[i].why);
    std::size_t rest = outcome.leftOut.size() - outcome.refused;
    for (const LeftOut& left : outcome.leftOut) {
        if (left.what != QLatin1String("child"))
            continue;
        answer.notes.append(left.why);
        --rest;
    }
    if (rest > 0) {
        answer.notes.append(
            QStringLiteral("%1 more quotes and pictures found no room; --json lists them.")
                .arg(rest));
    }
    for (const QString& wish : outcome.droppedWishes)
        answer.notes.append(wish);
    QJsonArray advice;
    for (const Advice& one : outcome.advice) {
        advice.append(toJson(one));
        answer.notes.append(one.says);
    }
    answer.json[QStringLiteral("plan")] = outcome.display.plan;
    answer.json[QStringLiteral("dropped_wishes")] =
        QJsonArray::fromStringList({outcome.droppedWishes.begin(), outcome.droppedWishes.end()});
    answer.json[QStringLiteral("advice")] = advice;
    if (outcome.breaks) {
        answer.json[QStringLiteral("breaks")] =
            QJsonObject{{QStringLiteral("cost"), hundredths(outcome.breaks->cost)},
                {QStringLiteral("proven"), outcome.breaks->proven()},
                {QStringLiteral("panels_tried"), outcome.breaks->laidOut}};
    }
    answer.lines.append(
        QStringLiteral("%1: %2 pieces on %3 %4; %5 left out.")
            .arg(outcome.display.name)
            .arg(outcome.pieces.size())
            .arg(outcome.panels)
            .arg(outcome.panels == 1 ? QStringLiteral("panel") : QStringLiteral("panels"))
            .arg(outcome.leftOut.size()));
    return answer;
}

Answer answerFor(const ArrangeFailure& failure, const QString& display)
{
    Answer answer;
    answer.exit = kStopFinding;
    answer.notes.append(failure.says);
    answer.json = {{QStringLiteral("display"), display},
        {QStringLiteral("panels"), 0},
        {QStringLiteral("pieces"), 0},
        {QStringLiteral("left_out"), QJsonArray()},
        {QStringLiteral("arrangement"), QJsonArray()},
        {QStringLiteral("failure"),
            QJsonObject{{QStringLiteral("what"), nameOf(failure.what)},
                {QStringLiteral("panel"), failure.panel},
                {QStringLiteral("missing_mm2"), std::round(failure.missingMm2)},
                {QStringLiteral("says"), failure.says}}}};
    return answer;
}

// What each panel is like and why, as sentences and under the key "why".
Result<> addReasons(const Book& book, DisplayId display, const JobRun& run, Answer& answer)
{
    QJsonArray panels;
    for (const Panel* panel : panelsOf(book, display)) {
        const Result<WhyOutcome> why = WhyJob{panel->id, {}}.run(book, run);
        if (!why)
            return why.error();
        answer.lines.append(why->says);
        panels.append(QJsonObject{{QStringLiteral("panel"), panel->number},
            {QStringLiteral("says"), QJsonArray::fromStringList(why->says)}});
    }
    answer.json[QStringLiteral("why")] = panels;
    return Done{};
}

Result<Answer> runArrange(const Arguments& arguments, const JobRun& run)
{
    const Result<ArrangeJob> job = jobFrom(arguments);
    if (!job)
        return job.error();
    auto store = BookStore::open(arguments.positional(0));
    if (!store)
        return store.error();
    const auto outcome = job->run((*store)->book(), run);
    if (!outcome)
        return outcome.error();
    if (const auto* failure = std::get_if<ArrangeFailure>(&*outcome))
        return answerFor(*failure, job->display);
    const auto& arranged = std::get<ArrangeOutcome>(*outcome);
    if (const Result<> kept = (*store)->history().perform(arranged.edit); !kept)
        return kept.error();
    Answer answer = answerFor(arranged);
    if (arguments.has("why")) {
        if (const Result<> told = addReasons((*store)->book(), arranged.display.id, run, answer);
            !told)
            return told.error();
    }
    return answer;
}

} // namespace

std::vector<Command> arrangeCommands()
{
    return {{"arrange",
        "BOOK --experience TITLE --display NAME --audience AUDIENCE --panel SIZE\n"
        "       [--landscape] [--panels N] [--plan NAME] [--words STEP] [--reading-distance 1.5m] "
        "[--why]",
        "Proposes the panels of a display; what is pinned stays.",
        kOptions,
        {QStringLiteral("BOOK")},
        runArrange}};
}

} // namespace wainscot::cli
