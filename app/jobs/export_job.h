// A display on paper or as pictures. Only what its audience may see leaves the book.
#pragma once

#include "app/jobs/job_run.h"
#include "core/base/geometry.h"
#include "core/model/book.h"
#include "core/permit/cleared.h"
#include "core/store/made_files.h"
#include "layout/paper/sheets.h"

#include <QStringList>

#include <optional>
#include <vector>

namespace wainscot {

struct ExportOutcome {
    QStringList files; // full paths, in the order of the panels
    int pages = 0;
    std::vector<LeftOut> leftOut; // what stands on the display but not on the paper
    MadeFile made; // for the book to remember
    // Pieces that permission forbids were on the display: the paper has holes the teacher should
    // know of.
    [[nodiscard]] bool refusedPieces() const;
};

// Printing on a small printer: each panel in parts on this paper.
struct SheetWishes {
    SizeMm paper;
    Mm overlap{10}; // shared by neighbouring sheets, 0..50 mm
    Mm margin{7}; // the edge a printer cannot reach, 0..30 mm
    double scale = 1; // makes good for a printer that does not keep the size, 0.9..1.1
    bool leaveOutWhite = false; // sheets with nothing on them
    [[nodiscard]] SheetOptions options() const
    {
        return {paper, overlap, margin, scale, leaveOutWhite};
    }
};

// OUT.pdf, then OUT-2.pdf, OUT-3.pdf; `number` counts from 1.
[[nodiscard]] QString fileOfPanel(const QString& file, int number);
// The names of OUT-2.pdf to OUT-`panels`.pdf that would be replaced: whoever chose OUT.pdf was
// asked about that one alone.
[[nodiscard]] QStringList furtherFilesThere(const QString& file, int panels);

struct ExportPdfJob {
    QString display;
    QString file;
    QString picturesFolder;
    Mm bleed{0}; // 0..25 mm
    bool marks = false; // crop marks outside the bleed
    bool fileForEach = false; // OUT.pdf, OUT-2.pdf ...: one for each panel
    bool withData = false; // what the panels say, as data inside; not for sheets
    std::optional<SheetWishes> sheets;
    Result<ExportOutcome> run(const Book& book, const JobRun& run) const;
};

enum class PictureForm { Png, Jpeg };

// One picture per panel: OUT.png, and OUT-2.png, OUT-3.png for further panels; or one picture of a
// single piece. Nothing is in the file but pixels and their number an inch.
struct ExportPictureJob {
    QString display;
    QString file;
    QString picturesFolder;
    int dpi = 100; // 10..600, unless a width is said
    PictureForm form = PictureForm::Png;
    int width = 0; // pixels, 16..20,000; 0 = as dpi says
    PieceId piece; // invalid = whole panels
    // NotFound for a piece that is not on the display; Refused for one its audience may not see.
    Result<ExportOutcome> run(const Book& book, const JobRun& run) const;
};

} // namespace wainscot
