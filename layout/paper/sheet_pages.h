// What stands on each sheet of printer's paper: a part of the panel, and around it what one joins
// it by. The same for the PDF and for the printer.
#pragma once

#include "layout/paper/sheets.h"

namespace wainscot {

struct SheetPage {
    QString name; // "B3"; of the sheet that shows how they join: "Together"
    SizeMm size;
    RectMm window; // where the panel is seen, on the sheet
    PointMm panelAt; // its top left corner, on the sheet; outside the window for most parts
    double panelScale = 1;
    DisplayList marks; // drawn over it, on the sheet: ticks, names, sentences, a ruler; no pictures

    // The part of the panel that the window shows.
    [[nodiscard]] RectMm seen() const;
};

// First the whole panel in small with the names of the sheets on it, what to do, and a line of 100
// mm to measure; then its sheets row by row, with ticks where the next ones lie; without those that
// stay white where that is wanted. `panelName`:
// "Panel 2"; empty when there is only one. The sentences are in the program's language.
[[nodiscard]] std::vector<SheetPage> sheetPages(
    const SheetPlan& plan, const SheetOptions& options, const QString& panelName);

// "Panel 2" in the program's language; empty for the only one of its display.
[[nodiscard]] QString sheetPanelName(int number, std::size_t panels);

} // namespace wainscot
