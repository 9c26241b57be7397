// The pages of one experience in a term's file.
#pragma once

#include "core/base/wall_text.h"
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
    [[nodiscard]] QString say(WallText text) const { return wallText(text, m_experience.language); }
    [[nodiscard]] QString day(QDate day) const;
    void prose(WallText label, const QString& text);
    void heading(WallText text);

    TermText m_text;
    TermBlocks m_blocks;
};

} // namespace wainscot
