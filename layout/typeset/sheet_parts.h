// What every sheet to answer on is made of: marks, code, frames, signs, text of one size.
#pragma once

#include "layout/typeset/answer_sheet.h"
#include "layout/typeset/page_drawing.h"

namespace wainscot {

// A text with its lines in a width, measured before it is drawn.
struct SheetText {
    TextBlock block;
    LineBreaks breaks;
    Mm cap;
    Mm lead;
    QString language;
    [[nodiscard]] Mm height() const; // with room above capitals and below the last baseline
    [[nodiscard]] bool fromRight() const { return block.direction() == Direction::RightToLeft; }
};

// In the face for new readers. An empty text has no height.
[[nodiscard]] SheetText sheetText(const QString& text,
    const QString& language,
    Mm cap,
    Mm width,
    Weight weight = Weight::Regular,
    QRgb colour = 0xff000000);

class SheetParts {
public:
    // `sheet`: the part of the page that is one sheet. REQUIRES: the page outlives it
    SheetParts(PageDrawing& page, const RectMm& sheet)
        : m_page(page)
        , m_sheet(sheet)
    {
    }

    [[nodiscard]] RectMm inside() const { return m_sheet.grown(-kSheetEdge); }
    // Between the marks above and beside the code below.
    [[nodiscard]] RectMm head() const;
    [[nodiscard]] RectMm body() const; // between head and foot
    void cornerMarks();
    // The code beside the lower right mark, its text and what the sheet belongs to at the left.
    void foot(const QString& code, const QString& about, const QString& language);
    void frame(const RectMm& box);
    void rule(PointMm from, Mm length, Mm thickness, QRgb colour);
    void write(const SheetText& text, const RectMm& in, Role role);
    // A sign drawn in lines, or the picture, in the middle of a place.
    void beside(const ClearedPrompt& prompt, const RectMm& place);

private:
    PageDrawing& m_page;
    RectMm m_sheet;
};

} // namespace wainscot
