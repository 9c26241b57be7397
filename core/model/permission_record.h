// Who said what about permissions, and when. What is allowed now stands with the child
// (`Child::permissions`); the records tell since when and by whose word.
#pragma once

#include "core/model/ids.h"
#include "core/model/permission.h"

#include <QDate>
#include <QString>

#include <array>
#include <optional>

namespace wainscot {

enum class FamilyAnswer {
    NotSaid, // counts as no
    Yes,
    No,
    Withdrawn, // no, after a yes
};

// What somebody said on one day for one audience. What it does not mention stays as it was.
struct PermissionRecord {
    PermissionRecordId id;
    ChildId child;
    Audience audience = Audience::Classroom;
    std::array<FamilyAnswer, kPermissions.size()> answers{}; // by Permission
    std::optional<QDate> on; // nothing: nobody knows any more
    QString by; // who said so: "her mother"
    QString note; // how: "in person, to Ms Okoro"
    [[nodiscard]] FamilyAnswer answer(Permission to) const { return answers[std::size_t(to)]; }
    friend bool operator==(const PermissionRecord&, const PermissionRecord&) = default;
};

// "", "yes", "no", "withdrawn"
[[nodiscard]] QString nameOf(FamilyAnswer answer);
[[nodiscard]] std::optional<FamilyAnswer> familyAnswerFromName(const QString& name);

} // namespace wainscot
