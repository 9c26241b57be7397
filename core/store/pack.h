// A whole book as one file, to carry or to put away: a ZIP archive with a list of what is in it and
// the SHA-256 of each part.
#pragma once

#include "core/base/result.h"

#include <QString>

#include <functional>

namespace wainscot {

class BookStore;

struct PackReport {
    int pictures = 0;
    qint64 bytes = 0; // of all parts, unpacked
};

// Told (done, of) in bytes; answering false stops (Cancelled).
using PackProgress = std::function<bool(qint64, qint64)>;

// Writes the book as it is now; undone work and what was taken out of it do not go along. The file
// gets its name only when it is whole. Damaged names a picture that is not what it was; CannotRead,
// CannotWrite, Cancelled leave no file behind (one that was there stays as it was).
Result<PackReport> packBook(
    BookStore& store, const QString& file, const PackProgress& progress = {});

// Makes a book folder of a packed file. The folder must not exist or be empty (WrongUse). It
// appears only when every part is there and is what the list says: Damaged otherwise, and for
// anything in the file that is no part of a book. Refused when the disk has too little room.
Result<PackReport> unpackBook(
    const QString& file, const QString& folder, const PackProgress& progress = {});

} // namespace wainscot
