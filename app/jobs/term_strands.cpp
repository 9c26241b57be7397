#include "app/jobs/term_strands.h"

#include <algorithm>
#include <map>

namespace wainscot {

namespace {

void stretch(TermStrand& strand, const std::optional<QDate>& day)
{
    if (!day || !day->isValid())
        return;
    strand.first = strand.first.isValid() ? std::min(strand.first, *day) : *day;
    strand.last = strand.last.isValid() ? std::max(strand.last, *day) : *day;
}

} // namespace

std::vector<TermStrand> strandsOf(const Book& book)
{
    std::map<ExperienceId, TermStrand> byExperience;
    for (const auto& [id, experience] : book.experiences.rows()) {
        TermStrand& strand = byExperience[id];
        strand.experience = id;
        strand.title = experience.title;
        stretch(strand, experience.on);
    }
    for (const auto& [id, quote] : book.quotes.rows()) {
        TermStrand& strand = byExperience[quote.experience];
        ++strand.answers;
        stretch(strand, quote.on);
    }
    for (const auto& [id, picture] : book.pictures.rows()) {
        if (picture.captured && picture.captured->local.isValid())
            stretch(byExperience[picture.experience], picture.captured->local.date());
    }
    for (const auto& [id, meeting] : book.meetings.rows()) {
        TermStrand& strand = byExperience[meeting.experience];
        stretch(strand, meeting.on);
        if (meeting.on.isValid())
            strand.meetings.push_back(meeting.on);
    }
    for (const auto& [id, display] : book.displays.rows()) {
        if (!panelsOf(book, id).empty())
            byExperience[display.experience].walls.push_back(id);
    }
    std::vector<TermStrand> strands;
    for (auto& [id, strand] : byExperience) {
        std::sort(strand.meetings.begin(), strand.meetings.end());
        if (book.experiences.contains(id))
            strands.push_back(std::move(strand));
    }
    std::stable_sort(strands.begin(), strands.end(), [](const auto& a, const auto& b) {
        return a.first.isValid() && (!b.first.isValid() || a.first < b.first);
    });
    return strands;
}

} // namespace wainscot
