#include "app/cli/command.h"
#include "app/cli/json.h"
#include "app/jobs/export_job.h"
#include "core/base/length.h"
#include "core/base/paper_size.h"
#include "core/store/book_store.h"

#include <array>

namespace wainscot::cli {

namespace {

constexpr std::array kOptions{
    OptionSpec{"display", "NAME", "which display", true},
    OptionSpec{"pdf", "OUT.pdf", "a PDF at full size, one page for each panel"},
    OptionSpec{"bleed", "LENGTH", "colour beyond the trim (0mm)"},
    OptionSpec{"marks", nullptr, "crop marks"},
    OptionSpec{"sheets", "PAPER", "each panel in parts on this paper: A4, Letter ..."},
    OptionSpec{"overlap", "LENGTH", "of neighbouring sheets (10mm)"},
    OptionSpec{"margin", "LENGTH", "edge that the printer cannot reach (7mm)"},
    OptionSpec{"png", "OUT.png", "a picture of each panel"},
    OptionSpec{"dpi", "N", "dots an inch of the picture (100)"},
};

Error wrongUse(const QString& says)
{
    return {ErrorCode::WrongUse, says, {}};
}

// Options that only mean something beside another one.
std::optional<Error> faultIn(const Arguments& arguments)
{
    if (arguments.has("pdf") == arguments.has("png"))
        return wrongUse(QStringLiteral("Say one of --pdf OUT.pdf and --png OUT.png"));
    for (const char* option : {"bleed", "marks", "sheets", "overlap", "margin"}) {
        if (arguments.has("png") && arguments.has(option)) {
            return wrongUse(QStringLiteral("--%1 belongs to --pdf").arg(QLatin1String(option)));
        }
    }
    for (const char* option : {"overlap", "margin"}) {
        if (!arguments.has("sheets") && arguments.has(option)) {
            return wrongUse(QStringLiteral("--%1 belongs to --sheets").arg(QLatin1String(option)));
        }
    }
    if (arguments.has("sheets") && (arguments.has("bleed") || arguments.has("marks"))) {
        return wrongUse(QStringLiteral("--bleed and --marks are for whole panels, not for sheets: "
                                       "there the panel's edge lies inside the paper"));
    }
    if (arguments.has("pdf") && arguments.has("dpi"))
        return wrongUse(QStringLiteral("--dpi belongs to --png"));
    return std::nullopt;
}

Result<Mm> lengthOf(const Arguments& arguments, const char* option, Mm otherwise, Mm most)
{
    if (!arguments.has(option))
        return otherwise;
    const Result<Mm> length = lengthFromText(arguments.value(option));
    if (length && *length > most) {
        return wrongUse(
            QStringLiteral("--%1 is at most %2 mm").arg(QLatin1String(option)).arg(most.value()));
    }
    return length;
}

Result<ExportPdfJob> pdfJobFrom(const Arguments& arguments)
{
    ExportPdfJob job;
    job.display = arguments.value("display");
    job.file = arguments.value("pdf");
    const Result<Mm> bleed = lengthOf(arguments, "bleed", Mm(0), Mm(25));
    if (!bleed)
        return bleed.error();
    job.bleed = *bleed;
    job.marks = arguments.has("marks");
    if (!arguments.has("sheets"))
        return job;
    SheetWishes sheets;
    const Result<SizeMm> paper = paperSizeFromText(arguments.value("sheets"));
    const Result<Mm> overlap = lengthOf(arguments, "overlap", sheets.overlap, Mm(50));
    const Result<Mm> margin = lengthOf(arguments, "margin", sheets.margin, Mm(30));
    if (!paper)
        return paper.error();
    if (!overlap)
        return overlap.error();
    if (!margin)
        return margin.error();
    job.sheets = SheetWishes{*paper, *overlap, *margin};
    return job;
}

Result<ExportOutcome> exportWith(
    const Arguments& arguments, const BookStore& store, const JobRun& run)
{
    if (arguments.has("pdf")) {
        Result<ExportPdfJob> job = pdfJobFrom(arguments);
        if (!job)
            return job.error();
        job->picturesFolder = store.picturesFolder();
        return job->run(store.book(), run);
    }
    const Result<int> dpi = arguments.number("dpi", 10, 600, 100);
    if (!dpi)
        return dpi.error();
    const ExportPngJob job{
        arguments.value("display"), arguments.value("png"), store.picturesFolder(), *dpi};
    return job.run(store.book(), run);
}

Result<Answer> runExport(const Arguments& arguments, const JobRun& run)
{
    if (const auto fault = faultIn(arguments))
        return *fault;
    auto store = BookStore::open(arguments.positional(0), Access::ReadOnly);
    if (!store)
        return store.error();
    const Result<ExportOutcome> outcome = exportWith(arguments, **store, run);
    if (!outcome)
        return outcome.error();
    Answer answer;
    answer.json = {{QStringLiteral("files"), toJson(outcome->files)},
        {QStringLiteral("pages"), outcome->pages},
        {QStringLiteral("left_out"), toJson(outcome->leftOut)}};
    for (const LeftOut& left : outcome->leftOut)
        answer.notes.append(left.why);
    for (const QString& file : outcome->files)
        answer.lines.append(file);
    answer.exit = outcome->refusedPieces() ? kStopFinding : kDone;
    return answer;
}

} // namespace

std::vector<Command> exportCommands()
{
    return {{"export",
        "BOOK --display NAME --pdf OUT.pdf [--bleed 3mm] [--marks]\n"
        "       [--sheets PAPER [--overlap 10mm] [--margin 7mm]]\n"
        "       wainscot-cli export BOOK --display NAME --png OUT.png [--dpi 100]",
        "Writes a display for the print shop, for a small printer, or as pictures.",
        kOptions,
        {QStringLiteral("BOOK")},
        runExport}};
}

} // namespace wainscot::cli
