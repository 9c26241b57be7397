#include "layout/typeset/page_flow.h"

#include "layout/typeset/term_text.h"

namespace wainscot {

namespace {

constexpr Mm kFootBelow{12}; // from the text's last line to the foot's baseline

} // namespace

PageFlow::PageFlow(const TermStyle& style, QString language, Sink sink)
    : m_style(style)
    , m_language(std::move(language))
    , m_sink(std::move(sink))
    , m_drawing(style.paper, m_language)
    , m_at(style.top)
{
}

void PageFlow::setRunning(const QString& text, TermPart part)
{
    settle(); // what waits belongs to what was before
    m_foot = text;
    m_part = part;
}

void PageFlow::add(FlowBlock block)
{
    const bool waits = block.keepWithNext;
    m_waiting.push_back(std::move(block));
    if (!waits)
        settle();
}

void PageFlow::settle()
{
    Mm together;
    for (std::size_t i = 0; i < m_waiting.size(); ++i)
        together += m_waiting[i].height + (i == 0 && m_empty ? Mm() : m_waiting[i].before);
    std::vector<FlowBlock> blocks;
    blocks.swap(m_waiting);
    if (!m_empty && m_at + together > m_style.bottom())
        breakPage();
    for (FlowBlock& block : blocks) {
        // Kept together they may be more than a page holds.
        if (!m_empty && m_at + block.before + block.height > m_style.bottom())
            breakPage();
        place(block, m_empty);
    }
}

void PageFlow::place(FlowBlock& block, bool first)
{
    if (first) {
        m_footHere = m_foot;
        m_partHere = m_part;
    }
    const Mm top = first ? m_at : m_at + block.before;
    if (block.draw)
        block.draw(m_drawing, top);
    for (Bookmark& bookmark : block.bookmarks) {
        bookmark.top = top;
        m_bookmarks.push_back(std::move(bookmark));
    }
    m_at = top + block.height;
    m_empty = false;
}

void PageFlow::breakPage()
{
    if (!m_waiting.empty())
        settle();
    if (m_empty)
        return;
    PageDrawing full(m_style.paper, m_language);
    std::swap(full, m_drawing);
    TermPage page;
    page.bookmarks.swap(m_bookmarks);
    m_at = m_style.top;
    m_empty = true;
    emitPage(std::move(page), std::move(full), m_style.paper);
}

void PageFlow::addPage(PageDrawing drawing,
    SizeMm size,
    std::vector<PanelOnPage> panels,
    std::vector<Bookmark> bookmarks)
{
    breakPage();
    m_footHere = m_foot;
    m_partHere = m_part;
    TermPage page;
    page.panels = std::move(panels);
    page.bookmarks = std::move(bookmarks);
    emitPage(std::move(page), std::move(drawing), size);
}

void PageFlow::emitPage(TermPage page, PageDrawing drawing, SizeMm size)
{
    page.label = m_labels(++m_pages);
    page.part = m_partHere;
    drawFoot(drawing, size, page.label);
    page.list = drawing.take();
    m_sink(std::move(page));
}

void PageFlow::drawFoot(PageDrawing& drawing, SizeMm size, const QString& label) const
{
    const TermText text(m_style, m_language);
    const Mm baseline = size.height - m_style.foot + kFootBelow;
    const auto draw = [&](const QString& words, Mm edge, bool fromRight) {
        const TextBlock block = text.caption(words, m_style.palette.adult);
        drawing.text(-1, block, text.oneLine(block), {edge, fromRight, baseline, Mm(1)});
    };
    draw(m_footHere, m_style.side, false);
    draw(label, size.width - m_style.side, true);
}

} // namespace wainscot
