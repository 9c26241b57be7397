#include "layout/paper/pdf_writer.h"

#include "layout/paper/display_data.h"
#include "layout/paper/pdf_file.h"
#include "layout/typeset/typesetter.h"

namespace wainscot {

Result<PaperReport> writePdf(const QString& path,
    std::span<const PaperPanel> panels,
    PictureSource& pictures,
    const PaperOptions& options,
    const PaperWatch& watch)
{
    std::vector<DisplayList> lists;
    for (const PaperPanel& panel : panels)
        lists.push_back(typeset(panel.panel, panel.style));
    if (!options.withData)
        return pdf::writePages(path, lists, pictures, options, watch);
    if (!options.created.isValid())
        return Error{ErrorCode::WrongUse, path, QStringLiteral("data needs the day it was made")};
    const pdf::Attachment data{QStringLiteral("display.json"),
        QStringLiteral("application/json"),
        QStringLiteral("What the panels say, as data"),
        displayData(panels)};
    return pdf::writePages(path, lists, pictures, options, watch, data);
}

} // namespace wainscot
