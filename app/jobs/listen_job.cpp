#include "app/jobs/listen_job.h"

#include "app/jobs/answers_in_hand.h"

#include <algorithm>

namespace wainscot {

namespace {

std::vector<HeardGroup> groupsInBook(const Book& book, ExperienceId experience, bool onlyByHand)
{
    std::vector<HeardGroup> kept;
    for (const auto& [id, group] : book.groups.rows()) {
        if (group.experience == experience && (group.keptByHand || !onlyByHand))
            kept.push_back({id, group.label, group.quotes, {}});
    }
    return kept;
}

std::vector<ProposedGroup> membersOf(
    const std::vector<HeardGroup>& groups, const std::vector<Answer>& answers)
{
    std::vector<ProposedGroup> members;
    for (const HeardGroup& group : groups) {
        ProposedGroup& one = members.emplace_back();
        for (const Answer& answer : answers) {
            if (std::find(group.quotes.begin(), group.quotes.end(), answer.id)
                != group.quotes.end())
                one.answers.push_back(answer.id);
        }
    }
    return members;
}

std::vector<NotYetHeard> notYetHeardOn(
    const Book& book, const Experience& experience, const JobRun& run)
{
    const Result<ShowOutcome> shown = ShowJob{}.run(book, run);
    if (shown) {
        for (const ExperienceSummary& one : shown->experiences) {
            if (one.title == experience.title)
                return one.notYetHeard;
        }
    }
    return {};
}

} // namespace

std::vector<Answer> answersTo(const Book& book, const Experience& experience)
{
    std::vector<Answer> answers;
    for (const Quote* quote : quotesOf(book, experience.id)) {
        if (!quote->meeting.isValid() && !quote->words.trimmed().isEmpty())
            answers.push_back({quote->id,
                quote->words,
                quote->language.isEmpty() ? experience.language : quote->language});
    }
    return answers;
}

Result<ListenOutcome> ListenJob::run(const Book& book, const JobRun& run) const
{
    const Experience* found = experienceByTitle(book, experience);
    if (found == nullptr)
        return Error{
            ErrorCode::NotFound, QStringLiteral("The experience \"%1\"").arg(experience), {}};
    if (groups && *groups < 1)
        return Error{ErrorCode::WrongUse,
            QStringLiteral("%1 groups").arg(*groups),
            QStringLiteral("one or more can be proposed")};
    run.report(QStringLiteral("Listening to %1").arg(found->title));
    const std::vector<Answer> answers = answersTo(book, *found);
    ListenOutcome outcome;
    outcome.notYetHeard = notYetHeardOn(book, *found, run);
    outcome.groups = groupsInBook(book, found->id, groups.has_value());
    std::vector<ProposedGroup> all = membersOf(outcome.groups, answers);
    GroupingWish wish;
    if (groups)
        wish.groups = std::size_t(*groups);
    const Proposal proposal = proposeGroups(answers, all, keptPairsOf(book), wish);
    for (const ProposedGroup& group : proposal.groups) {
        outcome.groups.push_back({{}, {}, group.answers, {}});
        all.push_back(group);
    }
    const std::vector<GroupWords> words = wordsOfGroups(answers, all);
    for (std::size_t at = 0; at < words.size(); ++at) {
        outcome.groups[at].shared = words[at].shared;
        if (outcome.groups[at].label.isEmpty())
            outcome.groups[at].label = words[at].label;
    }
    outcome.onTheirOwn = proposal.onTheirOwn;
    return outcome;
}

} // namespace wainscot
