// Sheets to answer on: the questions large, a box to draw or write in under each, marks and a code
// by which a later version finds its way on a photographed sheet; and a sheet for the adult who
// writes down what the children say.
//
// What stands in the code, in capital letters, digits and strokes, numbers only, never a name:
//   W1A/experience/child/prompt set/first question/questions     a child's sheet
//   W1S/experience/prompt set/first child/last child/children    a sheet for the scribe
// W1 is the version of this text. Ids are the book's own; 0 = no child, the default set. Questions
// count from 1 in the order of the set. The same text stands beside the code for people.
//
// On a child's sheet four black squares lie with their outer corners 9 mm from its edges; the code
// is beside the lower right one. Between them stand as many frames as there are questions, from
// top to bottom. All of it lies the same way whichever way the questions are written.
#pragma once

#include "core/permit/cleared_sheets.h"
#include "layout/typeset/display_list.h"

#include <vector>

namespace wainscot {

struct AnswerSheetWishes {
    SizeMm paper{Mm(210), Mm(297)}; // upright
    int perPage = 1; // 1 or 2; two stand side by side on paper laid across, to be cut
    bool lines = false; // to write on; otherwise the boxes are empty
    bool forChildren = true; // a sheet for every child
    bool forScribe = false; // and one with all of them
};

// What a child of an age needs. Common practice, no source: younger children draw and write large.
struct AgeMeasures {
    Mm leastBox; // height; a sheet goes on to a further page rather than below it
    Mm lineDistance; // of lines to write on
    Mm promptCap; // height of capitals in the question
};
[[nodiscard]] AgeMeasures measuresForAge(std::optional<int> months);

inline constexpr Mm kSheetEdge{9}; // from the edge of a sheet to marks and boxes
inline constexpr Mm kSheetMark{5}; // side of a corner mark
inline constexpr Mm kSheetModule{0.6}; // side of one module of the code

// The pages, children first.
[[nodiscard]] std::vector<DisplayList> answerSheets(
    const ClearedSheets& sheets, const AnswerSheetWishes& wishes);

} // namespace wainscot
