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

// How a packed book is locked: its key is made of the phrase by Argon2id (RFC 9106). What every
// guess costs is written into the file, so it can grow with computers.
struct PackLock {
    QString phrase; // empty = not locked
    unsigned long long passes = 3;
    std::size_t bytes = 256ULL * 1024 * 1024;
};

// Fewer characters are found by trying (NIST SP 800-63B, 5.1.1.2).
inline constexpr int kShortestPhrase = 8;

// Writes the book as it is now; undone work and what was taken out of it do not go along. The file
// gets its name only when it is whole. Damaged names a picture that is not what it was; CannotRead,
// CannotWrite, Cancelled leave no file behind (one that was there stays as it was). WrongUse for a
// phrase that is too short.
Result<PackReport> packBook(BookStore& store,
    const QString& file,
    const PackProgress& progress = {},
    const PackLock& lock = {});

[[nodiscard]] bool isLockedPack(const QString& file);

// Makes a book folder of a packed file. The folder must not exist or be empty (WrongUse). It
// appears only when every part is there and is what the list says: Damaged otherwise, and for
// anything in the file that is no part of a book. Refused when the disk has too little room, and
// for a locked file without its phrase; nothing of a locked file is looked at before all of it is
// known to be what was locked.
Result<PackReport> unpackBook(const QString& file,
    const QString& folder,
    const PackProgress& progress = {},
    const QString& phrase = {});

} // namespace wainscot
