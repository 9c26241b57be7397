// The pages of a term's file, made one after the other: a cover, a page of contents, then every
// experience with its walls as they hung, the words, meetings, pictures, and who was heard.
#pragma once

#include "core/permit/cleared_term.h"
#include "layout/typeset/page_flow.h"

#include <array>
#include <functional>
#include <set>

namespace wainscot {

// In the order they stand for an experience.
inline constexpr std::array kTermParts{TermPart::Opening,
    TermPart::Walls,
    TermPart::Words,
    TermPart::Meetings,
    TermPart::Pictures,
    TermPart::LookingBack,
    TermPart::Heard};

struct ContentsLine {
    int level = 0;
    QString title;
    QString label; // of the page
    int page = 0; // index among the pages of the body
};

using StyleOfPanel = std::function<PanelStyle(const ClearedPanel&)>;

class TermPages {
public:
    // REQUIRES: the term outlives it
    TermPages(
        const ClearedTerm& term, TermStyle style, StyleOfPanel styleOf, std::set<TermPart> parts);

    // Everything after the contents. The same pages each time it is called.
    void makeBody(const PageFlow::Sink& sink) const;
    [[nodiscard]] TermPage cover() const;
    // Numbered i, ii, ... after the cover.
    [[nodiscard]] std::vector<TermPage> contents(const std::vector<ContentsLine>& lines) const;

private:
    const ClearedTerm& m_term;
    TermStyle m_style;
    StyleOfPanel m_styleOf;
    std::set<TermPart> m_parts;
};

} // namespace wainscot
