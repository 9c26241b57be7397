#include "layout/paper/pdf_writer.h"

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
    return pdf::writePages(path, lists, pictures, options, watch);
}

} // namespace wainscot
