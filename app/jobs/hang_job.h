// Where the panels of a display could hang on a wall, and what was measured there.
#pragma once

#include "app/jobs/job_run.h"
#include "core/base/finding.h"
#include "core/base/geometry.h"
#include "core/model/book.h"
#include "layout/wall/cover.h"
#include "layout/wall/stature.h"

#include <optional>
#include <vector>

namespace wainscot {

struct ProposedPlace {
    int panel = 0; // its number in the display
    std::optional<RectMm> place; // from the wall's upper left corner; none = no room
};

struct HangOutcome {
    std::vector<ProposedPlace> panels; // by number
    double coveredShare = 0; // of the wall, 0 to 1
    wall::CoverLimit limit;
    std::vector<Finding> findings;
};

// WrongUse for a wall without size and an unknown limit; NotFound for an unknown display.
struct HangJob {
    QString display;
    SizeMm wallSize;
    Viewers viewers = Viewers::Both;
    int youngest = 4; // years; the ages charts tell of are 3 to 12
    int oldest = 6;
    QString limit = QStringLiteral("20"); // a name of coverLimits()
    Result<HangOutcome> run(const Book& book, const JobRun& run) const;
};

} // namespace wainscot
