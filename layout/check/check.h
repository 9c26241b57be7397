// The check: what a display looks like to the people who will stand in front of it, in findings.
#pragma once

#include "core/base/finding.h"
#include "core/model/book.h"
#include "layout/check/panel_facts.h"

#include <vector>

namespace wainscot::check {

// Everything that can be measured on one panel.
[[nodiscard]] std::vector<Finding> checkPanel(const PanelFacts& panel);

// What belongs to the display as a whole: credits, a date, children who are not heard on it.
[[nodiscard]] std::vector<Finding> checkDisplay(
    const Book& book, const Display& display, const std::vector<PanelFacts>& panels);

// Stop before look before note, then by panel; otherwise as found.
void sortFindings(std::vector<Finding>& findings);

} // namespace wainscot::check
