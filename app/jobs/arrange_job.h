// From what an experience holds to a display: what is shown, in which order, and where.
#pragma once

#include "app/jobs/advice.h"
#include "app/jobs/job_run.h"
#include "core/edit/edit.h"
#include "core/permit/cleared.h"
#include "layout/engine/arrangement.h"
#include "layout/engine/breaks.h"

#include <QString>

#include <optional>
#include <vector>

namespace wainscot {

struct ArrangedPiece {
    Piece piece; // as it goes into the book
    int panel = 1; // 1-based
    double keep = 1; // share of the picture that shows
    double ppi = 0; // 0 for text
};

struct ArrangeOutcome {
    Display display;
    int panels = 0;
    std::vector<ArrangedPiece> pieces;
    std::vector<LeftOut> leftOut; // refused by permission first, then not placed for room
    std::size_t refused = 0; // how many of them permission refused
    std::vector<Advice> advice; // where a panel is too empty or too full; each has been tried
    // Where the open panels of a display of days begin: what that costs, and whether it is proven
    // that no other breaks are better. Nothing = one panel, or each has its own contents.
    std::optional<engine::Breaks> breaks;
    std::vector<QString> droppedWishes; // of the template, each with its reason: sentences
    Edit edit; // to be performed by the caller
};

// Why there is no arrangement; nothing in the book changes.
struct ArrangeFailure {
    engine::Obstacle what = engine::Obstacle::TooMuchForPages;
    double missingMm2 = 0;
    int panel = 1;
    QString says; // one sentence with what would help
};

// A display that exists under the name keeps its pinned pieces; everything else on it is proposed
// anew.
struct ArrangeJob {
    QString experience; // title
    QString display; // name
    Audience audience = Audience::Classroom;
    SizeMm panelSize{Mm(841), Mm(594)};
    int panels = 1; // 1..20
    std::optional<Mm> readingDistance; // 0.3 to 10 m; nothing = the display's, or what is usual
    QString plan; // a template by name, built in or the book's own; empty = by what there is
    QString pairing; // empty = what suits the plan
    QString palette; // empty = what suits the plan
    bool advises = true; // tries what would suit better; costs some solves where something would
    std::vector<GroupId> ideas; // words stand by these groups instead of by days; one panel
    std::optional<int> voiceStep; // children's words on the type scale, 1..3; 0 = the plan's own

    Result<std::variant<ArrangeOutcome, ArrangeFailure>> run(
        const Book& book, const JobRun& run) const;
};

} // namespace wainscot
