// What is drawn around the parts of a panel: marks, names, a ruler and the sheet that shows how to
// join them.
#pragma once

#include "layout/paper/page_content.h"
#include "layout/paper/sheets.h"

namespace wainscot::pdf {

struct SheetContext {
    const SheetPlan& plan;
    const SheetOptions& options;
    QPDFObjectHandle form; // the panel
    QString panelName; // "Panel 2"; empty when there is only one
};

// One part at its true size, with ticks where the next sheets lie.
void drawSheet(PageContent& page, const SheetContext& context, int column, int row);

// The whole panel in small with the names of the sheets on it, what to do, and a line to measure.
void drawAssembly(PageContent& page, const SheetContext& context);

} // namespace wainscot::pdf
