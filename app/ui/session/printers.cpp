#include "app/ui/session/printers.h"

#include <QPrinter>
#include <QPrinterInfo>

#include <algorithm>

namespace wainscot::ui {

QStringList printerNames()
{
    return QPrinterInfo::availablePrinterNames();
}

PrinterFacts printerFacts(const QString& name)
{
    const QPrinterInfo info = QPrinterInfo::printerInfo(name);
    if (info.isNull())
        return {name, {}, {}};
    const QPrinter printer(info, QPrinter::HighResolution);
    const QSizeF paper = info.defaultPageSize().size(QPageSize::Millimeter);
    QPageLayout layout = printer.pageLayout();
    layout.setUnits(QPageLayout::Millimeter);
    const QMarginsF edges = layout.minimumMargins();
    return {name,
        {Mm(paper.width()), Mm(paper.height())},
        Mm(std::max({edges.left(), edges.top(), edges.right(), edges.bottom()}))};
}

} // namespace wainscot::ui
