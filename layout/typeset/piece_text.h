// What a piece says, in paragraphs with face, colour and distances, before any width is known.
#pragma once

#include "core/permit/cleared.h"
#include "layout/engine/arrangement.h"
#include "layout/typeset/style.h"
#include "layout/typeset/text_block.h"

#include <optional>
#include <vector>

namespace wainscot {

struct TextPart {
    TextBlock block;
    std::optional<TextBlock> mark; // opens a quote; hangs outside the text edge
    Role role = Role::Paragraph;
    bool joins = false; // belongs to the element of the part before it
    Breaking breaking = Breaking::Paragraph;
    Mm above; // from the baseline before (or the top) to the cap line
    Mm cap;
    Mm lead;
    Mm widest; // the measure: no column is wider
    Mm inset; // kept free at the end of the column
    int characters = 0; // hard limit a line, 0 = none
};

// Lines for families to write on, below the text.
struct WritingSpace {
    Mm pitch;
    Mm first; // from the last baseline of the text to the first line
    int lines = 3; // at least
    [[nodiscard]] Mm height() const { return first + (lines - 1) * pitch; }
};

struct PieceText {
    std::vector<TextPart> parts;
    std::optional<QRgb> tint;
    Mm padding; // of the tint, on all sides
    Mm narrowest; // column
    Mm clearBelow; // of a title, besides the gutter
    bool atFoot = false; // stands on the lower edge of its cell
    bool fromRight = false; // the edge of the lines is the right one
    std::optional<WritingSpace> writing;
    engine::TextSpec spec;
};

// `titleStep` counts for titles only.
[[nodiscard]] PieceText pieceText(
    const ClearedPiece& piece, const PanelStyle& style, const QString& language, int titleStep);

// The style a piece is set in: the panel's, with the piece's own pairing and palette.
[[nodiscard]] PanelStyle styleOf(const ClearedPiece& piece, const PanelStyle& style);

// A picture's caption in its second language; no parts where it has none.
[[nodiscard]] PieceText secondCaption(const ClearedPiece& piece, const PanelStyle& style);
// What each of two captions side by side is given of a picture's width.
[[nodiscard]] Mm captionWidth(const ClearedPiece& piece, const PanelStyle& style, Mm width);

// Steps a title may take on a panel, the largest first.
[[nodiscard]] std::vector<int> titleSteps(SizeMm panel);

// A piece's lines at a width.
struct PieceLines {
    std::vector<LineBreaks> parts;
    Mm height; // cap line of the first to the last baseline, paddings and writing space included
    Mm usedWidth; // of the longest line, paddings included
    int lines = 0;
    bool fits = true;
};
[[nodiscard]] PieceLines pieceLines(const PieceText& text, Mm width);

// A title at every step it may take on a panel, the largest first.
class TitleTexts {
public:
    TitleTexts(const ClearedPiece& title, const PanelStyle& style, const QString& language);
    // The style's own step, or the largest below it that sets in at most so many lines as the style
    // has for titles.
    [[nodiscard]] int wantedStep(Mm width) const;
    // The largest step that sets in at most so many lines as the style has for titles and leaves
    // the room below it free; at least the wanted one, whatever the height.
    [[nodiscard]] int stepFor(SizeMm room) const;
    [[nodiscard]] const PieceText& at(int step) const;

private:
    std::vector<int> m_steps;
    std::vector<PieceText> m_texts;
    int m_styleStep = 5;
    int m_mostLines = 3;
};

// A tint ends on a row line: the height it takes for a piece that is `height` high.
[[nodiscard]] Mm huggedHeight(Mm height, const Grid& grid);

} // namespace wainscot
