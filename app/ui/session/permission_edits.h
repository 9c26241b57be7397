// What a family says, noted: the permission itself and the record of who said so and when.
#pragma once

#include "core/edit/edit.h"

namespace wainscot::ui {

// One answer of a family.
struct SaidPermission {
    ChildId child;
    Audience audience = Audience::Classroom;
    Permission to = Permission::Photo;
    FamilyAnswer answer = FamilyAnswer::NotSaid;
};

// Who said it, when, and how.
struct SaidBy {
    QString who;
    std::optional<QDate> on;
    QString note;
};

// All answers as one step. Those of one child, audience, day and person stand in one record; an
// answer that is taken back to "not said" leaves its records.
[[nodiscard]] Edit notePermissions(const Book& book,
    const std::vector<SaidPermission>& said,
    const SaidBy& by,
    const QString& label);

// What Space makes of an answer: yes; a yes of an earlier day is withdrawn, one of today is a no; a
// no of today was not said.
[[nodiscard]] FamilyAnswer nextAnswer(
    const Book& book, const Child& child, Audience audience, Permission to, QDate today);

} // namespace wainscot::ui
