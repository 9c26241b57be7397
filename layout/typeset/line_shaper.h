// Shapes the broken lines of a paragraph with Qt's text layout, and tells which glyphs stand for
// which letters.
#pragma once

#include "layout/typeset/text_block.h"

#include <QTextLayout>

#include <vector>

namespace wainscot {

struct LineRange {
    int start = 0; // in the block's text
    int length = 0; // without the spaces at the line's end
};

class LineShaper {
public:
    LineShaper(const TextBlock& block, const std::vector<LineRange>& lines);

    [[nodiscard]] double width(std::size_t line) const; // units
    // Adds the runs of a line in reading order; `origin` is its left end on the baseline.
    void append(std::size_t line, PointMm origin, bool endsLine, TextBlock::Drawn& drawn) const;

private:
    struct Glyph {
        QRawFont font;
        quint32 index = 0;
        QPointF at;
        bool rightToLeft = false;
    };
    struct Piece { // letters and the glyphs that stand for them
        int start = 0; // in the layout's text
        int length = 0;
        std::vector<Glyph> glyphs;
    };
    using Stretch = TextBlock::Stretch;

    [[nodiscard]] std::vector<Piece> pieces(int start, int length) const;
    [[nodiscard]] std::vector<Piece> onePieceALetter(int start, int length) const;
    [[nodiscard]] std::vector<Glyph> glyphs(int start, int length) const;
    [[nodiscard]] static bool sharesGlyph(const Piece& piece, const std::vector<Glyph>& glyphs);
    [[nodiscard]] bool isPlain(int start, int length) const;
    void appendStretch(const Stretch& stretch,
        int start,
        int length,
        double baseline,
        PointMm origin,
        TextBlock::Drawn& drawn) const;
    void report(const Stretch& stretch, const Piece& piece, TextBlock::Drawn& drawn) const;

    const TextBlock& m_block;
    std::vector<LineRange> m_lines;
    std::vector<int> m_starts; // of the lines in the layout's text
    QTextLayout m_layout;
};

} // namespace wainscot
