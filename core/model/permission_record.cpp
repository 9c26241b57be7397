#include "core/model/permission_record.h"

namespace wainscot {

QString nameOf(FamilyAnswer answer)
{
    switch (answer) {
    case FamilyAnswer::NotSaid:
        return QStringLiteral("");
    case FamilyAnswer::Yes:
        return QStringLiteral("yes");
    case FamilyAnswer::No:
        return QStringLiteral("no");
    case FamilyAnswer::Withdrawn:
        return QStringLiteral("withdrawn");
    }
    return {};
}

std::optional<FamilyAnswer> familyAnswerFromName(const QString& name)
{
    for (const FamilyAnswer answer :
        {FamilyAnswer::NotSaid, FamilyAnswer::Yes, FamilyAnswer::No, FamilyAnswer::Withdrawn}) {
        if (nameOf(answer) == name)
            return answer;
    }
    return std::nullopt;
}

} // namespace wainscot
