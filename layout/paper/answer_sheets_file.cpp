#include "layout/paper/answer_sheets_file.h"

#include "layout/paper/pdf_file.h"

namespace wainscot {

Result<PaperReport> writeAnswerSheets(const QString& path,
    const ClearedSheets& sheets,
    const AnswerSheetWishes& wishes,
    PictureSource& pictures,
    const PaperOptions& options,
    const PaperWatch& watch)
{
    return pdf::writePages(path, answerSheets(sheets, wishes), pictures, options, watch);
}

} // namespace wainscot
