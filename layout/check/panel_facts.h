// What there is to measure on a typeset panel, read from its display list: lines of text with their
// drawn cap height, pictures, fills, pieces.
#pragma once

#include "core/permit/cleared.h"
#include "layout/check/limits.h"
#include "layout/typeset/display_list.h"
#include "layout/typeset/style.h"

#include <QString>

#include <vector>

namespace wainscot::check {

// What a line is read as. Each use has its own distance, and so its own least size.
enum class Use {
    Title, // from afar
    Voice, // a child's words, at the reading distance
    Body, // an adult's text, at the reading distance
    Small, // captions, names, labels, headings, credits: from 0.8 of the reading distance
};

struct TextLine {
    PieceId piece;
    PieceKind kind = PieceKind::Quote;
    Role role = Role::Paragraph;
    Use use = Use::Body;
    QString text; // as read, without the marks a quote hangs out
    QString family; // of the longest run
    Mm cap; // drawn height of H; 0 = the face has no H
    Mm smallLetters; // drawn height of x; 0 = the face has no x
    Mm em; // of the face, for scripts whose letters have no common height
    Mm left; // of the words, hanging mark aside
    Mm right;
    Mm baseline;
    QRgb colour = 0xff000000; // of the longest run
    QRgb ground = 0xffffffff; // what it stands on
    bool endsParagraph = true;
    int joinedLetters = 0; // letters that lost their own glyph to a ligature
    [[nodiscard]] Mm capLine() const { return baseline - cap; }
};

struct PictureFact {
    PieceId piece;
    PieceKind kind = PieceKind::Photo;
    RectMm place;
    ClearedPicture picture;
    [[nodiscard]] double ppi() const; // of the part that shows
};

struct FillFact {
    PieceId piece;
    RectMm rect;
    QRgb colour = 0xffffffff;
};

struct PanelFacts {
    PanelId panelId;
    int number = 1;
    Limits limits; // it is measured against
    Display display;
    PanelStyle style;
    std::vector<ClearedPiece> pieces; // by order
    std::vector<TextLine> lines; // in reading order, top to bottom within a piece
    std::vector<PictureFact> pictures;
    std::vector<FillFact> fills;
    std::vector<LeftOut> leftOut;

    [[nodiscard]] const ClearedPiece* piece(PieceId id) const;
    [[nodiscard]] std::vector<const TextLine*> linesOf(PieceId id) const;
    [[nodiscard]] bool isLandscape() const;
};

[[nodiscard]] PanelFacts factsOf(
    const ClearedPanel& panel, const PanelStyle& style, const DisplayList& list);

// Height of a drawn letter in em; 0 when the face has none.
[[nodiscard]] double drawnHeight(const QRawFont& font, QChar letter);

} // namespace wainscot::check
