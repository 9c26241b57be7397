#include "layout/paper/structure_tree.h"

namespace wainscot::pdf {

namespace {

using Handle = QPDFObjectHandle;

} // namespace

StructureTree::StructureTree(QString language)
{
    m_entries.push_back({{"Document", std::move(language), {}, {}, {}}, -1, {}, {}});
}

StructureTree::Node StructureTree::add(Node parent, Properties properties)
{
    const Node node = static_cast<Node>(m_entries.size());
    m_entries.push_back({std::move(properties), parent, {}, {}});
    m_entries[static_cast<std::size_t>(parent)].children.push_back(node);
    return node;
}

StructureTree::Node StructureTree::addInline(Node parent, Properties properties)
{
    const Node node = static_cast<Node>(m_entries.size());
    m_entries.push_back({std::move(properties), parent, {}, {}});
    m_entries[static_cast<std::size_t>(parent)].flow.push_back({node, 0, 0});
    return node;
}

int StructureTree::addContent(Node node, int page)
{
    if (m_owners.size() <= static_cast<std::size_t>(page))
        m_owners.resize(static_cast<std::size_t>(page) + 1);
    std::vector<Node>& owners = m_owners[static_cast<std::size_t>(page)];
    const int content = static_cast<int>(owners.size());
    owners.push_back(node);
    m_entries[static_cast<std::size_t>(node)].flow.push_back({-1, page, content});
    return content;
}

const std::string& StructureTree::typeOf(Node node) const
{
    return m_entries[static_cast<std::size_t>(node)].properties.type;
}

Handle StructureTree::dictionary(const Entry& entry) const
{
    const Properties& p = entry.properties;
    Handle dict = Handle::parse("<< /Type /StructElem >>");
    dict.replaceKey("/S", Handle::newName("/" + p.type));
    if (!p.language.isEmpty())
        dict.replaceKey("/Lang", Handle::newString(p.language.toStdString()));
    if (!p.alternative.isEmpty())
        dict.replaceKey("/Alt", Handle::newUnicodeString(p.alternative.toStdString()));
    if (!p.actualText.isEmpty())
        dict.replaceKey("/ActualText", Handle::newUnicodeString(p.actualText.toStdString()));
    if (!p.box.empty())
        dict.replaceKey(
            "/A", Handle::parse("<< /O /Layout /Placement /Block /BBox " + p.box + " >>"));
    return dict;
}

Handle StructureTree::parentTree(QPDF& file, const std::vector<Handle>& nodes) const
{
    Handle numbers = Handle::newArray();
    for (std::size_t page = 0; page < m_owners.size(); ++page) {
        Handle owners = Handle::newArray();
        for (const Node owner : m_owners[page])
            owners.appendItem(nodes[static_cast<std::size_t>(owner)]);
        numbers.appendItem(Handle::newInteger(static_cast<long long>(page)));
        numbers.appendItem(file.makeIndirectObject(owners));
    }
    Handle tree = Handle::newDictionary();
    tree.replaceKey("/Nums", numbers);
    return file.makeIndirectObject(tree);
}

void StructureTree::write(QPDF& file, const std::vector<Handle>& pages) const
{
    Handle root = file.makeIndirectObject(Handle::parse("<< /Type /StructTreeRoot >>"));
    std::vector<Handle> nodes;
    for (const Entry& entry : m_entries)
        nodes.push_back(file.makeIndirectObject(dictionary(entry)));
    for (std::size_t i = 0; i < m_entries.size(); ++i) {
        const Entry& entry = m_entries[i];
        nodes[i].replaceKey(
            "/P", entry.parent < 0 ? root : nodes[static_cast<std::size_t>(entry.parent)]);
        Handle kids = Handle::newArray();
        for (const Kid& kid : entry.flow) {
            if (kid.node >= 0) {
                kids.appendItem(nodes[static_cast<std::size_t>(kid.node)]);
                continue;
            }
            // All content of a node stands on one page: a panel is a page.
            nodes[i].replaceKey("/Pg", pages[static_cast<std::size_t>(kid.page)]);
            kids.appendItem(Handle::newInteger(kid.content));
        }
        for (const Node child : entry.children)
            kids.appendItem(nodes[static_cast<std::size_t>(child)]);
        if (kids.getArrayNItems() > 0)
            nodes[i].replaceKey("/K", kids);
    }
    root.replaceKey("/K", Handle::newArray({nodes.front()}));
    root.replaceKey("/ParentTree", parentTree(file, nodes));
    root.replaceKey(
        "/ParentTreeNextKey", Handle::newInteger(static_cast<long long>(m_owners.size())));
    file.getRoot().replaceKey("/StructTreeRoot", root);
    file.getRoot().replaceKey("/MarkInfo", Handle::parse("<< /Marked true >>"));
}

} // namespace wainscot::pdf
