#include "app/jobs/show_job.h"

#include <algorithm>
#include <map>
#include <set>

#include "core/base/says.h"

namespace wainscot {

namespace {

std::vector<NotYetHeard> notYetHeard(const Book& book, const Experience& experience)
{
    std::map<ChildId, std::set<QString>> answered;
    for (const Quote* quote : quotesOf(book, experience.id))
        answered[quote->child].insert(quote->prompt);
    const PromptSet* prompts = book.promptSets.find(experience.promptSet);
    std::vector<NotYetHeard> missing;
    for (const auto& [id, child] : book.children.rows()) {
        NotYetHeard one{child.name, {}};
        if (prompts != nullptr) {
            for (const Prompt& prompt : prompts->prompts) {
                if (answered[id].count(prompt.key) == 0)
                    one.prompts.append(prompt.key);
            }
        }
        if (!one.prompts.isEmpty())
            missing.push_back(one);
    }
    return missing;
}

} // namespace

Result<ShowOutcome> ShowJob::run(const Book& book, const JobRun& run) const
{
    run.report(Says::tr("Reading %1").arg(book.info.title));
    ShowOutcome outcome;
    outcome.title = book.info.title;
    for (const auto& [id, child] : book.children.rows())
        outcome.children.push_back(child);
    std::stable_sort(outcome.children.begin(),
        outcome.children.end(),
        [](const Child& a, const Child& b) { return a.name.localeAwareCompare(b.name) < 0; });
    for (const auto& [id, experience] : book.experiences.rows()) {
        ExperienceSummary summary;
        summary.title = experience.title;
        summary.on = experience.on;
        summary.quotes = static_cast<int>(quotesOf(book, id).size());
        summary.photos = static_cast<int>(picturesOf(book, id).size());
        summary.notYetHeard = notYetHeard(book, experience);
        outcome.experiences.push_back(summary);
    }
    for (const auto& [id, display] : book.displays.rows()) {
        const Experience* experience = book.experiences.find(display.experience);
        outcome.displays.push_back({display.name,
            experience != nullptr ? experience->title : QString(),
            display.audience,
            display.panelSize,
            static_cast<int>(panelsOf(book, id).size())});
    }
    return outcome;
}

} // namespace wainscot
