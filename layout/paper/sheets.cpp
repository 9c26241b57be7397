#include "layout/paper/sheets.h"

#include "layout/paper/pdf_file.h"
#include "layout/paper/sheet_pages.h"
#include "layout/typeset/typesetter.h"

namespace wainscot {

namespace pdf {

Result<PaperReport> writeSheetsOf(const QString& path,
    const std::vector<DisplayList>& lists,
    PictureSource& source,
    const PaperOptions& options,
    const SheetOptions& sheets,
    const PaperWatch& watch)
{
    std::vector<SheetPlan> plans;
    for (const DisplayList& list : lists) {
        Result<SheetPlan> plan = planSheets(list.size, sheets);
        if (!plan)
            return plan.error();
        plans.push_back(withQuietSeams(*plan, list));
    }
    const auto build = [&](PdfFile& file) {
        int pages = 0;
        // A viewer calls a page what is printed on the sheet, so one can be printed again by name.
        const auto label = [&](std::size_t panel, const QString& name) {
            const QString before =
                lists.size() > 1 ? QStringLiteral("%1 ").arg(panel + 1) : QString();
            file.labelFrom(pages++, "/P (" + (before + name).toStdString() + ")");
        };
        for (std::size_t i = 0; i < lists.size(); ++i) {
            const QPDFObjectHandle form = file.form(lists[i]);
            for (const SheetPage& page :
                sheetPages(plans[i], sheets, sheetPanelName(int(i) + 1, lists.size()))) {
                PageContent content = file.blankPage(page.size);
                content.drawForm(
                    "/Panel", form, page.window, page.panelAt, page.panelScale, lists[i].size);
                content.play(page.marks);
                file.addPage(std::move(content), page.size, sheets.scale);
                label(i, page.name);
            }
        }
    };
    PaperOptions plain = options;
    plain.bleed = Mm(0);
    plain.cropMarks = false;
    return produce(path, lists, source, plain, watch, build, false);
}

} // namespace pdf

Result<PaperReport> writeSheets(const QString& path,
    std::span<const PaperPanel> panels,
    PictureSource& pictures,
    const PaperOptions& options,
    const SheetOptions& sheets,
    const PaperWatch& watch)
{
    std::vector<DisplayList> lists;
    for (const PaperPanel& panel : panels)
        lists.push_back(typeset(panel.panel, panel.style));
    return pdf::writeSheetsOf(path, lists, pictures, options, sheets, watch);
}

} // namespace wainscot
