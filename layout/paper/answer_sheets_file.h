// Sheets to answer on as a PDF to print.
#pragma once

#include "core/permit/cleared_sheets.h"
#include "layout/paper/pdf_writer.h"
#include "layout/typeset/answer_sheet.h"

namespace wainscot {

// Children's sheets first, then the scribe's. Errors as of writePdf; WrongUse when nothing is asked
// for or nothing would be asked.
Result<PaperReport> writeAnswerSheets(const QString& path,
    const ClearedSheets& sheets,
    const AnswerSheetWishes& wishes,
    PictureSource& pictures,
    const PaperOptions& options,
    const PaperWatch& watch = {});

} // namespace wainscot
