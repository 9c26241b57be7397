#include "app/cli/command.h"
#include "app/cli/json.h"
#include "app/jobs/gather.h"
#include "app/jobs/gather_common.h"
#include "app/jobs/gather_files.h"
#include "core/store/book_store.h"

#include <array>

namespace wainscot::cli {

namespace {

constexpr std::array kOptions{
    OptionSpec{"children", "FILE.csv", "a class list with permissions"},
    OptionSpec{"experience", "TITLE", "what the words or pictures belong to"},
    OptionSpec{"on", "YYYY-MM-DD", "the day it began; of a wall's photo, the day it hung so"},
    OptionSpec{"quotes", "FILE.csv", "children's words"},
    OptionSpec{"photos",
        "FOLDER",
        "pictures and scanned PDFs, with a photos.csv if there is one; or a single file"},
    OptionSpec{"wall-photo", "FILE", "a display as it really hung, for the term's file"},
    OptionSpec{"display", "NAME", "the display it is a photo of"},
    OptionSpec{"not-legible", nullptr, "nothing on its panels can be read or recognised"},
    OptionSpec{"seen", "NAMES", "who can be recognised before it: names with ; between, or none"},
};

Error wrongUse(const QString& says)
{
    return {ErrorCode::WrongUse, says, {}};
}

std::optional<Error> faultIn(const Arguments& arguments)
{
    const int kinds = int(arguments.has("children")) + int(arguments.has("quotes"))
        + int(arguments.has("photos")) + int(arguments.has("wall-photo"));
    if (kinds != 1)
        return wrongUse(
            QStringLiteral("Say one of --children, --quotes, --photos and --wall-photo"));
    if (arguments.has("wall-photo") != arguments.has("display"))
        return wrongUse(QStringLiteral("--wall-photo FILE goes with --display NAME"));
    for (const char* option : {"seen", "not-legible"}) {
        if (arguments.has(option) && !arguments.has("wall-photo"))
            return wrongUse(
                QStringLiteral("--%1 goes with --wall-photo FILE").arg(QLatin1String(option)));
    }
    if (arguments.has("children") && (arguments.has("experience") || arguments.has("on"))) {
        return wrongUse(
            QStringLiteral("A class list belongs to the book, not to an experience or a day"));
    }
    if (arguments.has("wall-photo") && arguments.has("experience"))
        return wrongUse(QStringLiteral("A photo of a wall belongs where its display does"));
    if (!arguments.has("children") && !arguments.has("wall-photo")
        && arguments.value("experience").simplified().isEmpty()) {
        return wrongUse(QStringLiteral("The option --experience TITLE is missing"));
    }
    if (arguments.has("on") && !dayFromText(arguments.value("on"))) {
        return wrongUse(QStringLiteral("--on takes a date like 2026-11-03, not \"%1\"")
                            .arg(arguments.value("on")));
    }
    return std::nullopt;
}

// Who is named in --seen; nobody has looked where it is not said.
Result<People> peopleSeen(const Arguments& arguments, const Book& book)
{
    People people;
    if (!arguments.has("seen"))
        return people;
    people.lookedAt = true;
    const QStringList names = partsOf(arguments.value("seen"), QStringLiteral(";"));
    if (names.size() == 1 && names.front().compare(QLatin1String("none"), Qt::CaseInsensitive) == 0)
        return people;
    for (const QString& name : names) {
        const Child* child = childCalled(book, name);
        if (child == nullptr)
            return Error{
                ErrorCode::NotFound, name, QStringLiteral("nobody in the book is called so")};
        people.children.push_back(child->id);
    }
    return people;
}

Result<GatherOutcome> gatherWallPhoto(
    const Arguments& arguments, const BookStore& store, const JobRun& run)
{
    const Display* display = displayByName(store.book(), arguments.value("display"));
    if (display == nullptr)
        return Error{ErrorCode::NotFound,
            arguments.value("display"),
            QStringLiteral("no display of the book is called so")};
    const Result<People> people = peopleSeen(arguments, store.book());
    if (!people)
        return people.error();
    GatherFilesJob job;
    job.files = {arguments.value("wall-photo")};
    job.ofWall = display->id;
    job.on = dayFromText(arguments.value("on"));
    job.people = *people;
    job.mostPages = 1;
    job.panelsLegible = !arguments.has("not-legible");
    job.picturesFolder = store.picturesFolder();
    auto gathered = job.run(store.book(), run);
    if (!gathered)
        return gathered.error();
    return std::move(gathered->outcome);
}

Result<GatherOutcome> gather(const Arguments& arguments, const BookStore& store, const JobRun& run)
{
    const std::optional<QDate> on = dayFromText(arguments.value("on"));
    if (arguments.has("children"))
        return GatherChildrenJob{arguments.value("children")}.run(store.book(), run);
    if (arguments.has("quotes")) {
        return GatherQuotesJob{arguments.value("quotes"), arguments.value("experience"), on}.run(
            store.book(), run);
    }
    if (arguments.has("wall-photo"))
        return gatherWallPhoto(arguments, store, run);
    const GatherPhotosJob job{
        arguments.value("photos"), arguments.value("experience"), store.picturesFolder(), on};
    return job.run(store.book(), run);
}

Answer answerFor(const GatherOutcome& outcome)
{
    Answer answer;
    QJsonArray skipped;
    for (const SkippedRow& row : outcome.skipped) {
        skipped.append(QJsonObject{{QStringLiteral("row"), row.row},
            {QStringLiteral("file"), row.file},
            {QStringLiteral("why"), row.why}});
        answer.notes.append(row.why);
    }
    answer.notes += outcome.remarks;
    answer.json = {{QStringLiteral("added"), outcome.added},
        {QStringLiteral("updated"), outcome.updated},
        {QStringLiteral("skipped"), skipped}};
    answer.lines.append(QStringLiteral("%1 added, %2 updated, %3 skipped.")
                            .arg(outcome.added)
                            .arg(outcome.updated)
                            .arg(outcome.skipped.size()));
    return answer;
}

Result<Answer> runGather(const Arguments& arguments, const JobRun& run)
{
    if (const auto fault = faultIn(arguments))
        return *fault;
    auto store = BookStore::open(arguments.positional(0));
    if (!store)
        return store.error();
    Result<GatherOutcome> outcome = gather(arguments, **store, run);
    if (!outcome)
        return outcome.error();
    if (const Result<> kept = (*store)->history().perform(outcome->edit); !kept)
        return kept.error();
    return answerFor(*outcome);
}

} // namespace

std::vector<Command> gatherCommands()
{
    return {{"gather",
        "BOOK --children FILE.csv\n"
        "       wainscot-cli gather BOOK --experience TITLE [--on YYYY-MM-DD] --quotes FILE.csv\n"
        "       wainscot-cli gather BOOK --experience TITLE --photos FOLDER\n"
        "       wainscot-cli gather BOOK --display NAME --wall-photo FILE [--on YYYY-MM-DD]\n"
        "                    [--seen NAMES] [--not-legible]",
        "Brings a class list, children's words or pictures into a book.",
        kOptions,
        {QStringLiteral("BOOK")},
        runGather}};
}

} // namespace wainscot::cli
