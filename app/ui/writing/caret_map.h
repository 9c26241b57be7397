// Where the caret stands in a piece's own text as it is typeset: the same lines as on paper.
#pragma once

#include "core/model/display.h"
#include "layout/typeset/display_list.h"

#include <QString>

#include <vector>

namespace wainscot::ui {

// Offsets count letters of the text as it is written (UTF-16). What is drawn may differ from it: a
// name may give way to "[a child]", lines break at spaces, marks stand around. What has no place of
// its own on the panel stands where its neighbour ends.
class CaretMap {
public:
    CaretMap() = default;
    // `list` holds the piece as drawn with `text`.
    CaretMap(const DisplayList& list, const Piece& piece, const QString& text, Mm emptyHeight);

    [[nodiscard]] RectMm caretAt(int offset) const; // of no width
    [[nodiscard]] int offsetAt(PointMm at) const; // nearest
    // The offset one line up or down (`by` -1 or 1) nearest to `x`; the first or last offset when
    // there is no such line.
    [[nodiscard]] int offsetInLine(int offset, int by, Mm x) const;
    [[nodiscard]] int lineStart(int offset) const;
    [[nodiscard]] int lineEnd(int offset) const;
    // What a selection covers, one or several rectangles a line.
    [[nodiscard]] std::vector<RectMm> between(int from, int to) const;
    [[nodiscard]] RectMm bounds() const; // of all lines
    [[nodiscard]] std::size_t lines() const { return m_lines.size(); }

private:
    struct Line {
        Mm baseline;
        Mm top;
        Mm bottom;
        Mm start; // where its first letter begins
    };
    // A letter that is drawn.
    struct Letter {
        QChar letter;
        Mm left;
        Mm right;
        int line = 0;
        bool rightToLeft = false;
        [[nodiscard]] Mm lead() const { return rightToLeft ? right : left; }
        [[nodiscard]] Mm end() const { return rightToLeft ? left : right; }
    };
    struct Stop {
        Mm x;
        int line = 0;
    };

    void readRun(const GlyphRun& run);
    void placeStops(const QString& text);
    [[nodiscard]] Stop stopAfterGap(QChar gap, const Stop& before, bool rightToLeft);
    [[nodiscard]] int limited(int offset) const;

    std::vector<Line> m_lines;
    std::vector<Letter> m_letters;
    std::vector<Stop> m_stops; // one for each offset, the end included
    std::vector<int> m_letterAt; // of each offset; -1 = nothing drawn
};

} // namespace wainscot::ui
