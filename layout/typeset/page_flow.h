// Blocks one under the other, page after page. A page is handed on as soon as it is full, so that
// no more than one is held.
#pragma once

#include "layout/typeset/page_drawing.h"
#include "layout/typeset/term_style.h"

#include <functional>
#include <vector>

namespace wainscot {

// Where something begins, for outlines and the page of contents.
struct Bookmark {
    int level = 0; // 0 = part of the file, 1 = inside it
    QString title;
    Mm top; // on its page
};

// A panel drawn smaller on a page.
struct PanelOnPage {
    DisplayList list;
    RectMm place; // of the same shape as the panel
};

// A part of a page that leads to another one.
struct PageLink {
    RectMm area;
    int page = 0; // index among the pages of the body
};

// What a file may hold besides cover and contents.
enum class TermPart { Opening, Walls, Words, Meetings, Pictures, LookingBack, Heard };

struct TermPage {
    DisplayList list;
    std::vector<PanelOnPage> panels; // drawn after the list
    std::vector<Bookmark> bookmarks;
    std::vector<PageLink> links;
    QString label; // the number printed on it; empty = none
    TermPart part = TermPart::Opening; // of what stands first on it
};

// What a page takes in one go.
struct FlowBlock {
    Mm before; // from the last baseline above to the first cap line; nothing at the top of a page
    Mm height; // first cap line to last baseline
    bool keepWithNext = false;
    std::function<void(PageDrawing&, Mm top)> draw;
    std::vector<Bookmark> bookmarks; // `top` is filled in
};

class PageFlow {
public:
    using Sink = std::function<void(TermPage)>;
    PageFlow(const TermStyle& style, QString language, Sink sink);

    // What the pages from the next one on belong to; the text stands at their foot.
    void setRunning(const QString& text, TermPart part);
    // How pages are numbered; 1, 2, 3 unless something else is said.
    void setLabels(std::function<QString(int)> labels) { m_labels = std::move(labels); }
    void add(FlowBlock block);
    // What comes next begins at the top of a page.
    void breakPage();
    // A page that is not flowed: a panel, turned if need be. Carries its number like all others.
    void addPage(PageDrawing drawing,
        SizeMm size,
        std::vector<PanelOnPage> panels,
        std::vector<Bookmark> bookmarks);
    [[nodiscard]] int pages() const { return m_pages; } // handed on

private:
    void settle(); // the blocks that wait for what they are kept with
    void place(FlowBlock& block, bool first);
    void emitPage(TermPage page, PageDrawing drawing, SizeMm size);
    void drawFoot(PageDrawing& drawing, SizeMm size, const QString& label) const;

    const TermStyle& m_style;
    QString m_language;
    Sink m_sink;
    std::function<QString(int)> m_labels = [](int page) { return QString::number(page); };
    QString m_foot;
    TermPart m_part = TermPart::Opening;
    QString m_footHere; // of the page being filled
    TermPart m_partHere = TermPart::Opening;
    std::vector<FlowBlock> m_waiting;
    PageDrawing m_drawing;
    std::vector<Bookmark> m_bookmarks;
    Mm m_at; // last baseline on the page
    bool m_empty = true;
    int m_pages = 0;
};

} // namespace wainscot
