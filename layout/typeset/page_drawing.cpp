#include "layout/typeset/page_drawing.h"

namespace wainscot {

PageDrawing::PageDrawing(SizeMm size, const QString& language)
{
    m_list.size = size;
    m_list.language = language;
    Element document;
    document.role = Role::Document;
    document.parent = -1;
    document.language = language;
    m_list.elements.push_back(document);
}

int PageDrawing::add(Role role, const QString& language, int parent)
{
    Element element;
    element.role = role;
    element.parent = parent;
    if (language != m_list.language)
        element.language = language;
    m_list.elements.push_back(element);
    return static_cast<int>(m_list.elements.size()) - 1;
}

int PageDrawing::addOnce(int key, Role role, const QString& language)
{
    if (m_onceKey != key) {
        m_onceKey = key;
        m_onceElement = add(role, language);
    }
    return m_onceElement;
}

void PageDrawing::text(int element,
    const TextBlock& block,
    const LineBreaks& breaks,
    const TextBlock::Place& place,
    LineSpan lines)
{
    if (!block.isEmpty())
        add(element, block.draw(breaks, place, lines));
}

void PageDrawing::add(int element, TextBlock::Drawn drawn)
{
    for (GlyphRun& run : drawn.runs)
        m_list.marks.push_back({element, {}, std::move(run)});
    for (FontGap& gap : drawn.gaps)
        m_list.fontGaps.push_back(std::move(gap));
}

void PageDrawing::part()
{
    if (m_list.marks.empty())
        return;
    if (auto* run = std::get_if<GlyphRun>(&m_list.marks.back().shape))
        run->endsLine = true;
}

int PageDrawing::picture(const ClearedPicture& picture, const RectMm& place)
{
    const int element = figure(picture.alternative, place);
    m_list.marks.push_back({element, {}, PlacedPicture{picture, place}});
    return element;
}

int PageDrawing::figure(const QString& alternative, const RectMm& bounds)
{
    const int element = add(Role::Figure);
    m_list.elements.back().alternative = alternative;
    m_list.elements.back().bounds = bounds;
    return element;
}

void PageDrawing::fill(const RectMm& rect, QRgb colour, int element)
{
    m_list.marks.push_back({element, {}, Fill{rect, colour}});
}

void PageDrawing::disc(const Disc& disc, int element)
{
    m_list.marks.push_back({element, {}, disc});
}

void PageDrawing::shape(const Shape& shape, int element)
{
    m_list.marks.push_back({element, {}, shape});
}

} // namespace wainscot
