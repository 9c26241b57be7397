// Pictures that stay when a child in them is erased: what covers the child becomes part of the
// file.
#pragma once

#include "app/jobs/erase_reach.h"
#include "app/jobs/job_run.h"

#include <functional>

namespace wainscot {

// A file of a picture with its covers burnt in, and the picture as it is kept then: of that file,
// upright, without the child, with no cover left to take off. Whether the covers hide the child
// only a person can say. Nothing is written into a book.
struct CoveredCopy {
    Picture before;
    Picture picture; // its SHA-256 is that of the new file
    QString file;
};

// Of each picture that has a cover; the others are left alone. `pathOf` says where an original
// lies, the files go into `folder`. Errors: as bakeJpeg; CannotWrite; stopped.
Result<std::vector<CoveredCopy>> coveredCopies(const std::vector<Picture>& pictures,
    ChildId child,
    const std::function<QString(const QString& sha256)>& pathOf,
    const QString& folder,
    const JobRun& run);

[[nodiscard]] inline bool isCovered(const Picture& picture)
{
    return !picture.treatment.covered.empty();
}

} // namespace wainscot
