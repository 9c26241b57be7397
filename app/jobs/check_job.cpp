#include "app/jobs/check_job.h"

#include "app/jobs/drawn_display.h"
#include "core/base/paper_size.h"
#include "core/base/says.h"
#include "layout/check/check.h"
#include "layout/paper/sheets.h"

#include <algorithm>

namespace wainscot {

namespace {

// None for a panel that one sheet holds, and for paper that takes no panel.
std::vector<Finding> seamFindings(
    const DrawnPanel& panel, const check::PanelFacts& facts, const SheetWishes& wishes)
{
    const Result<SheetPlan> even = planSheets(panel.cleared.size(), wishes.options());
    if (!even || even->count() < 2)
        return {};
    const SheetPlan plan = withQuietSeams(*even, panel.list);
    check::Seams seams;
    seams.upright.assign(plan.lefts.begin() + 1, plan.lefts.end());
    seams.level.assign(plan.tops.begin() + 1, plan.tops.end());
    seams.sheets = Says::tr("%1 sheets of %2").arg(plan.count()).arg(nameOfPaper(wishes.paper));
    return check::checkSeams(facts, seams);
}

} // namespace

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
        facts.back().limits = limits;
        const auto add = [&outcome](const std::vector<Finding>& found) {
            outcome.findings.insert(outcome.findings.end(), found.begin(), found.end());
        };
        add(check::checkPanel(facts.back()));
        if (sheets)
            add(seamFindings(panel, facts.back(), *sheets));
    }
    const std::vector<Finding> found = check::checkDisplay(book, drawn->display, facts);
    outcome.findings.insert(outcome.findings.end(), found.begin(), found.end());
    check::sortFindings(outcome.findings);
    return outcome;
}

} // namespace wainscot
