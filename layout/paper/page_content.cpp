#include "layout/paper/page_content.h"

#include "layout/paper/pdf_syntax.h"

#include <algorithm>
#include <utility>

namespace wainscot::pdf {

namespace {

using Handle = QPDFObjectHandle;

const char* typeOf(Role role)
{
    switch (role) {
    case Role::Document:
        return "Sect";
    case Role::Heading1:
        return "H1";
    case Role::Heading2:
        return "H2";
    case Role::Paragraph:
        return "P";
    case Role::Quote:
        return "BlockQuote";
    case Role::Figure:
        return "Figure";
    case Role::Caption:
        return "Caption";
    }
    return "P";
}

} // namespace

PageContent::PageContent(SharedObjects shared, SizeMm media, PointMm origin, Mm bleed)
    : m_shared(shared)
    , m_media(media)
    , m_origin(origin)
    , m_bleed(bleed)
    , m_resources(Handle::parse("<< /Font << >> /XObject << >> >>"))
{
}

void PageContent::tagInto(StructureTree& tree, Node parent, int page)
{
    m_tree = &tree;
    m_parent = parent;
    m_page = page;
}

std::string PageContent::x(Mm onPanel) const
{
    return points(onPanel + m_origin.x);
}

std::string PageContent::y(Mm onPanel) const
{
    return points(m_media.height - m_origin.y - onPanel);
}

std::string PageContent::box(const RectMm& onPanel) const
{
    return x(onPanel.x) + " " + y(onPanel.bottom()) + " " + points(onPanel.width) + " "
        + points(onPanel.height);
}

std::string PageContent::corners(const RectMm& b) const
{
    if (!m_place)
        return "[" + x(b.x) + " " + y(b.bottom()) + " " + x(b.right()) + " " + y(b.y) + "]";
    const auto across = [&](Mm at) { return points(m_place->x + m_scale * at); };
    const auto up = [&](Mm at) { return points(m_whole.height - m_place->y - m_scale * at); };
    return "[" + across(b.x) + " " + up(b.bottom()) + " " + across(b.right()) + " " + up(b.y) + "]";
}

void PageContent::addElements(const DisplayList& list)
{
    m_nodes.assign(list.elements.size(), m_parent);
    m_paragraphs.clear();
    if (m_tree == nullptr)
        return;
    for (std::size_t i = 1; i < list.elements.size(); ++i) {
        const Element& element = list.elements[i];
        StructureTree::Properties properties{
            typeOf(element.role), element.language, element.alternative, {}, {}};
        if (element.role == Role::Figure)
            properties.box = corners(element.bounds);
        const auto parent = static_cast<std::size_t>(std::max(element.parent, 0));
        m_nodes[i] = m_tree->add(m_nodes[parent], std::move(properties));
    }
}

// Quotes and whole documents group other elements; their own words stand in a paragraph.
PageContent::Node PageContent::contentNode(int element)
{
    const Node node = m_nodes[static_cast<std::size_t>(element)];
    const std::string& type = m_tree->typeOf(node);
    if (type != "BlockQuote" && type != "Sect" && type != "Document")
        return node;
    const auto [at, isNew] = m_paragraphs.try_emplace(element, 0);
    if (isNew)
        at->second = m_tree->addInline(node, {"P", {}, {}, {}, {}});
    return at->second;
}

void PageContent::leave()
{
    if (m_inside != Inside::Nothing)
        m_stream += "EMC\n";
    m_inside = Inside::Nothing;
}

void PageContent::enterArtifact(const char* kind)
{
    if (m_inside == Inside::Artifact)
        return;
    leave();
    if (m_tree == nullptr)
        return;
    m_stream += std::string("/Artifact <</Type /") + kind + ">> BDC\n";
    m_inside = Inside::Artifact;
}

void PageContent::enter(int element)
{
    if (m_tree == nullptr)
        return leave();
    if (element < 0)
        return enterArtifact("Layout");
    if (m_inside == Inside::Element && m_element == element)
        return;
    leave();
    const Node node = contentNode(element);
    m_stream += "/" + m_tree->typeOf(node) + " <</MCID "
        + std::to_string(m_tree->addContent(node, m_page)) + ">> BDC\n";
    m_inside = Inside::Element;
    m_element = element;
}

// A word inside an element closes the element's own content first: a replacement text inside marked
// content makes some readers lose the rest of it.
void PageContent::enterSpan(int element, const QString& text)
{
    leave();
    m_stream += "/Span <<";
    if (m_tree != nullptr && element >= 0) {
        const Node span = m_tree->addInline(contentNode(element), {"Span", {}, {}, text, {}});
        m_stream += "/MCID " + std::to_string(m_tree->addContent(span, m_page)) + " ";
    }
    m_stream += "/ActualText " + textString(text) + ">> BDC\n";
    m_inside = Inside::Span;
}

void PageContent::play(const DisplayList& list)
{
    addElements(list);
    for (const Mark& mark : list.marks) {
        if (const auto* run = std::get_if<GlyphRun>(&mark.shape)) {
            draw(*run, mark.element);
            continue;
        }
        enter(mark.element);
        if (const auto* rect = std::get_if<Fill>(&mark.shape))
            draw(*rect, list.size);
        else if (const auto* picture = std::get_if<PlacedPicture>(&mark.shape))
            draw(*picture, list.size);
        else if (const auto* disc = std::get_if<Disc>(&mark.shape))
            draw(*disc);
        else if (const auto* shape = std::get_if<Shape>(&mark.shape))
            draw(*shape);
    }
    leave();
}

void PageContent::playInto(const DisplayList& list, const RectMm& place)
{
    leave();
    m_whole = m_media;
    m_place = place.movedBy(m_origin.x, m_origin.y);
    m_scale = place.width / list.size.width;
    const PointMm origin = std::exchange(m_origin, PointMm{});
    const QRgb colour = m_colour;
    m_stream += "q " + number(m_scale) + " 0 0 " + number(m_scale) + " " + points(m_place->x) + " "
        + points(m_whole.height - m_place->bottom()) + " cm\n";
    m_media = list.size;
    play(list);
    m_stream += "Q\n";
    m_colour = colour;
    m_media = m_whole;
    m_origin = origin;
    m_place.reset();
}

void PageContent::drawLines(const std::vector<Line>& lines, Pt thickness, QRgb colour)
{
    enterArtifact("Page");
    m_stream += "q " + rgb(colour) + " RG " + number(thickness.value()) + " w\n";
    for (const Line& line : lines) {
        m_stream += points(line.from.x) + " " + points(m_media.height - line.from.y) + " m "
            + points(line.to.x) + " " + points(m_media.height - line.to.y) + " l S\n";
    }
    m_stream += "Q\n";
}

void PageContent::drawForm(const std::string& name,
    const Handle& form,
    const RectMm& window,
    PointMm topLeft,
    double scale,
    SizeMm formSize)
{
    leave();
    m_resources.getKey("/XObject").replaceKey(name, form);
    m_stream += "q " + box(window) + " re W n " + number(scale) + " 0 0 " + number(scale) + " "
        + x(topLeft.x) + " " + y(topLeft.y + formSize.height * scale) + " cm " + name + " Do Q\n";
}

void PageContent::enlarge(double scale)
{
    leave();
    m_stream = "q " + number(scale) + " 0 0 " + number(scale) + " "
        + points(m_media.width * (1 - scale) / 2) + " " + points(m_media.height * (1 - scale) / 2)
        + " cm\n" + m_stream + "Q\n";
}

std::string PageContent::take()
{
    leave();
    return std::move(m_stream);
}

} // namespace wainscot::pdf
