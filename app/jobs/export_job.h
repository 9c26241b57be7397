// A display on paper or as pictures. Only what its audience may see leaves the book.
#pragma once

#include "app/jobs/job_run.h"
#include "core/base/geometry.h"
#include "core/model/book.h"
#include "core/permit/cleared.h"

#include <QStringList>

#include <optional>
#include <vector>

namespace wainscot {

struct ExportOutcome {
    QStringList files; // full paths, in the order of the panels
    int pages = 0;
    std::vector<LeftOut> leftOut; // what stands on the display but not on the paper
    // Pieces that permission forbids were on the display: the paper has holes the teacher should
    // know of.
    [[nodiscard]] bool refusedPieces() const;
};

// Printing on a small printer: each panel in parts on this paper.
struct SheetWishes {
    SizeMm paper;
    Mm overlap{10}; // shared by neighbouring sheets, 0..50 mm
    Mm margin{7}; // the edge a printer cannot reach, 0..30 mm
};

struct ExportPdfJob {
    QString display;
    QString file;
    QString picturesFolder;
    Mm bleed{0}; // 0..25 mm
    bool marks = false; // crop marks outside the bleed
    std::optional<SheetWishes> sheets;
    Result<ExportOutcome> run(const Book& book, const JobRun& run) const;
};

// One PNG per panel: OUT.png, and OUT-2.png, OUT-3.png for further panels.
struct ExportPngJob {
    QString display;
    QString file;
    QString picturesFolder;
    int dpi = 100; // 10..600
    Result<ExportOutcome> run(const Book& book, const JobRun& run) const;
};

} // namespace wainscot
