#include "layout/paper/way_finding.h"

#include "layout/paper/pdf_syntax.h"

namespace wainscot::pdf {

namespace {

using Handle = QPDFObjectHandle;

double heightOf(Handle page)
{
    return page.getKey("/MediaBox").getArrayItem(3).getNumericValue();
}

// The page from a height on, as near as the reader already is.
Handle destination(const Handle& page, Mm top)
{
    const double up = heightOf(page) - toPt(top).value();
    return Handle::newArray({page,
        Handle::newName("/XYZ"),
        Handle::newInteger(0),
        Handle::newReal(number(up)),
        Handle::newNull()});
}

// Ties siblings to each other and to what holds them.
void chain(Handle parent, std::vector<Handle>& children)
{
    for (std::size_t i = 0; i < children.size(); ++i) {
        children[i].replaceKey("/Parent", parent);
        if (i > 0)
            children[i].replaceKey("/Prev", children[i - 1]);
        if (i + 1 < children.size())
            children[i].replaceKey("/Next", children[i + 1]);
    }
    if (children.empty())
        return;
    parent.replaceKey("/First", children.front());
    parent.replaceKey("/Last", children.back());
}

constexpr Mm kAbove{8}; // white shown above what a reader is led to

} // namespace

void writeOutline(
    QPDF& file, const std::vector<OutlineEntry>& entries, const std::vector<Handle>& pages)
{
    if (entries.empty())
        return;
    Handle root = file.makeIndirectObject(Handle::parse("<< /Type /Outlines >>"));
    std::vector<Handle> tops;
    std::vector<std::vector<Handle>> below;
    for (const OutlineEntry& entry : entries) {
        Handle item = file.makeIndirectObject(Handle::newDictionary());
        item.replaceKey("/Title", Handle::newUnicodeString(entry.title.toStdString()));
        const Mm top = std::max(Mm(), entry.top - kAbove);
        item.replaceKey("/Dest", destination(pages[static_cast<std::size_t>(entry.page)], top));
        if (entry.level == 0 || tops.empty()) {
            tops.push_back(item);
            below.emplace_back();
        } else {
            below.back().push_back(item);
        }
    }
    for (std::size_t i = 0; i < tops.size(); ++i) {
        chain(tops[i], below[i]);
        if (!below[i].empty()) // closed at first
            tops[i].replaceKey(
                "/Count", Handle::newInteger(-static_cast<long long>(below[i].size())));
    }
    chain(root, tops);
    root.replaceKey("/Count", Handle::newInteger(static_cast<long long>(tops.size())));
    file.getRoot().replaceKey("/Outlines", root);
    file.getRoot().replaceKey("/PageMode", Handle::newName("/UseOutlines"));
}

void writeWays(QPDF& file, const std::vector<PageWay>& ways, const std::vector<Handle>& pages)
{
    for (const PageWay& way : ways) {
        Handle page = pages[static_cast<std::size_t>(way.from)];
        const double height = heightOf(page);
        const auto real = [](double value) { return Handle::newReal(number(value)); };
        // Printed with the page, as an archive asks of every annotation (PDFA-2B rules, 6.3.2).
        Handle link = file.makeIndirectObject(
            Handle::parse("<< /Type /Annot /Subtype /Link /F 4 /Border [0 0 0] >>"));
        link.replaceKey("/Rect",
            Handle::newArray({real(toPt(way.area.x).value()),
                real(height - toPt(way.area.bottom()).value()),
                real(toPt(way.area.right()).value()),
                real(height - toPt(way.area.y).value())}));
        link.replaceKey("/Dest", destination(pages[static_cast<std::size_t>(way.to)], Mm()));
        if (!page.hasKey("/Annots"))
            page.replaceKey("/Annots", Handle::newArray());
        page.getKey("/Annots").appendItem(link);
    }
}

void writePageLabels(QPDF& file, const std::vector<std::pair<int, std::string>>& labels)
{
    if (labels.empty())
        return;
    Handle numbers = Handle::newArray();
    for (const auto& [page, form] : labels) {
        numbers.appendItem(Handle::newInteger(page));
        numbers.appendItem(Handle::parse("<< " + form + " >>"));
    }
    Handle tree = Handle::newDictionary();
    tree.replaceKey("/Nums", numbers);
    file.getRoot().replaceKey("/PageLabels", tree);
}

} // namespace wainscot::pdf
