#include "app/jobs/wall_draft_job.h"

#include "app/jobs/meeting_edits.h"

#include <algorithm>
#include <set>

namespace wainscot {

namespace {

std::set<QuoteId> wordsOf(const Book& book, const std::vector<GroupId>& groups)
{
    std::set<QuoteId> words;
    for (const GroupId id : groups) {
        const Group* group = book.groups.find(id);
        for (const QuoteId quote : group != nullptr ? group->quotes : std::vector<QuoteId>{}) {
            words.insert(quote);
            for (const Reply& reply : threadUnder(book, quote))
                words.insert(reply.quote);
        }
    }
    return words;
}

// A group that two meetings talked about is one idea.
std::vector<GroupId> eachOnce(const std::vector<GroupId>& groups)
{
    std::vector<GroupId> once;
    for (const GroupId group : groups) {
        if (std::find(once.begin(), once.end(), group) == once.end())
            once.push_back(group);
    }
    return once;
}

// The book as if nothing else had been said about the experience.
Book withOnly(const Book& book, ExperienceId experience, const std::set<QuoteId>& words)
{
    Book scratch = book;
    for (const auto& [id, quote] : book.quotes.rows()) {
        if (quote.experience == experience && words.count(id) == 0)
            scratch.quotes.remove(id);
    }
    for (const auto& [id, translation] : book.translations.rows()) {
        if (translation.quote.isValid() && !scratch.quotes.contains(translation.quote))
            scratch.translations.remove(id);
    }
    return scratch;
}

using Arranged = Result<std::variant<ArrangeOutcome, ArrangeFailure>>;

// The smaller paper that the first arrangement's own advice tried and found to hold everything.
std::optional<SizeMm> fillingPaper(const Arranged& arranged)
{
    const auto* outcome = arranged ? std::get_if<ArrangeOutcome>(&*arranged) : nullptr;
    for (const Advice& one : outcome != nullptr ? outcome->advice : std::vector<Advice>{}) {
        if (one.kind == AdviceKind::SmallerPanel)
            return one.panelSize;
    }
    return std::nullopt;
}

bool travelsOverMeetings(const Book& book, const std::set<QuoteId>& words)
{
    std::set<MeetingId> meetings;
    for (const QuoteId id : words) {
        const Quote* quote = book.quotes.find(id);
        if (quote != nullptr && quote->meeting.isValid())
            meetings.insert(quote->meeting);
    }
    return meetings.size() > 1;
}

} // namespace

QString interpretationFrom(const Book& book, ExperienceId experience)
{
    std::vector<const Reflection*> answered;
    for (const auto& [id, reflection] : book.reflections.rows()) {
        if (reflection.experience == experience && !reflection.answer.trimmed().isEmpty())
            answered.push_back(&reflection);
    }
    std::stable_sort(answered.begin(),
        answered.end(),
        [](const Reflection* one, const Reflection* other) { return one->order < other->order; });
    QStringList paragraphs;
    for (const Reflection* reflection : answered)
        paragraphs << reflection->answer.trimmed();
    return paragraphs.join(QLatin1Char('\n'));
}

Result<std::variant<ArrangeOutcome, ArrangeFailure>> WallDraftJob::run(
    const Book& book, const JobRun& run) const
{
    const Experience* found = book.experiences.find(experience);
    if (found == nullptr)
        return Error{ErrorCode::NotFound, QStringLiteral("The experience"), {}};
    const std::set<QuoteId> words = wordsOf(book, groups);
    if (words.empty())
        return Error{ErrorCode::WrongUse, QStringLiteral("A draft without a group"), {}};
    Book scratch = withOnly(book, experience, words);
    Experience told = *found;
    if (told.interpretation.trimmed().isEmpty())
        told.interpretation = interpretationFrom(book, experience);
    scratch.experiences.put(told);
    ArrangeJob arrange;
    arrange.experience = told.title;
    arrange.display = display;
    arrange.audience = audience;
    arrange.panelSize = panelSize.value_or(arrange.panelSize);
    const std::vector<GroupId> ideas = eachOnce(groups);
    if (ideas.size() == 1 && travelsOverMeetings(book, words))
        arrange.plan = QStringLiteral("thread");
    else
        arrange.ideas = ideas;
    auto outcome = arrange.run(scratch, run);
    if (const auto paper = panelSize ? std::nullopt : fillingPaper(outcome)) {
        arrange.panelSize = *paper;
        outcome = arrange.run(scratch, run);
    }
    if (!outcome)
        return outcome;
    if (auto* arranged = std::get_if<ArrangeOutcome>(&*outcome); arranged && !(told == *found))
        arranged->edit.changes.emplace_back(ValueChange<Experience>{told.id, *found, told});
    return outcome;
}

} // namespace wainscot
