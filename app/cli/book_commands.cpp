// new, show, verify, sample: a book as a whole.
#include "app/cli/command.h"
#include "app/cli/json.h"
#include "app/jobs/book_jobs.h"
#include "app/jobs/show_job.h"
#include "core/base/paper_size.h"
#include "core/store/book_store.h"

#include <array>

namespace wainscot::cli {

namespace {

constexpr std::array kNewOptions{OptionSpec{"title", "TEXT", "what the book is called", true},
    OptionSpec{"language", "CODE", "its language (BCP 47): en, es, pt-BR ... (en)"}};
constexpr std::array kSampleOptions{
    OptionSpec{"seed", "N", "another seed draws other pictures (1)"},
    OptionSpec{"children", "N", "an invented class of this many (the class of fourteen)"},
    OptionSpec{"photos", "N", "this many photos (as many as the class has)"},
};

const QStringList kBook{QStringLiteral("BOOK")};

Result<Answer> runNew(const Arguments& arguments, const JobRun& run)
{
    NewBookJob job{arguments.positional(0), arguments.value("title")};
    if (arguments.has("language"))
        job.language = arguments.value("language");
    if (const Result<> made = job.run(run); !made)
        return made.error();
    Answer answer;
    answer.json = {
        {QStringLiteral("book"), job.folder}, {QStringLiteral("title"), job.title.simplified()}};
    answer.lines.append(QStringLiteral("Made the book \"%1\" in %2.").arg(job.title, job.folder));
    return answer;
}

QJsonObject toJson(const Child& child)
{
    return {{QStringLiteral("name"), child.name},
        {QStringLiteral("shown_as"), displayName(child)},
        {QStringLiteral("born"), child.born ? QJsonValue(textOf(*child.born)) : QJsonValue()}};
}

QJsonObject toJson(const ExperienceSummary& summary)
{
    QJsonArray missing;
    for (const NotYetHeard& one : summary.notYetHeard)
        missing.append(QJsonObject{{QStringLiteral("child"), one.child},
            {QStringLiteral("prompts"), cli::toJson(one.prompts)}});
    return {{QStringLiteral("title"), summary.title},
        {QStringLiteral("on"), cli::toJson(summary.on)},
        {QStringLiteral("quotes"), summary.quotes},
        {QStringLiteral("photos"), summary.photos},
        {QStringLiteral("not_yet_heard"), missing}};
}

QJsonObject toJson(const DisplaySummary& summary)
{
    return {{QStringLiteral("name"), summary.name},
        {QStringLiteral("experience"), summary.experience},
        {QStringLiteral("audience"), nameOf(summary.audience)},
        {QStringLiteral("width_mm"), hundredths(summary.panelSize.width.value())},
        {QStringLiteral("height_mm"), hundredths(summary.panelSize.height.value())},
        {QStringLiteral("panels"), summary.panels}};
}

QStringList linesFor(const ShowOutcome& outcome)
{
    QStringList lines{outcome.title};
    lines.append(QStringLiteral("%1 children").arg(outcome.children.size()));
    for (const ExperienceSummary& one : outcome.experiences) {
        lines.append(QStringLiteral("%1: %2 quotes, %3 pictures")
                         .arg(one.title)
                         .arg(one.quotes)
                         .arg(one.photos));
        for (const NotYetHeard& missing : one.notYetHeard) {
            lines.append(QStringLiteral("  not yet heard: %1 (%2)")
                             .arg(missing.child, missing.prompts.join(QStringLiteral(", "))));
        }
    }
    for (const DisplaySummary& one : outcome.displays) {
        lines.append(QStringLiteral("%1: %2 x %3, for %4")
                         .arg(one.name)
                         .arg(one.panels)
                         .arg(nameOfPaper(one.panelSize), nameOf(one.audience)));
    }
    return lines;
}

Result<Answer> runShow(const Arguments& arguments, const JobRun& run)
{
    auto store = BookStore::open(arguments.positional(0), Access::ReadOnly);
    if (!store)
        return store.error();
    const Result<ShowOutcome> outcome = ShowJob{}.run((*store)->book(), run);
    if (!outcome)
        return outcome.error();
    QJsonArray children;
    QJsonArray experiences;
    QJsonArray displays;
    for (const Child& child : outcome->children)
        children.append(toJson(child));
    for (const ExperienceSummary& experience : outcome->experiences)
        experiences.append(toJson(experience));
    for (const DisplaySummary& display : outcome->displays)
        displays.append(toJson(display));
    Answer answer;
    answer.json = {{QStringLiteral("title"), outcome->title},
        {QStringLiteral("children"), children},
        {QStringLiteral("experiences"), experiences},
        {QStringLiteral("displays"), displays}};
    answer.lines = linesFor(*outcome);
    return answer;
}

Result<Answer> runVerify(const Arguments& arguments, const JobRun& run)
{
    const Result<VerifyOutcome> outcome = VerifyJob{arguments.positional(0)}.run(run);
    if (!outcome)
        return outcome.error();
    Answer answer;
    answer.json = {{QStringLiteral("ok"), outcome->ok()},
        {QStringLiteral("pictures"), outcome->pictures},
        {QStringLiteral("problems"), cli::toJson(outcome->problems)}};
    answer.lines = outcome->problems;
    answer.lines.append(outcome->ok()
            ? QStringLiteral("The book is whole; %1 pictures are as they came.")
                  .arg(outcome->pictures)
            : QStringLiteral("%1 problems; %2 pictures looked at.")
                  .arg(outcome->problems.size())
                  .arg(outcome->pictures));
    answer.exit = outcome->ok() ? kDone : kStopFinding;
    return answer;
}

Result<Answer> runSample(const Arguments& arguments, const JobRun& run)
{
    const Result<int> seed = arguments.number("seed", 0, 1'000'000'000, 1);
    const Result<int> children = arguments.number("children", 1, 1000, 0);
    const Result<int> photos = arguments.number("photos", 1, 10'000, 0);
    for (const Result<int>* number : {&seed, &children, &photos}) {
        if (!*number)
            return number->error();
    }
    SampleJob job;
    job.folder = arguments.positional(0);
    job.seed = static_cast<unsigned>(*seed);
    job.children = *children;
    job.photos = *photos;
    const Result<SampleOutcome> outcome = job.run(run);
    if (!outcome)
        return outcome.error();
    Answer answer;
    answer.json = {{QStringLiteral("book"), outcome->book},
        {QStringLiteral("files"), cli::toJson(outcome->files)},
        {QStringLiteral("children"), outcome->children},
        {QStringLiteral("quotes"), outcome->quotes},
        {QStringLiteral("pictures"), outcome->pictures}};
    answer.lines.append(QStringLiteral("The sample class is in %1: %2 children, %3 quotes, %4 "
                                       "pictures.")
                            .arg(outcome->book)
                            .arg(outcome->children)
                            .arg(outcome->quotes)
                            .arg(outcome->pictures));
    return answer;
}

} // namespace

std::vector<Command> bookCommands()
{
    return {
        {"new",
            "BOOK --title TEXT [--language CODE]",
            "Makes an empty book.",
            kNewOptions,
            kBook,
            runNew},
        {"show",
            "BOOK",
            "Tells what a book holds and whose words are missing.",
            {},
            kBook,
            runShow},
        {"verify",
            "BOOK",
            "Compares every picture with its name and checks the database.",
            {},
            kBook,
            runVerify},
        {"sample",
            "FOLDER [--seed N] [--children N] [--photos N]",
            "Makes an invented class: lists, pictures, and a book of them.",
            kSampleOptions,
            {QStringLiteral("FOLDER")},
            runSample},
    };
}

} // namespace wainscot::cli
