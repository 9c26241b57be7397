// Which answers to an experience belong together for a talk, and who has not been heard on it.
#pragma once

#include "app/jobs/job_run.h"
#include "app/jobs/show_job.h"
#include "core/model/book.h"
#include "core/voice/group_words.h"

#include <map>
#include <optional>
#include <vector>

namespace wainscot {

// The answers that can be put together: given to a prompt, and with words. What was told in a
// meeting belongs to the idea it answers.
[[nodiscard]] std::vector<Answer> answersTo(const Book& book, const Experience& experience);

struct HeardGroup {
    GroupId id; // of the book's group it is, or goes on from; invalid = new
    QString label;
    std::vector<QuoteId> quotes; // by id
    std::map<QuoteId, std::vector<WordSpan>> shared; // words of each that others have too
};

struct ListenOutcome {
    std::vector<NotYetHeard> notYetHeard;
    std::vector<HeardGroup> groups; // first those made by hand, then the proposed
    std::vector<QuoteId> onTheirOwn; // by id
};

// Reads and proposes; the book stays as it is. Groups of the book stay as they are, and answers in
// none are put together; with a wished number only groups kept by hand stay. NotFound for an
// unknown experience; WrongUse for less than one group.
struct ListenJob {
    QString experience; // its title
    std::optional<int> groups; // so many proposed, or as near as can be
    Result<ListenOutcome> run(const Book& book, const JobRun& run) const;
};

} // namespace wainscot
