// Three other ways: the same pieces of a panel, arranged differently, to choose from.
#pragma once

#include "app/jobs/drawn_display.h"
#include "app/jobs/job_run.h"
#include "core/edit/edit.h"

namespace wainscot {

struct OtherWay {
    Edit edit; // puts the pieces so; to be performed by the caller
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
