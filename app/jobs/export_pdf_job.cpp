#include "app/jobs/export_job.h"

#include "app/jobs/drawn_display.h"
#include "core/store/originals.h"
#include "layout/paper/original_pictures.h"
#include "layout/paper/pdf_writer.h"
#include "layout/paper/sheets.h"

#include <algorithm>

namespace wainscot {

bool ExportOutcome::refusedPieces() const
{
    return std::any_of(leftOut.begin(), leftOut.end(), [](const LeftOut& left) {
        return left.what != QLatin1String("name") && left.piece.isValid();
    });
}

Result<ExportOutcome> ExportPdfJob::run(const Book& book, const JobRun& run) const
{
    const Result<DrawnDisplay> drawn = drawDisplay(book, display, run.today);
    if (!drawn)
        return drawn.error();
    std::vector<PaperPanel> panels;
    for (const DrawnPanel& panel : drawn->panels)
        panels.push_back({panel.cleared, panel.style});
    if (panels.empty()) {
        return Error{ErrorCode::Refused,
            QStringLiteral("\"%1\"").arg(display),
            QStringLiteral("it has no panel yet; arrange it first")};
    }
    OriginalPictures pictures([originals = Originals(picturesFolder)](const ClearedPicture& one) {
        return originals.pathOf(one.sha256);
    });
    PaperOptions options;
    options.bleed = bleed;
    options.cropMarks = marks;
    options.language = drawn->display.language;
    PaperWatch watch;
    watch.cancel = run.cancel;
    watch.onProgress = [&run](int done, int of) {
        run.report(QStringLiteral("Preparing pictures"), done, of);
    };
    const Result<PaperReport> report = sheets
        ? writeSheets(file,
            panels,
            pictures,
            options,
            SheetOptions{sheets->paper, sheets->overlap, sheets->margin},
            watch)
        : writePdf(file, panels, pictures, options, watch);
    if (!report)
        return report.error();
    ExportOutcome outcome;
    outcome.files.append(file);
    outcome.pages = report->pages;
    outcome.leftOut = drawn->leftOut();
    return outcome;
}

} // namespace wainscot
