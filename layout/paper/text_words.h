// A glyph run cut into words, each with the way its text is told to a reader of the PDF.
#pragma once

#include "layout/paper/font_face.h"
#include "layout/typeset/display_list.h"

#include <QString>

#include <vector>

namespace wainscot::pdf {

struct CodedGlyph {
    std::size_t index = 0; // in the run
    FontFace::Code code = 0;
};

struct Word {
    std::vector<CodedGlyph> glyphs; // in reading order, whichever way that runs
    QString text;
    // What the glyphs stand for is not enough: the text is told for the whole word as well.
    bool told = false;
    bool space = false;
};

// In reading order.
//
// Every glyph stands for some letters, so that in reading order they spell the word: a ligature for
// several, and glyphs that share letters (Devanagari, marks on a base) for some each. A word of the
// latter kind is told as a whole too, because readers take the places of such glyphs for gaps;
// but not from right to left, where readers turn a told word round.
[[nodiscard]] std::vector<Word> wordsOf(const GlyphRun& run, FontFace& face);

} // namespace wainscot::pdf
