// Three ways to lay a document out: the engine's, justified rows and shortest-column masonry, all
// with the same measured texts at the same sizes.
#pragma once

#include "layout/engine/arrangement.h"
#include "layout/typeset/measurer.h"
#include "tests/support/wall_documents.h"

namespace wainscot::walls {

// One piece on its page. `slot` is the room the method gave it, white included.
struct Place {
    PieceId piece;
    RectMm slot;
    RectMm cell;
    RectMm picture;
};

struct Layout {
    QString method; // "Wainscot", "rows", "masonry"
    std::vector<std::vector<Place>> pages; // places in reading order; empty = not possible
    bool gridded = false; // slots are cells of the panel's grid
};

// A document measured once, for all methods.
class Sheet {
public:
    explicit Sheet(const Document& document);

    [[nodiscard]] const Document& document() const { return m_document; }
    [[nodiscard]] const PanelStyle& style() const { return m_style; }
    [[nodiscard]] const engine::Request& request() const { return m_request; }
    [[nodiscard]] const PanelMeasurer& text() const { return *m_text; }
    // The document's pieces with the places of one page.
    [[nodiscard]] ClearedPanel page(const std::vector<Place>& places) const;

private:
    const Document& m_document;
    PanelStyle m_style;
    std::unique_ptr<PanelMeasurer> m_text;
    engine::Request m_request; // any number of pages
};

[[nodiscard]] Layout engineLayout(const Sheet& sheet);
// Greedy: pieces go side by side until a row of that height is full, then its pictures are scaled
// so that the row ends at the margin.
[[nodiscard]] Layout justifiedRows(const Sheet& sheet, Mm rowHeight);
// Each piece goes to the top of the column that is shortest.
[[nodiscard]] Layout masonry(const Sheet& sheet, int columns);

} // namespace wainscot::walls
