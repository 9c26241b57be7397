// What a family has answered so far, for every audience and permission. The child's permissions
// decide what is shown; the records only tell a no from what nobody said, and since when.
#pragma once

#include "core/model/book.h"

#include <vector>

namespace wainscot {

// Yes where the child's permissions allow it. Else what was said last: no, withdrawn, or nothing (a
// yes that the permissions do not bear out counts as not said).
[[nodiscard]] FamilyAnswer familyAnswer(
    const Book& book, const Child& child, Audience audience, Permission to);

// The records that mention a permission, oldest first: by day, those without a day before all
// others, ties in the order they were made.
[[nodiscard]] std::vector<const PermissionRecord*> recordsOf(
    const Book& book, ChildId child, Audience audience, Permission to);

// How many answers nobody has given yet, over all children.
[[nodiscard]] int answersMissing(const Book& book);

} // namespace wainscot
