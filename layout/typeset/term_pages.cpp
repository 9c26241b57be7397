#include "layout/typeset/term_pages.h"

#include "core/base/wall_text.h"
#include "layout/typeset/term_blocks.h"
#include "layout/typeset/term_experience.h"

namespace wainscot {

TermPages::TermPages(
    const ClearedTerm& term, TermStyle style, StyleOfPanel styleOf, std::set<TermPart> parts)
    : m_term(term)
    , m_style(std::move(style))
    , m_styleOf(std::move(styleOf))
    , m_parts(std::move(parts))
{
}

void TermPages::makeBody(const PageFlow::Sink& sink) const
{
    PageFlow flow(m_style, m_term.language(), sink);
    for (const ClearedExperience& experience : m_term.experiences())
        ExperiencePages(experience, m_style, m_styleOf, m_parts, flow).make();
    if (m_parts.count(TermPart::Heard) > 0 && !m_term.heard().empty()) {
        const TermText text(m_style, m_term.language());
        TermBlocks blocks(text, flow);
        flow.setRunning(m_term.title(), TermPart::Heard);
        const QString title = wallText(WallText::WhoWasHeard, m_term.language());
        blocks.title(title, title);
        QStringList numbers;
        for (std::size_t i = 1; i <= m_term.experiences().size(); ++i)
            numbers.append(QString::number(i));
        blocks.heard(numbers, m_term.heard());
        for (std::size_t i = 0; i < m_term.experiences().size(); ++i)
            blocks.prose(QString::number(i + 1), m_term.experiences()[i].title);
        flow.breakPage();
    }
}

} // namespace wainscot
