// Someone in the class.
#pragma once

#include "core/model/ids.h"
#include "core/model/permission.h"

#include <QDate>
#include <QString>

#include <optional>

namespace wainscot {

// A birth date whose day may be unknown ("2021-04").
struct BirthDate {
    int year = 0;
    int month = 0; // 1..12
    int day = 0; // 0 = not known
    friend bool operator==(const BirthDate&, const BirthDate&) = default;
};

struct Child {
    ChildId id;
    QString name; // as in the class list
    QString shownAs; // how the name is written on a wall; empty = the first word of `name`
    std::optional<BirthDate> born;
    QString languages; // as an adult would say it: "Portuguese and some English"
    Permissions permissions;
    friend bool operator==(const Child&, const Child&) = default;
};

// The written form of a child's name: `shownAs`, or the first word of `name`.
[[nodiscard]] QString displayName(const Child& child);

// "YYYY-MM-DD" or "YYYY-MM"; nothing for anything else or a date that does not exist.
[[nodiscard]] std::optional<BirthDate> birthDateFromText(const QString& text);
[[nodiscard]] QString textOf(const BirthDate& born);

// Whole months lived on a day; nothing before birth. Without a day of birth the month counts from
// its first day.
[[nodiscard]] std::optional<int> ageInMonths(const BirthDate& born, QDate on);

// Child-language notation "years;months" (CHAT manual): 54 months = "4;6".
[[nodiscard]] QString ageNotation(int months);
// What stands beside a name on a panel: whole years, "5".
[[nodiscard]] QString ageInYears(int months);

} // namespace wainscot
