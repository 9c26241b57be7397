// The structure behind the pages: headings, paragraphs and figures in reading order, each with the
// stretches of page content that belong to it.
#pragma once

#include "core/base/geometry.h"
#include "layout/paper/qpdf.h"

#include <QString>

#include <optional>
#include <string>
#include <vector>

namespace wainscot::pdf {

class StructureTree {
public:
    using Node = int;
    static constexpr Node kRoot = 0; // the document

    struct Properties {
        std::string type; // standard structure type, "P"
        QString language;
        QString alternative; // said instead of shown
        QString actualText; // said instead of what the glyphs stand for
        std::string box; // "[left bottom right top]" in points, of a figure
    };

    explicit StructureTree(QString language);

    Node add(Node parent, Properties properties);
    // A node that comes where its parent's content stands at this moment (a word in a paragraph).
    Node addInline(Node parent, Properties properties);

    // The number by which content on a page is marked as the node's own.
    int addContent(Node node, int page);

    [[nodiscard]] const std::string& typeOf(Node node) const;

    // Makes the objects and enters them into the file's catalogue. `pages` by page number.
    void write(QPDF& file, const std::vector<QPDFObjectHandle>& pages) const;

private:
    struct Kid {
        Node node = -1; // or, if negative, content:
        int page = 0;
        int content = 0;
    };
    struct Entry {
        Properties properties;
        Node parent = -1;
        std::vector<Kid> flow; // content and inline nodes, in drawing order
        std::vector<Node> children; // after the flow, in reading order
    };
    [[nodiscard]] QPDFObjectHandle dictionary(const Entry& entry) const;
    [[nodiscard]] QPDFObjectHandle parentTree(
        QPDF& file, const std::vector<QPDFObjectHandle>& nodes) const;

    std::vector<Entry> m_entries;
    std::vector<std::vector<Node>> m_owners; // by page and content number
};

} // namespace wainscot::pdf
