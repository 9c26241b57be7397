// A term as one file to keep: typeset, illustrated and written page by page, so that a file of any
// length takes the memory of a few pages.
#pragma once

#include "core/permit/cleared_term.h"
#include "layout/paper/pdf_writer.h"
#include "layout/typeset/term_pages.h"

#include <map>
#include <set>

namespace wainscot {

struct TermWishes {
    SizeMm paper{Mm(210), Mm(297)};
    std::set<TermPart> parts{kTermParts.begin(), kTermParts.end()};
    StyleOfPanel styleOf;
};

struct TermReport {
    PaperReport paper;
    int front = 0; // pages of cover and contents
    std::map<TermPart, int> pages; // of the body, by what stands first on them
};

// How long the file would be, without a picture being touched. `paper` tells only the pages.
[[nodiscard]] TermReport planTerm(const ClearedTerm& term, const TermWishes& wishes);

// A tagged PDF with outlines, page labels and a linked page of contents; PDF/A-2u as writePdf.
// Progress is told in pages. Errors as of writePdf; WrongUse when the term holds nothing.
Result<TermReport> writeTerm(const QString& path,
    const ClearedTerm& term,
    const TermWishes& wishes,
    PictureSource& pictures,
    const PaperOptions& options,
    const PaperWatch& watch = {});

} // namespace wainscot
