// One paragraph, from text to lines to glyph runs. Preparing it measures its words; breaking it at
// a width is arithmetic; only drawing it shapes the text as lines.
#pragma once

#include "core/base/geometry.h"
#include "layout/typeset/breaking.h"
#include "layout/typeset/display_list.h"
#include "layout/typeset/faces.h"
#include "layout/typeset/writing.h"

#include <optional>
#include <vector>

namespace wainscot {

// A stretch of a paragraph that looks alike.
struct TextSpan {
    QString text;
    FaceQuery face;
    QRgb colour = 0xff000000;
    double trackingEm = 0; // letter spacing in parts of the em, where letters do not join
    double drawnInEm = 0; // moved towards the text before it: a closing mark
    std::optional<QChar::Script> script; // whose face draws it; nothing = told by the letters
};

enum class Breaking { Sense, Paragraph };

// Some of a paragraph's lines: those that stand on one page.
struct LineSpan {
    std::size_t first = 0;
    std::size_t end = static_cast<std::size_t>(-1); // all that are left
};

// Plain values: may be broken at widths in any thread.
class TextBlock {
public:
    TextBlock() = default;
    // Measures the words. `language` BCP 47.
    TextBlock(const Pairing& pairing, std::vector<TextSpan> spans, QString language);

    [[nodiscard]] const QString& text() const { return m_text; }
    [[nodiscard]] Direction direction() const { return m_direction; }
    [[nodiscard]] const std::vector<BreakUnit>& units() const { return m_units; } // widths in units
    [[nodiscard]] Mm widestUnit() const;
    [[nodiscard]] bool isEmpty() const { return m_units.empty(); }

    // `characters`: hard limit a line, 0 = none.
    [[nodiscard]] LineBreaks lines(Breaking how, Mm column, int characters = 0) const;
    [[nodiscard]] Mm widthOf(const LineBreaks& breaks, std::size_t line) const;
    [[nodiscard]] int charactersOf(const LineBreaks& breaks, std::size_t line) const;

    // Where the lines stand: `edge` is their common left side, or their right side.
    struct Place {
        Mm edge;
        bool edgeIsRight = false;
        Mm firstBaseline;
        Mm lead;
    };
    struct Drawn {
        std::vector<GlyphRun> runs; // in reading order
        std::vector<FontGap> gaps;
    };
    // Shapes the lines, the first of `which` on the first baseline. A line that was broken at a
    // space ends with a soft line break.
    [[nodiscard]] Drawn draw(
        const LineBreaks& breaks, const Place& place, LineSpan which = {}) const;

private:
    friend class LineShaper;
    // A stretch with one font and one colour.
    struct Stretch {
        int start = 0;
        int length = 0;
        FaceChoice face;
        double tracking = 0; // units
        QRgb colour = 0xff000000;
        double shift = 0; // units, in reading direction
    };
    [[nodiscard]] double measure(int start, int length) const;
    void measureSpaces();

    QString m_text;
    QString m_language;
    Direction m_direction = Direction::LeftToRight;
    std::vector<Stretch> m_stretches;
    std::vector<Unit> m_places;
    std::vector<BreakUnit> m_units;
};

} // namespace wainscot
