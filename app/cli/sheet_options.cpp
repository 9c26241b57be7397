#include "app/cli/sheet_options.h"

#include "core/base/paper_size.h"

namespace wainscot::cli {

Result<SheetWishes> sheetsFrom(const Arguments& arguments)
{
    SheetWishes sheets;
    const Result<SizeMm> paper = paperSizeFromText(arguments.value("sheets"));
    const Result<Mm> overlap = arguments.length("overlap", sheets.overlap, Mm(50));
    const Result<Mm> margin = arguments.length("margin", sheets.margin, Mm(30));
    if (!paper)
        return paper.error();
    if (!overlap)
        return overlap.error();
    if (!margin)
        return margin.error();
    sheets.paper = *paper;
    sheets.overlap = *overlap;
    sheets.margin = *margin;
    sheets.leaveOutWhite = arguments.has("no-white");
    return sheets;
}

} // namespace wainscot::cli
