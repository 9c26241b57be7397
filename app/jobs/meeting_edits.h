// Giving groups back to the class: meetings planned, held and noted, as edits made from the book.
// `label` is what undo would undo.
#pragma once

#include "core/edit/edit.h"
#include "core/model/book.h"

#include <map>
#include <set>
#include <vector>

namespace wainscot {

// By day, then by id.
[[nodiscard]] std::vector<const Meeting*> meetingsOf(const Book& book, ExperienceId experience);
// The one that is planned and not held yet; null = none.
[[nodiscard]] const Meeting* plannedMeeting(const Book& book, ExperienceId experience);

// Groups left for another day that no meeting has taken up since, in the order they were left.
[[nodiscard]] std::vector<GroupId> carriedGroups(const Book& book, ExperienceId experience);

// Adds groups to the planned meeting, or plans one for that day, which begins with those carried to
// another day; all words of a group are read out.
[[nodiscard]] Edit planMeetingEdit(const Book& book,
    ExperienceId experience,
    const std::vector<GroupId>& groups,
    QDate on,
    const QString& label);
// In, or out with the words that were to be read.
[[nodiscard]] Edit groupInMeetingEdit(
    const Book& book, MeetingId meeting, GroupId group, bool in, const QString& label);
// One place earlier (-1) or later (1).
[[nodiscard]] Edit groupOrderEdit(
    const Book& book, MeetingId meeting, GroupId group, int step, const QString& label);
[[nodiscard]] Edit readOutEdit(
    const Book& book, MeetingId meeting, QuoteId quote, bool readOut, const QString& label);
[[nodiscard]] Edit meetingDayEdit(
    const Book& book, MeetingId meeting, QDate on, const QString& label);

// A child's words in the meeting, answering an idea. Empty for empty words.
[[nodiscard]] Edit replyEdit(const Book& book,
    MeetingId meeting,
    QuoteId repliesTo,
    ChildId child,
    const QString& words,
    const QString& label);
[[nodiscard]] Edit meetingNoteEdit(
    const Book& book, MeetingId meeting, const MeetingNote& note, const QString& label);
// Left for another day, or not after all.
[[nodiscard]] Edit carryOverEdit(
    const Book& book, MeetingId meeting, GroupId group, bool carry, const QString& label);
[[nodiscard]] Edit heldEdit(const Book& book, MeetingId meeting, const QString& label);

// An answer to an idea, and how deep under it: 1 answers it, 2 answers an answer.
struct Reply {
    QuoteId quote;
    int depth = 1;
    friend bool operator==(const Reply&, const Reply&) = default;
};
// What answers an idea over all meetings, each followed by what answers it.
[[nodiscard]] std::vector<Reply> threadUnder(const Book& book, QuoteId idea);
// Who said something in a meeting that was taken down.
[[nodiscard]] std::set<ChildId> spokenIn(const Book& book, MeetingId meeting);

// A letter for each child: the first of the shown name that no child before has taken, else the
// first free one of the alphabet; none is left after the alphabet.
[[nodiscard]] std::map<ChildId, QChar> seatLetters(const Book& book);

} // namespace wainscot
