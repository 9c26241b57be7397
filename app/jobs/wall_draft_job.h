// From groups the class has talked about to a display: a draft for the teacher to edit.
#pragma once

#include "app/jobs/arrange_job.h"

#include <variant>
#include <vector>

namespace wainscot {

// Only the words of the chosen groups and what was answered to them are there to be selected from;
// they stand by idea, every child before any child twice.
// Where the adults' interpretation is not written yet, their answers on looking back stand for it.
// One group talked about in two meetings or more becomes the thread of an idea. NotFound for an
// unknown experience, WrongUse without a group.
struct WallDraftJob {
    ExperienceId experience;
    std::vector<GroupId> groups;
    QString display; // its name
    Audience audience = Audience::Building;
    // Nothing = A1 across, or where its words would leave that half empty the smaller paper of the
    // ISO A series that they fill.
    std::optional<SizeMm> panelSize = std::nullopt;
    Result<std::variant<ArrangeOutcome, ArrangeFailure>> run(
        const Book& book, const JobRun& run) const;
};

// What the adults wrote on looking back, in the order of their questions, as paragraphs.
[[nodiscard]] QString interpretationFrom(const Book& book, ExperienceId experience);

} // namespace wainscot
