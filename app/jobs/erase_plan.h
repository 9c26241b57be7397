// What has to change in a book so that nothing of a child is left in it.
#pragma once

#include "app/jobs/erase_reach.h"
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
    QStringList sha256; // of originals that go, also those of pictures kept covered
    QStringList shared; // of the pictures, those that show other children too
    QStringList kept; // stay for the other children in them, by file name
    QStringList takeDown; // "Hallway, panel 2": what hangs and shows the child
    QStringList alsoNamedSo; // other children with the same first name, so that it stays in texts
};

// Every word the child said, every picture the child is seen in or made, the child in lists, and
// the name in what adults wrote ("a child") and other children said ("[a child]"), in captions,
// file names and panels. A name another child bears too stays, because nobody can tell who is
// meant; `alsoNamedSo` says so. NotFound; WrongUse when two children of the class are called so.
[[nodiscard]] Result<ErasePlan> planErasing(
    const Book& book, const QString& child, const KeptPictures& kept = {});

// Those that show the child and other children. Errors as above.
[[nodiscard]] Result<std::vector<Picture>> sharedPictures(const Book& book, const QString& child);

} // namespace wainscot
