#include "core/model/meeting.h"

namespace wainscot {

QString nameOf(MeetingNoteKind kind)
{
    switch (kind) {
    case MeetingNoteKind::Agreement:
        return QStringLiteral("agreement");
    case MeetingNoteKind::Disagreement:
        return QStringLiteral("disagreement");
    case MeetingNoteKind::ChangedMind:
        return QStringLiteral("changed_mind");
    }
    return {};
}

std::optional<MeetingNoteKind> meetingNoteKindFromName(const QString& name)
{
    for (const MeetingNoteKind kind :
        {MeetingNoteKind::Agreement, MeetingNoteKind::Disagreement, MeetingNoteKind::ChangedMind}) {
        if (nameOf(kind) == name)
            return kind;
    }
    return std::nullopt;
}

} // namespace wainscot
