// A class typed or pasted: a name in each line, with a date of birth if there is one.
#pragma once

#include "core/edit/edit.h"

#include <QString>

#include <optional>
#include <vector>

namespace wainscot {

struct ListedChild {
    QString name;
    std::optional<BirthDate> born;
    friend bool operator==(const ListedChild&, const ListedChild&) = default;
};

// Lines of a list, a letter or a table. Numbers and bullets before a name are dropped, a cell that
// is a date of birth is read as one, "Family, Given" becomes "Given Family", a line that only names
// a column ("name") and repeated names are left out.
[[nodiscard]] std::vector<ListedChild> childrenFromText(const QString& text);

// Those who are not in the book yet, with no permission at all; a date of birth is added to those
// who are and have none.
[[nodiscard]] Edit addChildren(
    const Book& book, const std::vector<ListedChild>& listed, const QString& label);

} // namespace wainscot
