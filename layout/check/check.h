// The check: what a display looks like to the people who will stand in front of it, in findings.
#pragma once

#include "core/base/finding.h"
#include "core/model/book.h"
#include "layout/check/panel_facts.h"

#include <vector>

namespace wainscot::check {

// Everything that can be measured on one panel.
[[nodiscard]] std::vector<Finding> checkPanel(const PanelFacts& panel);

// What only the book and all panels together tell: credits, a date, children who are not heard on
// it, captions that come again, shortened words, letters where a panel hangs. Panels share limits.
[[nodiscard]] std::vector<Finding> checkDisplay(
    const Book& book, const Display& display, const std::vector<PanelFacts>& panels);

// Where sheets of paper are joined, in mm from the panel's upper left corner.
struct Seams {
    std::vector<Mm> upright;
    std::vector<Mm> level;
    QString sheets; // "15 sheets of A4"
};
// Marked parts of pictures, children's works and lines of text that seams go through.
[[nodiscard]] std::vector<Finding> checkSeams(const PanelFacts& panel, const Seams& seams);

// Stop before look before note, then by panel; otherwise as found.
void sortFindings(std::vector<Finding>& findings);

} // namespace wainscot::check
