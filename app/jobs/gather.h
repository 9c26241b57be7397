// Bringing a class list, children's words and pictures into a book. Each job reads everything
// first and answers with one edit: performed whole it is one unit of work, dropped it leaves the
// book as it was.
#pragma once

#include "app/jobs/job_run.h"
#include "core/edit/edit.h"

#include <QDate>
#include <QString>
#include <QStringList>

#include <optional>
#include <vector>

namespace wainscot {

// A row or a file that was not taken, and why. `why` is one sentence naming file, row and cause.
struct SkippedRow {
    int row = 0; // as a spreadsheet counts: the header is row 1; 0 = a whole file
    QString file; // without its folder
    QString why;
};

struct GatherOutcome {
    int added = 0;
    int updated = 0;
    std::vector<SkippedRow> skipped;
    // Taken, yet not as it should be: "rain.jpg: the file is damaged; part of the picture may be
    // grey."
    QStringList remarks;
    Edit edit; // to be performed by the caller; empty when nothing changes
};

// A class list. A child already in the book (same name) is updated: the file says everything about
// it, so a blank permission cell takes that permission away. A second row with the same name is
// skipped, and so is a row without a name or with a date or audience nobody knows.
struct GatherChildrenJob {
    QString file;
    Result<GatherOutcome> run(const Book& book, const JobRun& run) const;
};

// Children's words for one experience, which is made when the book has none of that title.
// Columns `child`, `prompt`, `words` (long form), or `child` and one column per prompt (wide form).
// A child or prompt the book does not know is skipped with its row, never guessed. The same child,
// prompt and words twice is the same quote. How words were taken down is only recorded as far as
// the file says: dictation is Exact (nothing says it was worked up) and `readBack` is false.
struct GatherQuotesJob {
    QString file;
    QString experience; // title
    std::optional<QDate> on;
    Result<GatherOutcome> run(const Book& book, const JobRun& run) const;
};

// All pictures of a folder, with what its `photos.csv` says about them. Originals are copied into
// the book under their SHA-256 and never changed; the same picture is taken once. A picture whose
// `children` is blank has not been looked at and is cleared for no audience. Every page of a
// scanned PDF is a picture; a row of the list means a page by "pile, page 3", all its pages by
// "pile.pdf".
struct GatherPhotosJob {
    QString folder; // or a single file
    QString experience; // title
    QString picturesFolder; // of the book
    std::optional<QDate> on;
    Result<GatherOutcome> run(const Book& book, const JobRun& run) const;
};

} // namespace wainscot
