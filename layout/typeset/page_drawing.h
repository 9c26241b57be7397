// One page in the making: text blocks, pictures and rules put at a place, with the structure behind
// them.
#pragma once

#include "layout/typeset/display_list.h"
#include "layout/typeset/text_block.h"

namespace wainscot {

class PageDrawing {
public:
    PageDrawing(SizeMm size, const QString& language);

    [[nodiscard]] int add(Role role, const QString& language = {}, int parent = 0);
    // The element a text is continued in while it stays on one page; `key` names the text.
    [[nodiscard]] int addOnce(int key, Role role, const QString& language);
    // Some lines of a broken text.
    void text(int element,
        const TextBlock& block,
        const LineBreaks& breaks,
        const TextBlock::Place& place,
        LineSpan lines = {});
    void add(int element, TextBlock::Drawn drawn);
    // What comes next in the same element is parted from what stands there by a space.
    void part();
    // A figure; its caption may be added below the element that is answered.
    int picture(const ClearedPicture& picture, const RectMm& place);
    [[nodiscard]] int figure(const QString& alternative, const RectMm& bounds);
    void fill(const RectMm& rect, QRgb colour, int element = -1);
    void disc(const Disc& disc, int element);
    void shape(const Shape& shape, int element);

    void title(const QString& title) { m_list.title = title; } // of the document
    [[nodiscard]] bool isEmpty() const { return m_list.marks.empty(); }
    [[nodiscard]] DisplayList take() { return std::move(m_list); }

private:
    DisplayList m_list;
    int m_onceKey = -1;
    int m_onceElement = -1;
};

} // namespace wainscot
