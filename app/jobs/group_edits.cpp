#include "app/jobs/group_edits.h"

#include "app/jobs/answers_in_hand.h"
#include "core/edit/removal.h"
#include "core/voice/joining.h"
#include "core/voice/regrouping.h"

#include <algorithm>
#include <map>
#include <set>

namespace wainscot {

namespace {

std::vector<ProposedGroup> membersOf(const std::vector<const Group*>& groups)
{
    std::vector<ProposedGroup> members;
    for (const Group* group : groups) {
        members.push_back({group->quotes});
        std::sort(members.back().answers.begin(), members.back().answers.end());
    }
    return members;
}

// Only what can be put together: an answer whose words have gone is left out.
std::vector<ProposedGroup> among(
    std::vector<ProposedGroup> groups, const std::vector<Answer>& answers)
{
    std::set<QuoteId> known;
    for (const Answer& answer : answers)
        known.insert(answer.id);
    for (ProposedGroup& group : groups) {
        auto& all = group.answers;
        all.erase(
            std::remove_if(
                all.begin(), all.end(), [&known](QuoteId id) { return known.count(id) == 0; }),
            all.end());
    }
    return groups;
}

int lastOrder(const Book& book, ExperienceId experience)
{
    const auto groups = groupsOf(book, experience);
    return groups.empty() ? 0 : groups.back()->order;
}

// Whether most of a proposed group was in the group before.
bool isMostly(const ProposedGroup& now, const ProposedGroup& before)
{
    const auto same = std::count_if(now.answers.begin(), now.answers.end(), [&](QuoteId id) {
        return std::binary_search(before.answers.begin(), before.answers.end(), id);
    });
    return 2 * std::size_t(same) > now.answers.size();
}

// Of the answers that are in no group, those that are `wanted`.
template <class Wanted>
void placeInto(
    EditBuilder& edit, const Book& book, const Experience& experience, const Wanted& wanted)
{
    const std::vector<const Group*> groups = groupsOf(book, experience.id);
    if (groups.empty())
        return;
    const std::vector<Answer> answers = answersTo(book, experience);
    std::map<GroupId, Group> more;
    for (const Newcomer& newcomer : placeNewcomers(
             answers, among(membersOf(groups), answers), keptPairsOf(book), GroupingWish{})) {
        if (!newcomer.group || !wanted(newcomer.answer))
            continue;
        const Group& group = *groups[*newcomer.group];
        more.try_emplace(group.id, group).first->second.quotes.push_back(newcomer.answer);
    }
    for (const auto& [id, group] : more)
        edit.put(group);
}

std::map<QuoteId, std::set<QuoteId>> companyOf(const Book& book, ExperienceId experience)
{
    std::map<QuoteId, std::set<QuoteId>> company;
    for (const Group* group : groupsOf(book, experience)) {
        for (const QuoteId id : group->quotes)
            company[id].insert(group->quotes.begin(), group->quotes.end());
    }
    return company;
}

// Where all of a group was held together, its halves still are two.
void letGoOfParted(EditBuilder& edit,
    const Book& book,
    const std::vector<std::vector<std::size_t>>& halves,
    const std::vector<Answer>& members)
{
    std::map<QuoteId, std::size_t> half;
    for (std::size_t at = 0; at < halves.size(); ++at) {
        for (const std::size_t member : halves[at])
            half[members[member].id] = at + 1;
    }
    for (const KeptPair& pair : keptPairsOf(book)) {
        if (!pair.apart && half[pair.answer] != half[pair.other])
            edit.remove<KeptPair>(pair.id);
    }
}

} // namespace

std::vector<const Group*> groupsOf(const Book& book, ExperienceId experience)
{
    std::vector<const Group*> groups;
    for (const auto& [id, group] : book.groups.rows()) {
        if (group.experience == experience)
            groups.push_back(&group);
    }
    std::stable_sort(groups.begin(), groups.end(), [](const Group* one, const Group* other) {
        return one->order < other->order;
    });
    return groups;
}

const Group* groupWith(const Book& book, QuoteId answer)
{
    for (const auto& [id, group] : book.groups.rows()) {
        if (std::find(group.quotes.begin(), group.quotes.end(), answer) != group.quotes.end())
            return &group;
    }
    return nullptr;
}

std::vector<QuoteId> onTheirOwn(const Book& book, const Experience& experience)
{
    std::vector<QuoteId> alone;
    for (const Answer& answer : answersTo(book, experience)) {
        if (groupWith(book, answer.id) == nullptr)
            alone.push_back(answer.id);
    }
    std::sort(alone.begin(), alone.end());
    return alone;
}

std::vector<GroupWords> wordsOfGroupsIn(const Book& book, const Experience& experience)
{
    const std::vector<Answer> answers = answersTo(book, experience);
    return wordsOfGroups(answers, among(membersOf(groupsOf(book, experience.id)), answers));
}

std::size_t proposedCount(const Book& book, ExperienceId experience)
{
    const auto groups = groupsOf(book, experience);
    return std::size_t(std::count_if(
        groups.begin(), groups.end(), [](const Group* group) { return !group->keptByHand; }));
}

Edit proposeGroupsEdit(const Book& book,
    const Experience& experience,
    const QString& label,
    std::optional<std::size_t> proposed)
{
    EditBuilder edit(book, label);
    std::vector<const Group*> kept;
    std::vector<const Group*> before;
    for (const Group* group : groupsOf(book, experience.id))
        (group->keptByHand ? kept : before).push_back(group);
    GroupingWish wish;
    wish.groups = proposed;
    const std::vector<Answer> answers = answersTo(book, experience);
    const Proposal proposal = proposeGroups(answers, membersOf(kept), keptPairsOf(book), wish);
    const std::vector<ProposedGroup> old = membersOf(before);
    const auto from = goesOnFrom(proposal.groups, old);
    const std::vector<GroupWords> words = wordsOfGroups(answers, proposal.groups);
    std::set<GroupId> goOn;
    int order = lastOrder(book, experience.id);
    for (std::size_t at = 0; at < proposal.groups.size(); ++at) {
        Group group;
        if (from[at])
            group = *before[*from[at]];
        else {
            group.id = edit.newId<Group>();
            group.experience = experience.id;
            group.order = ++order;
        }
        if (!from[at] || !isMostly(proposal.groups[at], old[*from[at]]))
            group.label = words[at].label;
        group.quotes = proposal.groups[at].answers;
        goOn.insert(group.id);
        edit.put(group);
    }
    for (const Group* group : before) {
        if (goOn.count(group->id) == 0)
            removeGroup(edit, book, group->id);
    }
    return edit.take();
}

int answersMoved(const Book& before, const Book& after, const Experience& experience)
{
    auto was = companyOf(before, experience.id);
    auto is = companyOf(after, experience.id);
    int moved = 0;
    for (const Answer& answer : answersTo(before, experience))
        moved += was[answer.id] == is[answer.id] ? 0 : 1;
    return moved;
}

Edit renameGroupEdit(const Book& book, GroupId group, const QString& name, const QString& label)
{
    EditBuilder edit(book, label);
    const QString words = name.simplified();
    if (const Group* found = book.groups.find(group);
        found != nullptr && !words.isEmpty() && words != found->label) {
        Group renamed = *found;
        renamed.label = words;
        renamed.keptByHand = true;
        edit.put(renamed);
    }
    return edit.take();
}

Edit splitGroupEdit(const Book& book, GroupId group, const QString& label)
{
    EditBuilder edit(book, label);
    const Group* found = book.groups.find(group);
    const Experience* experience =
        found != nullptr ? book.experiences.find(found->experience) : nullptr;
    if (experience == nullptr)
        return edit.take();
    std::vector<Answer> members;
    for (const Answer& answer : answersTo(book, *experience)) {
        if (std::find(found->quotes.begin(), found->quotes.end(), answer.id) != found->quotes.end())
            members.push_back(answer);
    }
    if (members.size() < 2)
        return edit.take();
    const HeldPairs held{heldPairs(keptPairsOf(book), members).together, {}};
    const std::vector<Joining> made = joinings(likenessOf(members), -1, members.size(), held);
    const auto halves = setsAfter(made, members.size() - 2, members.size());
    for (std::size_t half = 0; half < halves.size(); ++half) {
        Group part = *found;
        ProposedGroup answers;
        for (const std::size_t member : halves[half])
            answers.answers.push_back(members[member].id);
        part.quotes = answers.answers;
        part.keptByHand = true;
        if (half > 0) {
            part.id = edit.newId<Group>();
            part.label = wordsOfGroups(answersTo(book, *experience), {answers}).front().label;
        }
        edit.put(part);
    }
    letGoOfParted(edit, book, halves, members);
    return edit.take();
}

Edit keepGroupEdit(const Book& book, GroupId group, bool byHand, const QString& label)
{
    EditBuilder edit(book, label);
    if (const Group* found = book.groups.find(group)) {
        Group kept = *found;
        kept.keptByHand = byHand;
        edit.put(kept);
    }
    return edit.take();
}

Edit placeNewcomersEdit(const Book& book, const Experience& experience, const QString& label)
{
    EditBuilder edit(book, label);
    placeInto(edit, book, experience, [](QuoteId /*answer*/) { return true; });
    return edit.take();
}

Edit joinLikeOnesEdit(
    const Book& book, const std::vector<QuoteId>& taken, const QString& label, int gesture)
{
    EditBuilder edit(book, label, gesture);
    std::map<ExperienceId, std::set<QuoteId>> byExperience;
    for (const QuoteId id : taken) {
        if (const Quote* quote = book.quotes.find(id))
            byExperience[quote->experience].insert(id);
    }
    for (const auto& [experience, answers] : byExperience) {
        const std::set<QuoteId>& own = answers;
        if (const Experience* found = book.experiences.find(experience))
            placeInto(edit, book, *found, [&own](QuoteId id) { return own.count(id) > 0; });
    }
    return edit.take();
}

} // namespace wainscot
