// Putting like with like, giving it back to the class, and looking back on it.
#pragma once

#include "core/model/ids.h"

#include <QDate>
#include <QString>

#include <optional>
#include <vector>

namespace wainscot {

// Answers that belong together for discussion. What a program proposed may be proposed anew; what
// is kept by hand stays as it is.
struct Group {
    GroupId id;
    ExperienceId experience;
    QString label; // in the children's own words
    std::vector<QuoteId> quotes;
    bool keptByHand = false;
    int order = 0; // among the groups of the experience; ties by id
    std::optional<QDate> carriedTo{}; // the day it was put off to
    friend bool operator==(const Group&, const Group&) = default;
};

// Two answers an adult holds together or apart, so that no proposal does otherwise.
struct KeptPair {
    KeptPairId id;
    QuoteId answer; // the one that was in the hand
    QuoteId other;
    bool apart = false; // else together
    friend bool operator==(const KeptPair&, const KeptPair&) = default;
};

enum class MeetingNoteKind { Agreement, Disagreement, ChangedMind };

// Something that happened with an idea in a meeting.
struct MeetingNote {
    MeetingNoteKind kind = MeetingNoteKind::Agreement;
    QString text; // the adult's
    GroupId group; // about which idea; invalid = the whole meeting
    ChildId child; // who changed their mind, or disagreed; invalid = the class
    friend bool operator==(const MeetingNote&, const MeetingNote&) = default;
};

struct Meeting {
    MeetingId id;
    ExperienceId experience;
    QDate on;
    QString notes;
    std::vector<GroupId> groups; // given back, in this order
    std::vector<QuoteId> readOut; // whose words are read to the class, in this order
    std::vector<GroupId> carriedOver; // of its groups, those left for another day
    std::vector<MeetingNote> happened; // in the order noted
    bool done = false; // held, not only planned
    friend bool operator==(const Meeting&, const Meeting&) = default;
};

// "agreement", "disagreement", "changed_mind"
[[nodiscard]] QString nameOf(MeetingNoteKind kind);
[[nodiscard]] std::optional<MeetingNoteKind> meetingNoteKindFromName(const QString& name);

// What the adults asked themselves after an experience, and their answer to it.
struct Reflection {
    ReflectionId id;
    ExperienceId experience;
    QString prompt; // key of a prompt the children were asked too; empty = a question of its own
    QString question; // as it was put that day
    QString answer;
    QString by;
    std::optional<QDate> on;
    int order = 0; // within the experience; ties by id
    friend bool operator==(const Reflection&, const Reflection&) = default;
};

// Something the class is meant to come to, of the school's or the teacher's own list. Quotes and
// panels name the goals they show.
struct Goal {
    GoalId id;
    QString text;
    QString source; // where it comes from, for the reader
    int order = 0; // in the list; ties by id
    friend bool operator==(const Goal&, const Goal&) = default;
};

} // namespace wainscot
