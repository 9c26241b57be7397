// A display as its audience may see it, typeset: what the check looks at and what goes on paper.
#pragma once

#include "core/base/result.h"
#include "core/model/book.h"
#include "core/permit/cleared.h"
#include "layout/typeset/display_list.h"
#include "layout/typeset/style.h"

#include <QDate>

#include <vector>

namespace wainscot {

// The style a panel is set in: the display's, and children's words one step smaller where a
// drawing's telling has more than 45 words.
[[nodiscard]] PanelStyle styleFor(const ClearedPanel& panel);

struct DrawnPanel {
    ClearedPanel cleared;
    PanelStyle style;
    DisplayList list;
};

struct DrawnDisplay {
    Display display;
    std::vector<DrawnPanel> panels; // by number
    [[nodiscard]] std::vector<LeftOut> leftOut() const; // of all panels
    [[nodiscard]] std::vector<ClearedPanel> clearedPanels() const;
};

// NotFound when the book has no display of that name.
Result<DrawnDisplay> drawDisplay(const Book& book, const QString& name, QDate today);

} // namespace wainscot
