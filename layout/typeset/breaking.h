// Where lines break: children's words and titles by sense, adult text by the whole paragraph. Pure
// arithmetic on the widths of units; nothing is ever hyphenated.
#pragma once

#include <QString>

#include <vector>

namespace wainscot {

// Something that stays on one line. Widths in any one unit of length.
struct BreakUnit {
    QString text; // without the spaces after it
    double width = 0;
    double space = 0; // width of the spaces after it, which vanish at a line's end
    int characters = 0; // of the text
    int spaces = 0;
    bool insidePhrase = false;
    bool noBreak = false; // a line may not end here
};

struct Measure {
    double column = 0; // no line is wider, unless a single unit is
    int characters = 0; // hard limit a line; 0 = none
};

struct LineBreaks {
    std::vector<int> ends; // for each line, the index of the first unit after it
    bool fits = true; // false: some unit is wider than the column
};

// Children's words and titles. For the fewest lines and one more, the breaks of least
//   sum ((l - T)/T)^2 (last line x 0.45) + 1.0 for a last line under 0.40 T
//   + 0.25 for one word under 8 letters alone on the last line - 0.16 after . ! ? - 0.09 after , ;
//   :
//   + 0.07 after a small word + 0.12 where the first word of a sentence would end a line
//   + 0.5 inside a phrase written without spaces + 0.22 for the extra line,
// T = 1.04 x total width / lines, at most the column.
[[nodiscard]] LineBreaks breakBySense(
    const std::vector<BreakUnit>& units, Measure measure, const QString& language);

// Adult text: the fewest lines, evenly filled over the whole paragraph; the last line is at least
// 33 % of the measure where that is possible. A sentence does not begin at a line's end for the
// sake of a little evenness.
[[nodiscard]] LineBreaks breakParagraph(const std::vector<BreakUnit>& units, Measure measure);

// From the first unit of a line to the last, without the spaces at its end.
[[nodiscard]] double lineWidth(const std::vector<BreakUnit>& units, int first, int end);
[[nodiscard]] int lineCharacters(const std::vector<BreakUnit>& units, int first, int end);

} // namespace wainscot
