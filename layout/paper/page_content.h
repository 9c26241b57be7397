// Plays one display list into the content of a PDF page, with its structure.
#pragma once

#include "layout/paper/font_objects.h"
#include "layout/paper/page_boxes.h"
#include "layout/paper/picture_plan.h"
#include "layout/paper/structure_tree.h"
#include "layout/paper/text_words.h"
#include "layout/typeset/display_list.h"

#include <map>
#include <optional>
#include <string>

namespace wainscot::pdf {

// What the pages of one file share.
struct SharedObjects {
    FontObjects& fonts;
    const PicturePlan& plan;
    const std::vector<QPDFObjectHandle>& pictures; // by index in the plan
};

class PageContent {
public:
    // `origin`: where the panel's top left corner lies in the media, of `media` size. `bleed` is
    // how far colour at the edge of the panel reaches out.
    PageContent(SharedObjects shared, SizeMm media, PointMm origin, Mm bleed);

    // Everything drawn from now on belongs to the structure of a page; without this call it is
    // drawn untagged.
    void tagInto(StructureTree& tree, StructureTree::Node parent, int page);

    void play(const DisplayList& list);
    // A list of its own size drawn smaller or larger into a place of the same shape.
    void playInto(const DisplayList& list, const RectMm& place);

    // Things of the page itself, in media coordinates: never part of the structure.
    void drawLines(const std::vector<Line>& lines, Pt thickness, QRgb colour = 0xff000000);
    // Paints a form object, moved and scaled, inside a window.
    void drawForm(const std::string& name,
        const QPDFObjectHandle& form,
        const RectMm& window,
        PointMm topLeft,
        double scale,
        SizeMm formSize);

    // Everything drawn so far, larger or smaller around the middle of the page. REQUIRES: untagged
    void enlarge(double scale);

    // Ends the content; nothing can be drawn after it.
    [[nodiscard]] std::string take();
    [[nodiscard]] QPDFObjectHandle resources() const { return m_resources; }

private:
    using Node = StructureTree::Node;
    enum class Inside { Nothing, Artifact, Element, Span };

    void addElements(const DisplayList& list);
    [[nodiscard]] Node contentNode(int element);
    void enter(int element); // -1 = decoration
    void enterArtifact(const char* kind);
    void enterSpan(int element, const QString& text);
    void leave();
    void draw(const Fill& fill, SizeMm panel);
    void draw(const Disc& disc);
    void draw(const Shape& shape);
    [[nodiscard]] std::string circle(PointMm centre, Mm radius) const;
    void draw(const PlacedPicture& picture, SizeMm panel);
    void draw(const GlyphRun& run, int element);
    void setColour(QRgb colour);
    void showGlyphs(const GlyphRun& run, FontFace& face, const std::vector<CodedGlyph>& glyphs);
    void showSoftSpace(const GlyphRun& run, FontFace& face);
    [[nodiscard]] std::string x(Mm onPanel) const;
    [[nodiscard]] std::string y(Mm onPanel) const;
    [[nodiscard]] std::string box(const RectMm& onPanel) const; // "x y width height"
    [[nodiscard]] std::string corners(const RectMm& b) const; // on the page, of a figure

    SharedObjects m_shared;
    SizeMm m_media;
    PointMm m_origin;
    Mm m_bleed;
    std::optional<RectMm> m_place; // of a list that is drawn into a part of the page
    double m_scale = 1;
    SizeMm m_whole; // of the media, while m_media is a list's own size
    std::string m_stream;
    QPDFObjectHandle m_resources;
    QRgb m_colour = 0xff000000; // a page begins with black

    StructureTree* m_tree = nullptr;
    Node m_parent = 0;
    int m_page = 0;
    std::vector<Node> m_nodes; // by element
    std::map<int, Node> m_paragraphs; // of elements that hold no content themselves
    Inside m_inside = Inside::Nothing;
    int m_element = -1; // whose content is open
};

} // namespace wainscot::pdf
