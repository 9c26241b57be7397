// Why it is here: a panel's arrangement, or the place of one piece, in plain sentences.
#pragma once

#include "app/jobs/job_run.h"
#include "core/model/book.h"
#include "layout/engine/explain.h"

#include <QStringList>

namespace wainscot {

struct WhyOutcome {
    QStringList says; // whole sentences, what matters most first
    engine::PageReasons reasons; // the numbers behind them
};

struct WhyJob {
    PanelId panel;
    PieceId piece; // invalid = the whole panel
    bool compare = true; // a panel with the next best arrangement, which is looked for

    // NotFound when the panel is not there or the piece has no place on it; Cancelled.
    Result<WhyOutcome> run(const Book& book, const JobRun& run) const;
};

// "8 % cropped at the top"; empty when less than one percent is. `visible` is the part that shows,
// `share` how much of the picture does not.
[[nodiscard]] QString cropInWords(const RectFraction& visible, double share);

// "This panel is 4 % emptier than the next best arrangement." Shares of white, 0..1.
[[nodiscard]] QString emptinessInWords(double white, double nextWhite);

} // namespace wainscot
