// Takes one child out of values that stay in the book: the name out of their texts, what is the
// child's own out of their lists.
#pragma once

#include "app/jobs/erase_reach.h"
#include "app/jobs/name_eraser.h"

namespace wainscot {

class NameScrubber {
public:
    NameScrubber(NameEraser& name, const EraseReach& reach);

    void scrub(Child& one) const;
    void scrub(Display& one) const;
    void scrub(Wall& one) const;
    void scrub(Panel& one) const;
    void scrub(PanelTemplate& one) const;
    void scrub(PermissionRecord& one) const;
    void scrub(PromptSet& one) const;
    void scrub(Quote& one) const;
    void scrub(NoAnswer& one) const;
    void scrub(Meeting& one) const;
    void scrub(Reflection& one) const;
    void scrub(Goal& one) const;
    void scrub(Experience& one) const;
    void scrub(Observation& one) const;
    void scrub(Picture& one) const;
    void scrub(Group& one) const;
    void scrub(Translation& one) const;
    void scrub(Piece& one) const;

private:
    NameEraser& m_name;
    const EraseReach& m_reach;
};

} // namespace wainscot
