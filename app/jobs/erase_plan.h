// What has to change in a book so that nothing of a child is left in it.
#pragma once

#include "core/base/result.h"
#include "core/edit/edit.h"

#include <QStringList>

namespace wainscot {

struct ErasePlan {
    Edit edit;
    int quotes = 0; // the child's, removed
    int pieces = 0; // taken off panels
    int texts = 0; // in which the name was replaced
    QStringList pictures; // removed, by file name
    QStringList sha256; // of their originals
    QStringList shared; // of those, pictures that show other children too
    QStringList takeDown; // "Hallway, panel 2": what hangs and shows the child
    QStringList alsoNamedSo; // other children with the same first name, so that it stays in texts
};

// Every word the child said, every picture the child is seen in or made, the child in lists, and
// the name in what adults wrote ("a child") and other children said ("[a child]"), in captions,
// file names and panels. A name another child bears too stays, because nobody can tell who is
// meant; `alsoNamedSo` says so. NotFound; WrongUse when two children of the class are called so.
[[nodiscard]] Result<ErasePlan> planErasing(const Book& book, const QString& child);

} // namespace wainscot
