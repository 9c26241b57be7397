#include "app/jobs/export_job.h"

#include "app/jobs/drawn_display.h"
#include "app/jobs/made_files.h"
#include "app/jobs/sentences.h"
#include "core/store/originals.h"
#include "layout/paper/original_pictures.h"
#include "layout/paper/pdf_writer.h"
#include "layout/paper/sheets.h"

#include <QFileInfo>

#include <algorithm>
#include <span>

namespace wainscot {

bool ExportOutcome::refusedPieces() const
{
    return std::any_of(leftOut.begin(), leftOut.end(), [](const LeftOut& left) {
        return left.what != QLatin1String("name") && left.piece.isValid();
    });
}

QString fileOfPanel(const QString& file, int number)
{
    if (number == 1)
        return file;
    const QFileInfo info(file);
    const QString suffix = info.suffix().isEmpty() ? QString() : QLatin1Char('.') + info.suffix();
    return file.left(file.size() - suffix.size()) + QStringLiteral("-%1").arg(number) + suffix;
}

QStringList furtherFilesThere(const QString& file, int panels)
{
    QStringList names;
    for (int number = 2; number <= panels; ++number) {
        const QFileInfo info(fileOfPanel(file, number));
        if (info.exists())
            names << info.fileName();
    }
    return names;
}

namespace {

Result<PaperReport> writeTo(const QString& file,
    std::span<const PaperPanel> panels,
    const ExportPdfJob& job,
    const PaperOptions& options,
    const PaperWatch& watch)
{
    OriginalPictures pictures(
        [originals = Originals(job.picturesFolder)](
            const ClearedPicture& one) { return originals.pathOf(one.sha256); });
    if (!job.sheets)
        return writePdf(file, panels, pictures, options, watch);
    return writeSheets(file, panels, pictures, options, job.sheets->options(), watch);
}

} // namespace

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
            quoted(display),
            QStringLiteral("it has no panel yet; arrange it first")};
    }
    PaperOptions options;
    options.bleed = bleed;
    options.cropMarks = marks;
    options.language = drawn->display.language;
    options.withData = withData;
    if (withData)
        options.created = run.today.startOfDay(Qt::UTC);
    PaperWatch watch;
    watch.cancel = run.cancel;
    watch.onProgress = [&run](int done, int of) {
        run.report(QStringLiteral("Preparing pictures"), done, of);
    };
    ExportOutcome outcome;
    outcome.leftOut = drawn->leftOut();
    outcome.made = madeFileOf(
        book, drawn->display, drawn->clearedPanels(), MadeFileKind::Panels, file, run.today);
    const std::size_t perFile = fileForEach ? 1 : panels.size();
    for (std::size_t first = 0; first < panels.size(); first += perFile) {
        const QString path = fileOfPanel(file, static_cast<int>(first) + 1);
        const Result<PaperReport> report =
            writeTo(path, std::span(panels).subspan(first, perFile), *this, options, watch);
        if (!report)
            return report.error();
        outcome.files.append(path);
        outcome.pages += report->pages;
    }
    return outcome;
}

} // namespace wainscot
