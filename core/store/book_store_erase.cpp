// Taking something out of a book for good, in steps that survive being cut off anywhere.
#include "core/store/book_store.h"

#include "core/base/commit_file.h"
#include "core/store/book_store_open.h"
#include "core/store/made_file_rows.h"

#include <QFile>
#include <QSaveFile>

#include <set>

namespace wainscot {

namespace {

const QString kPending = QStringLiteral("/erase.pending"); // SHA-256 of originals, a line each

// Originals that the edit makes nobody's.
std::set<QString> originalsIn(const Edit& edit)
{
    std::set<QString> all;
    for (const Change& change : edit.changes) {
        const auto* picture = std::get_if<ValueChange<Picture>>(&change);
        if (picture != nullptr && picture->before)
            all.insert(picture->before->sha256);
    }
    return all;
}

} // namespace

Result<> BookStore::eraseForever(const Edit& edit)
{
    if (isReadOnly())
        return Error{ErrorCode::CannotWrite, folder(), QStringLiteral("it was opened for reading")};
    QSaveFile pending(folder() + kPending);
    if (!pending.open(QIODevice::WriteOnly))
        return Error{ErrorCode::CannotWrite, folder(), pending.errorString()};
    for (const QString& sha256 : originalsIn(edit))
        pending.write(sha256.toLatin1() + '\n');
    if (!commitWhole(pending))
        return Error{ErrorCode::CannotWrite, folder(), pending.errorString()};
    Database& database = *m_open->database;
    auto done = database.inTransaction([&] { return forgetInFileNames(database, edit); });
    // While rows still mention them, the originals listed are safe.
    if (done)
        done = history().perform(edit);
    if (!done) {
        QFile::remove(folder() + kPending);
        return done;
    }
    m_open->history.emplace(m_open->book, *this);
    return finishErasing();
}

Result<> BookStore::finishErasing()
{
    QFile pending(folder() + kPending);
    if (!pending.exists())
        return Done{};
    if (!pending.open(QIODevice::ReadOnly))
        return Error{ErrorCode::CannotRead, folder(), pending.errorString()};
    std::set<QString> mentioned;
    for (const auto& [id, picture] : book().pictures.rows())
        mentioned.insert(picture.sha256);
    for (const QByteArray& line : pending.readAll().split('\n')) {
        const QString sha256 = QString::fromLatin1(line);
        if (line.isEmpty() || mentioned.count(sha256) > 0)
            continue;
        if (auto removed = m_open->originals.remove(sha256); !removed)
            return removed;
    }
    if (auto forgotten = m_open->earlier.forgetAll(); !forgotten)
        return forgotten;
    if (auto vacuumed = m_open->database->run(QStringLiteral("VACUUM")); !vacuumed)
        return vacuumed;
    pending.close();
    if (!pending.remove())
        return Error{ErrorCode::CannotWrite, folder(), pending.errorString()};
    return Done{};
}

} // namespace wainscot
