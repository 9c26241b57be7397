#include "app/jobs/meeting_edits.h"

#include <algorithm>

namespace wainscot {

namespace {

template <class T> bool holds(const std::vector<T>& list, T one)
{
    return std::find(list.begin(), list.end(), one) != list.end();
}

template <class T> void takeOut(std::vector<T>& list, T one)
{
    list.erase(std::remove(list.begin(), list.end(), one), list.end());
}

void putIn(Meeting& meeting, const Group& group)
{
    if (holds(meeting.groups, group.id))
        return;
    meeting.groups.push_back(group.id);
    meeting.readOut.insert(meeting.readOut.end(), group.quotes.begin(), group.quotes.end());
}

// An edit of one meeting; empty when it is not there.
template <class Change>
Edit changed(const Book& book, MeetingId id, const QString& label, const Change& change)
{
    EditBuilder edit(book, label);
    if (const Meeting* found = book.meetings.find(id)) {
        Meeting meeting = *found;
        change(meeting);
        edit.put(meeting);
    }
    return edit.take();
}

void addReplies(const Book& book, QuoteId idea, int depth, std::vector<Reply>& thread)
{
    for (const auto& [id, quote] : book.quotes.rows()) {
        if (quote.repliesTo != idea || id <= idea) // an answer is never older than its idea
            continue;
        thread.push_back({id, depth});
        addReplies(book, id, depth + 1, thread);
    }
}

} // namespace

std::vector<const Meeting*> meetingsOf(const Book& book, ExperienceId experience)
{
    std::vector<const Meeting*> meetings;
    for (const auto& [id, meeting] : book.meetings.rows()) {
        if (meeting.experience == experience)
            meetings.push_back(&meeting);
    }
    std::stable_sort(meetings.begin(),
        meetings.end(),
        [](const Meeting* one, const Meeting* other) { return one->on < other->on; });
    return meetings;
}

const Meeting* plannedMeeting(const Book& book, ExperienceId experience)
{
    for (const Meeting* meeting : meetingsOf(book, experience)) {
        // One that came with words from a file was held, whatever it says.
        if (!meeting->done && spokenIn(book, meeting->id).empty())
            return meeting;
    }
    return nullptr;
}

std::vector<GroupId> carriedGroups(const Book& book, ExperienceId experience)
{
    std::vector<GroupId> waiting;
    for (const Meeting* meeting : meetingsOf(book, experience)) {
        for (const GroupId group : meeting->groups)
            takeOut(waiting, group);
        for (const GroupId group : meeting->carriedOver) {
            if (book.groups.contains(group) && !holds(waiting, group))
                waiting.push_back(group);
        }
    }
    return waiting;
}

Edit planMeetingEdit(const Book& book,
    ExperienceId experience,
    const std::vector<GroupId>& groups,
    QDate on,
    const QString& label)
{
    EditBuilder edit(book, label);
    Meeting meeting;
    if (const Meeting* planned = plannedMeeting(book, experience))
        meeting = *planned;
    else {
        meeting.id = edit.newId<Meeting>();
        meeting.experience = experience;
        meeting.on = on;
        for (const GroupId id : carriedGroups(book, experience))
            putIn(meeting, *book.groups.find(id));
    }
    for (const GroupId id : groups) {
        if (const Group* group = book.groups.find(id))
            putIn(meeting, *group);
    }
    edit.put(meeting);
    return edit.take();
}

Edit groupInMeetingEdit(
    const Book& book, MeetingId meeting, GroupId group, bool in, const QString& label)
{
    const Group* found = book.groups.find(group);
    return changed(book, meeting, label, [&](Meeting& planned) {
        if (in && found != nullptr)
            putIn(planned, *found);
        if (in)
            return;
        takeOut(planned.groups, group);
        for (const QuoteId quote : found != nullptr ? found->quotes : std::vector<QuoteId>{})
            takeOut(planned.readOut, quote);
    });
}

Edit groupOrderEdit(
    const Book& book, MeetingId meeting, GroupId group, int step, const QString& label)
{
    return changed(book, meeting, label, [&](Meeting& planned) {
        const auto at = std::find(planned.groups.begin(), planned.groups.end(), group);
        const std::ptrdiff_t place = at - planned.groups.begin();
        const std::ptrdiff_t to = place + step;
        if (at != planned.groups.end() && to >= 0 && to < std::ptrdiff_t(planned.groups.size()))
            std::iter_swap(at, planned.groups.begin() + to);
    });
}

Edit readOutEdit(
    const Book& book, MeetingId meeting, QuoteId quote, bool readOut, const QString& label)
{
    return changed(book, meeting, label, [&](Meeting& planned) {
        takeOut(planned.readOut, quote);
        if (readOut)
            planned.readOut.push_back(quote);
    });
}

Edit meetingDayEdit(const Book& book, MeetingId meeting, QDate on, const QString& label)
{
    return changed(book, meeting, label, [&](Meeting& planned) { planned.on = on; });
}

Edit replyEdit(const Book& book,
    MeetingId meeting,
    QuoteId repliesTo,
    ChildId child,
    const QString& words,
    const QString& label)
{
    EditBuilder edit(book, label);
    const Meeting* held = book.meetings.find(meeting);
    if (held == nullptr || words.trimmed().isEmpty())
        return edit.take();
    Quote reply;
    reply.id = edit.newId<Quote>();
    reply.experience = held->experience;
    reply.child = child;
    reply.meeting = meeting;
    reply.repliesTo = repliesTo;
    reply.words = words.trimmed();
    reply.on = held->on;
    edit.put(reply);
    return edit.take();
}

Edit meetingNoteEdit(
    const Book& book, MeetingId meeting, const MeetingNote& note, const QString& label)
{
    return changed(book, meeting, label, [&](Meeting& held) { held.happened.push_back(note); });
}

Edit carryOverEdit(
    const Book& book, MeetingId meeting, GroupId group, bool carry, const QString& label)
{
    return changed(book, meeting, label, [&](Meeting& held) {
        takeOut(held.carriedOver, group);
        if (carry)
            held.carriedOver.push_back(group);
    });
}

Edit heldEdit(const Book& book, MeetingId meeting, const QString& label)
{
    return changed(book, meeting, label, [](Meeting& held) { held.done = true; });
}

std::vector<Reply> threadUnder(const Book& book, QuoteId idea)
{
    std::vector<Reply> thread;
    addReplies(book, idea, 1, thread);
    return thread;
}

std::set<ChildId> spokenIn(const Book& book, MeetingId meeting)
{
    std::set<ChildId> spoken;
    for (const auto& [id, quote] : book.quotes.rows()) {
        if (quote.meeting == meeting)
            spoken.insert(quote.child);
    }
    return spoken;
}

std::map<ChildId, QChar> seatLetters(const Book& book)
{
    std::map<ChildId, QChar> letters;
    std::set<QChar> taken;
    const QString alphabet = QStringLiteral("ABCDEFGHIJKLMNOPQRSTUVWXYZ");
    for (const auto& [id, child] : book.children.rows()) {
        for (const QChar letter : displayName(child).toUpper() + alphabet) {
            if (letter.isLetter() && taken.insert(letter).second) {
                letters[id] = letter;
                break;
            }
        }
    }
    return letters;
}

} // namespace wainscot
