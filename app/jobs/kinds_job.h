// The kinds of panel an experience can become: every template tried on what there is.
#pragma once

#include "app/jobs/arrange_job.h"
#include "layout/typeset/display_list.h"

#include <vector>

namespace wainscot {

struct KindOfPanel {
    QString plan; // its name for programs
    QString name; // for people: "One question, many voices"
    ArrangeOutcome outcome; // its edit is to be performed by the caller
    DisplayList list; // the first panel
    std::size_t children = 0; // whose words are on it
};

struct KindsOutcome {
    std::vector<KindOfPanel> kinds;
    std::vector<QString> says; // why a kind is not among them: whole sentences
};

// `asked` as for one arrangement; its plan counts for nothing.
struct KindsJob {
    ArrangeJob asked;

    // Cancelled; and as ArrangeJob where no kind can be made at all.
    Result<KindsOutcome> run(const Book& book, const JobRun& run) const;
};

// "Days on a wall"; a teacher's own template keeps its name.
[[nodiscard]] QString kindInWords(const QString& plan);

} // namespace wainscot
