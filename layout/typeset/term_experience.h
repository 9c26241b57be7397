// The pages of one experience in a term's file.
#pragma once

#include "layout/typeset/term_blocks.h"
#include "layout/typeset/term_pages.h"

namespace wainscot {

class ExperiencePages {
public:
    // REQUIRES: all outlive it
    ExperiencePages(const ClearedExperience& experience,
        const TermStyle& style,
        const StyleOfPanel& styleOf,
        const std::set<TermPart>& parts,
        PageFlow& flow);
    void make();

private:
    void opening();
    void walls();
    void wallPage(const ClearedWall& wall, const ClearedPanel& panel);
    void wallPhotos(const ClearedWall& wall);
    void words();
    void meetings();
    void pictures();
    void lookingBack();
    void heard();
    [[nodiscard]] const ClearedPiece* dominantPicture() const;
    void begin(TermPart part);

    const ClearedExperience& m_experience;
    const TermStyle& m_style;
    const StyleOfPanel& m_styleOf;
    const std::set<TermPart>& m_parts;
    PageFlow& m_flow;
    TermText m_text;
    TermBlocks m_blocks;
};

// "Tuesday, 3 November 2026". A record is read in other years.
[[nodiscard]] QString dayOfRecord(QDate day);

} // namespace wainscot
