// Three other ways: the same pieces of a panel, arranged differently, to choose from.
#pragma once

#include "app/jobs/drawn_display.h"
#include "app/jobs/job_run.h"

namespace wainscot {

struct OtherWay {
    std::vector<Piece>
        pieces; // all of the panel, where they would stand; the caller makes the edit
    DrawnPanel drawn; // the panel as it would be, to be shown small
    double costRatio = 1; // to the best arrangement of these pieces
};

struct AlternativesOutcome {
    std::vector<OtherWay> ways; // at most three, the best one first; none is like what hangs now
    QString says; // one sentence when there are fewer than three; else empty
};

struct AlternativesJob {
    PanelId panel;

    // NotFound; Refused when the pieces do not fit the panel; Cancelled.
    Result<AlternativesOutcome> run(const Book& book, const JobRun& run) const;
};

} // namespace wainscot
