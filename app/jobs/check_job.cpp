#include "app/jobs/check_job.h"

#include "app/jobs/drawn_display.h"
#include "layout/check/check.h"

#include <algorithm>

namespace wainscot {

bool CheckOutcome::mustStop() const
{
    return std::any_of(findings.begin(), findings.end(), [](const Finding& finding) {
        return finding.severity == Severity::Stop;
    });
}

Result<CheckOutcome> CheckJob::run(const Book& book, const JobRun& run) const
{
    const Result<DrawnDisplay> drawn = drawDisplay(book, display, run.today);
    if (!drawn)
        return drawn.error();
    CheckOutcome outcome;
    outcome.display = drawn->display.name;
    std::vector<check::PanelFacts> facts;
    for (const DrawnPanel& panel : drawn->panels) {
        if (run.cancelled())
            return stoppedByPerson();
        facts.push_back(check::factsOf(panel.cleared, panel.style, panel.list));
        const std::vector<Finding> found = check::checkPanel(facts.back());
        outcome.findings.insert(outcome.findings.end(), found.begin(), found.end());
    }
    const std::vector<Finding> found = check::checkDisplay(book, drawn->display, facts);
    outcome.findings.insert(outcome.findings.end(), found.begin(), found.end());
    check::sortFindings(outcome.findings);
    return outcome;
}

} // namespace wainscot
