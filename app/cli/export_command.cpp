#include "app/cli/command.h"
#include "app/cli/json.h"
#include "app/cli/sheet_options.h"
#include "app/jobs/export_job.h"
#include "app/jobs/sentences.h"
#include "core/store/book_store.h"

#include <array>
#include <limits>

namespace wainscot::cli {

namespace {

constexpr std::array kOptions{
    OptionSpec{"display", "NAME", "which display", true},
    OptionSpec{"pdf", "OUT.pdf", "a PDF at full size, one page for each panel"},
    OptionSpec{"bleed", "LENGTH", "colour beyond the trim (0mm)"},
    OptionSpec{"marks", nullptr, "crop marks"},
    OptionSpec{"each", nullptr, "a file for each panel: OUT.pdf, OUT-2.pdf ..."},
    OptionSpec{"data", nullptr, "what the panels say goes along as data inside the PDF"},
    OptionSpec{"sheets", "PAPER", "each panel in parts on this paper: A4, Letter ..."},
    OptionSpec{"overlap", "LENGTH", "of neighbouring sheets (10mm)"},
    OptionSpec{"margin", "LENGTH", "edge that the printer cannot reach (7mm)"},
    OptionSpec{"no-white", nullptr, "leave out sheets with nothing on them"},
    OptionSpec{"ruler", "LENGTH", "what the 100 mm ruler of a printed sheet measures (100mm)"},
    OptionSpec{"png", "OUT.png", "a picture of each panel"},
    OptionSpec{"jpeg", "OUT.jpg", "the same, smaller: for a message"},
    OptionSpec{"dpi", "N", "dots an inch of the picture (100)"},
    OptionSpec{"width", "PIXELS", "of the picture, instead of its dots an inch"},
    OptionSpec{"piece", "N", "a picture of this piece alone, by its number in check and arrange"},
};

Error wrongUse(const QString& says)
{
    return {ErrorCode::WrongUse, says, {}};
}

// Options that only mean something beside another one.
std::optional<Error> faultIn(const Arguments& arguments)
{
    const int ways =
        int(arguments.has("pdf")) + int(arguments.has("png")) + int(arguments.has("jpeg"));
    if (ways != 1) {
        return wrongUse(
            QStringLiteral("Say one of --pdf OUT.pdf, --png OUT.png and --jpeg OUT.jpg"));
    }
    for (const char* option :
        {"bleed", "marks", "each", "data", "sheets", "overlap", "margin", "no-white", "ruler"}) {
        if (!arguments.has("pdf") && arguments.has(option))
            return wrongUse(QStringLiteral("--%1 belongs to --pdf").arg(QLatin1String(option)));
    }
    for (const char* option : {"dpi", "width", "piece"}) {
        if (arguments.has("pdf") && arguments.has(option)) {
            return wrongUse(
                QStringLiteral("--%1 belongs to --png and --jpeg").arg(QLatin1String(option)));
        }
    }
    if (arguments.has("dpi") && arguments.has("width"))
        return wrongUse(QStringLiteral("Say one of --dpi and --width"));
    for (const char* option : {"overlap", "margin", "no-white", "ruler"}) {
        if (!arguments.has("sheets") && arguments.has(option)) {
            return wrongUse(QStringLiteral("--%1 belongs to --sheets").arg(QLatin1String(option)));
        }
    }
    if (arguments.has("sheets") && (arguments.has("bleed") || arguments.has("marks"))) {
        return wrongUse(QStringLiteral("--bleed and --marks are for whole panels, not for sheets: "
                                       "there the panel's edge lies inside the paper"));
    }
    if (arguments.has("sheets") && arguments.has("data"))
        return wrongUse(QStringLiteral("--data is for whole panels, not for sheets"));
    return std::nullopt;
}

Result<ExportPdfJob> pdfJobFrom(const Arguments& arguments)
{
    ExportPdfJob job;
    job.display = arguments.value("display");
    job.file = arguments.value("pdf");
    const Result<Mm> bleed = arguments.length("bleed", Mm(0), Mm(25));
    if (!bleed)
        return bleed.error();
    job.bleed = *bleed;
    job.marks = arguments.has("marks");
    job.fileForEach = arguments.has("each");
    job.withData = arguments.has("data");
    if (!arguments.has("sheets"))
        return job;
    Result<SheetWishes> sheets = sheetsFrom(arguments);
    if (!sheets)
        return sheets.error();
    const Result<Mm> ruler = arguments.length("ruler", Mm(100), Mm(110));
    if (!ruler)
        return ruler.error();
    if (*ruler < Mm(90))
        return wrongUse(QStringLiteral("--ruler is 90 to 110 mm: the printed 100 mm, measured"));
    sheets->scale = Mm(100) / *ruler;
    job.sheets = *sheets;
    return job;
}

Result<ExportPictureJob> pictureJobFrom(const Arguments& arguments, const QString& pictures)
{
    const Result<int> dpi = arguments.number("dpi", 10, 600, 100);
    const Result<int> width = arguments.number("width", 16, 20'000, 0);
    const Result<int> piece = arguments.number("piece", 1, std::numeric_limits<int>::max(), 0);
    for (const Result<int>* number : {&dpi, &width, &piece}) {
        if (!*number)
            return number->error();
    }
    ExportPictureJob job;
    job.display = arguments.value("display");
    job.form = arguments.has("jpeg") ? PictureForm::Jpeg : PictureForm::Png;
    job.file = arguments.value(arguments.has("jpeg") ? "jpeg" : "png");
    job.picturesFolder = pictures;
    job.dpi = *dpi;
    job.width = *width;
    job.piece = PieceId(*piece);
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
    const Result<ExportPictureJob> job = pictureJobFrom(arguments, store.picturesFolder());
    return job ? job->run(store.book(), run) : job.error();
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
    answer.notes.append(reasonsOf(outcome->leftOut));
    for (const QString& file : outcome->files)
        answer.lines.append(file);
    remember(arguments.positional(0), outcome->made, answer);
    answer.exit = outcome->refusedPieces() ? kStopFinding : kDone;
    return answer;
}

} // namespace

std::vector<Command> exportCommands()
{
    return {{"export",
        "BOOK --display NAME --pdf OUT.pdf [--bleed 3mm] [--marks] [--each] [--data]\n"
        "       [--sheets PAPER [--overlap 10mm] [--margin 7mm] [--no-white] [--ruler 98mm]]\n"
        "       wainscot-cli export BOOK --display NAME --png OUT.png | --jpeg OUT.jpg\n"
        "       [--dpi 100 | --width PIXELS] [--piece N]",
        "Writes a display for the print shop, for a small printer, or as pictures.",
        kOptions,
        {QStringLiteral("BOOK")},
        runExport}};
}

} // namespace wainscot::cli
