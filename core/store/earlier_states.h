// The folder `earlier` of a book: its database as it was on earlier days, thinned out with age.
// Private to core/store.
#pragma once

#include "core/store/book_store.h"

namespace wainscot {

class Database;

class EarlierStates {
public:
    explicit EarlierStates(const QString& bookFolder);

    // Keeps the database as it is now, and thins out what is there. CannotWrite leaves nothing.
    Result<> keep(Database& database, const QDateTime& at) const;
    // Whether there is one of that day, not older than `since`.
    [[nodiscard]] bool hasOneOf(const QDateTime& now, const QDateTime& since) const;

    [[nodiscard]] QList<EarlierState> all() const; // newest first; what cannot be read is left out
    // Of any version this program knows. NotFound, Damaged.
    Result<Book> read(const QString& name) const;

    // Takes all of them away for good. CannotWrite.
    Result<> forgetAll() const;
    void removeHalfWritten() const;

private:
    [[nodiscard]] QString pathOf(const QString& name) const;
    [[nodiscard]] QStringList names() const; // oldest first
    QString m_folder;
};

// Which states go, so that a book's past stays small: of today the newest eight, of every earlier
// day its first. Of those days the last seven are kept, then the newest of each week for eight
// weeks and of each month for a year; never more than `mostBytes` together, but always the two
// newest. Names are oldest first.
struct StateFile {
    QString name;
    qint64 bytes = 0;
};
[[nodiscard]] QStringList statesToForget(
    const QList<StateFile>& states, QDate today, qint64 mostBytes);

[[nodiscard]] QString stateNameFor(const QDateTime& at); // "2026-11-29T08-15-00"
[[nodiscard]] QDateTime momentOf(const QString& stateName); // invalid = no name of a state

} // namespace wainscot
