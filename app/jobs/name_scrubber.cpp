#include "app/jobs/name_scrubber.h"

#include <QFileInfo>

namespace wainscot {

NameScrubber::NameScrubber(NameEraser& name, const EraseReach& reach)
    : m_name(name)
    , m_reach(reach)
{
}

void NameScrubber::scrub(Child& one) const
{
    m_name.inAdultsText(one.languages);
}

void NameScrubber::scrub(Display& one) const
{
    m_name.inAdultsText(one.name);
}

void NameScrubber::scrub(Wall& one) const
{
    m_name.inAdultsText(one.name);
}

void NameScrubber::scrub(Panel& one) const
{
    for (LeftFinding& left : one.left)
        m_name.inAdultsText(left.why);
}

void NameScrubber::scrub(PanelTemplate& one) const
{
    m_name.inAdultsText(one.name);
}

void NameScrubber::scrub(PermissionRecord& one) const
{
    m_name.inAdultsText(one.by);
    m_name.inAdultsText(one.note);
}

void NameScrubber::scrub(PromptSet& one) const
{
    for (QString* text : {&one.name, &one.sense, &one.ages})
        m_name.inAdultsText(*text);
    for (Prompt& prompt : one.prompts) {
        m_name.inAdultsText(prompt.text);
        for (PromptWording& wording : prompt.others)
            m_name.inAdultsText(wording.text);
        if (m_reach.has(prompt.picture))
            prompt.picture = {};
    }
}

void NameScrubber::scrub(Quote& one) const
{
    m_name.inChildsWords(one.words);
    m_name.inChildsWords(one.firstWords);
    m_name.inAdultsText(one.scribe);
    if (m_reach.has(one.repliesTo))
        one.repliesTo = {};
    if (m_reach.has(one.sheet))
        one.sheet = {};
    if (m_reach.has(one.drawing))
        one.drawing = {};
}

void NameScrubber::scrub(NoAnswer& one) const
{
    m_name.inAdultsText(one.note);
    m_name.inAdultsText(one.by);
}

void NameScrubber::scrub(Meeting& one) const
{
    m_name.inAdultsText(one.notes);
    std::erase_if(one.readOut, [this](QuoteId id) { return m_reach.has(id); });
    std::erase_if(
        one.happened, [this](const MeetingNote& note) { return note.child == m_reach.child(); });
    for (MeetingNote& note : one.happened)
        m_name.inAdultsText(note.text);
}

void NameScrubber::scrub(Reflection& one) const
{
    for (QString* text : {&one.question, &one.answer, &one.by})
        m_name.inAdultsText(*text);
}

void NameScrubber::scrub(Goal& one) const
{
    m_name.inAdultsText(one.text);
    m_name.inAdultsText(one.source);
}

void NameScrubber::scrub(Experience& one) const
{
    for (QString* text : {&one.title,
             &one.place,
             &one.materials,
             &one.sense,
             &one.goals,
             &one.context,
             &one.interpretation,
             &one.nextSteps,
             &one.invitation,
             &one.credits})
        m_name.inAdultsText(*text);
}

void NameScrubber::scrub(Observation& one) const
{
    std::erase(one.children, m_reach.child());
    m_name.inAdultsText(one.words);
    if (m_reach.has(one.picture))
        one.picture = {};
}

void NameScrubber::scrub(Picture& one) const
{
    m_name.inAdultsText(one.caption);
    m_name.inAdultsText(one.by);
    if (m_name.isInFileName(one.fileName))
        one.fileName = QStringLiteral("picture-%1.%2")
                           .arg(one.id.number())
                           .arg(QFileInfo(one.fileName).suffix());
}

void NameScrubber::scrub(Group& one) const
{
    std::erase_if(one.quotes, [this](QuoteId id) { return m_reach.has(id); });
    m_name.inChildsWords(one.label);
}

void NameScrubber::scrub(Translation& one) const
{
    if (one.what == Translated::Words)
        m_name.inChildsWords(one.text);
    else
        m_name.inAdultsText(one.text);
}

void NameScrubber::scrub(Piece& one) const
{
    m_name.inAdultsText(one.heading);
    m_name.inAdultsText(one.text);
    m_name.inChildsWords(one.shownWords);
}

} // namespace wainscot
