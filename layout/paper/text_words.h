// A glyph run cut into words, each with the way its text is told to a reader of the PDF.
#pragma once

#include "layout/paper/font_face.h"
#include "layout/typeset/display_list.h"

#include <QString>

#include <vector>

namespace wainscot::pdf {

struct Word {
    std::vector<int> glyphs; // of the run, from left to right
    QString text;
    // Every glyph stands for its own letters; else the whole word's text is told beside it.
    bool plain = true;
    bool space = false;
};

// From left to right. Notes in `face` what each glyph stands for.
//
// A glyph that stands for several letters (a ligature) is plain; several glyphs that share letters
// (Devanagari) are not, unless each glyph is one of the letters. A glyph keeps its first meaning
// throughout the file; a word that needs another one is not plain either.
[[nodiscard]] std::vector<Word> wordsOf(const GlyphRun& run, FontFace& face);

} // namespace wainscot::pdf
