#include "layout/paper/sheets.h"

#include "layout/paper/pdf_file.h"
#include "layout/paper/sheet_drawing.h"
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
            const SheetPlan& plan = plans[i];
            const SheetContext context{plan,
                sheets,
                file.form(lists[i]),
                lists.size() > 1 ? QStringLiteral("Panel %1").arg(i + 1) : QString()};
            PageContent assembly = file.blankPage(plan.sheet);
            drawAssembly(assembly, context);
            file.addPage(std::move(assembly), plan.sheet, sheets.scale);
            label(i, QStringLiteral("Together"));
            for (int row = 0; row < plan.rows; ++row) {
                for (int column = 0; column < plan.columns; ++column) {
                    PageContent page = file.blankPage(plan.sheet);
                    drawSheet(page, context, column, row);
                    file.addPage(std::move(page), plan.sheet, sheets.scale);
                    label(i, sheetName(column, row));
                }
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
