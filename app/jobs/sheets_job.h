// Sheets to answer on, for a class or a child: made to be printed, or looked at first.
#pragma once

#include "app/jobs/job_run.h"
#include "core/model/book.h"
#include "core/permit/cleared_sheets.h"
#include "core/store/made_files.h"
#include "layout/typeset/answer_sheet.h"

#include <QStringList>

namespace wainscot {

struct SheetsOutcome {
    QString file;
    int pages = 0;
    std::vector<LeftOut> leftOut; // names that may not stand there, pictures that may not be shown
    MadeFile made; // for the book to remember
};

// NotFound for an unknown experience or child; WrongUse for paper too small to answer on, and when
// neither kind of sheet is wished for; CannotRead and CannotWrite as of the paper writer.
struct SheetsJob {
    QString experience; // its title
    QString child; // empty = the whole class; of an empty class one sheet with a line for the name
    QStringList languages; // to ask in, the first large; none = the set's own
    AnswerSheetWishes wishes;
    QString file;
    QString picturesFolder;

    [[nodiscard]] Result<ClearedSheets> cleared(const Book& book, QDate today) const;
    Result<SheetsOutcome> run(const Book& book, const JobRun& run) const;
};

} // namespace wainscot
