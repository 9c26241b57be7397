// sheets: paper for the children to answer on.
#include "app/cli/making.h"
#include "app/jobs/sheets_job.h"

#include <array>

namespace wainscot::cli {

namespace {

constexpr std::array kOptions{
    OptionSpec{"experience", "TITLE", "whose questions are asked", true},
    OptionSpec{"pdf", "OUT.pdf", "file to write", true},
    OptionSpec{"child", "NAME", "for one child only (the whole class)"},
    OptionSpec{"languages", "LIST", "to ask in, the first large: en,ar (the set's own)"},
    OptionSpec{"paper", "PAPER", "A4, Letter ... (A4)"},
    OptionSpec{"per-page", "N", "1 or 2 (1)"},
    OptionSpec{"lines", nullptr, "lines to write on; otherwise the boxes are empty"},
    OptionSpec{"scribe", nullptr, "a sheet for the adult who writes, with all children, too"},
    OptionSpec{"scribe-only", nullptr, "that sheet alone"},
};

Result<SheetsJob> jobFrom(const Arguments& arguments)
{
    SheetsJob job;
    job.experience = arguments.value("experience");
    job.file = arguments.value("pdf");
    job.child = arguments.value("child");
    job.languages = arguments.value("languages").split(QLatin1Char(','), Qt::SkipEmptyParts);
    job.wishes.lines = arguments.has("lines");
    job.wishes.forChildren = !arguments.has("scribe-only");
    job.wishes.forScribe = arguments.has("scribe") || arguments.has("scribe-only");
    const Result<int> perPage = arguments.number("per-page", 1, 2, 1);
    if (!perPage)
        return perPage.error();
    job.wishes.perPage = *perPage;
    if (const Result<> taken = takePaper(arguments, job.wishes.paper); !taken)
        return taken.error();
    return job;
}

Result<Answer> runSheets(const Arguments& arguments, const JobRun& run)
{
    return makePages(
        arguments, run, jobFrom(arguments), [](const SheetsOutcome&) { return QJsonObject(); });
}

} // namespace

std::vector<Command> sheetsCommands()
{
    return {{"sheets",
        "BOOK --experience TITLE --pdf OUT.pdf [--child NAME] [--languages LIST] [--paper PAPER]\n"
        "    [--per-page N] [--lines] [--scribe | --scribe-only]",
        "Makes sheets for the children to answer on.",
        kOptions,
        {QStringLiteral("BOOK")},
        runSheets}};
}

} // namespace wainscot::cli
