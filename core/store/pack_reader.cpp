// A book out of one file. Everything in the file may be wrong or meant badly.
#include "core/store/pack.h"

#include "core/store/book_store.h"
#include "core/store/folder_beside.h"
#include "core/store/lock.h"
#include "core/store/pack_list.h"
#include "core/store/zip_file.h"

#include <QCryptographicHash>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QStorageInfo>

#include <map>
#include <optional>
#include <unistd.h>

namespace wainscot {

namespace {

class Unpacker {
public:
    Unpacker(const QString& file,
        const QString& folder,
        const PackProgress& progress,
        const QString& phrase)
        : m_file(file)
        , m_progress(progress)
        , m_phrase(phrase)
        , m_beside(folder, QStringLiteral("unpacking"))
    {
    }

    Result<PackReport> unpack()
    {
        if (auto free = m_beside.isFree(); !free)
            return free.error();
        QFile from(m_file);
        if (!from.exists())
            return Error{ErrorCode::NotFound, m_file, {}};
        if (!from.open(QIODevice::ReadOnly))
            return Error{ErrorCode::CannotRead, m_file, from.errorString()};
        QFile unlocked(m_beside.filePath(QStringLiteral("unlocked.zip")));
        if (isLocked(from)) {
            if (auto opened = unlockInto(unlocked, from); !opened)
                return named(opened.error());
        }
        ZipReader zip(unlocked.isOpen() ? unlocked : from);
        for (auto step : {&Unpacker::readList, &Unpacker::readParts}) {
            if (auto done = (this->*step)(zip); !done)
                return named(done.error());
        }
        unlocked.remove();
        if (auto whole = checkBook(); !whole)
            return whole.error();
        if (auto moved = m_beside.moveIntoPlace(); !moved)
            return moved.error();
        return PackReport{m_list->pictures(), m_list->bytes()};
    }

private:
    [[nodiscard]] Error damaged(const QString& why) const
    {
        return Error{ErrorCode::Damaged, m_file, why};
    }

    // As a whole, before anything is made of it.
    Result<> unlockInto(QFile& unlocked, QFile& from)
    {
        if (m_phrase.isEmpty())
            return Error{
                ErrorCode::Refused, m_file, QStringLiteral("it is locked with a passphrase")};
        if (!unlocked.open(QIODevice::ReadWrite | QIODevice::NewOnly))
            return Error{ErrorCode::CannotWrite, m_beside.place(), unlocked.errorString()};
        const auto goesOn = [this, of = from.size()](
                                qint64 done) { return !m_progress || m_progress(done, of); };
        if (auto opened = unlock(from, m_phrase, unlocked, goesOn); !opened)
            return opened;
        if (!unlocked.seek(0)) // writes what waits
            return Error{ErrorCode::CannotWrite, m_beside.place(), unlocked.errorString()};
        return Done{};
    }

    Result<> readList(ZipReader& zip)
    {
        const auto entry = zip.next();
        if (!entry)
            return entry.error();
        if (!*entry || (*entry)->name != kPackListName || !(*entry)->isFile)
            return damaged(QStringLiteral("it is no packed book"));
        QByteArray json;
        const auto read = zip.read([&](const char* bytes, qint64 count) -> Result<> {
            json.append(bytes, count);
            if (json.size() > kLargestPackList)
                return damaged(QStringLiteral("its list is larger than any book's"));
            return Done{};
        });
        if (!read)
            return read;
        auto list = PackList::fromJson(json, m_file);
        if (!list)
            return list.error();
        m_list = std::move(*list);
        for (const PackedPart& part : m_list->parts)
            m_missing.emplace(part.name, &part);
        return checkRoom();
    }

    Result<> checkRoom() const
    {
        const QStorageInfo disk(QFileInfo(m_beside.place()).absolutePath());
        constexpr double kMegabyte = 1024.0 * 1024;
        if (disk.isValid() && disk.bytesAvailable() < m_list->bytes())
            return Error{ErrorCode::Refused,
                m_file,
                QStringLiteral("it needs %1 MB, and %2 MB are free")
                    .arg(double(m_list->bytes()) / kMegabyte, 0, 'f', 0)
                    .arg(double(disk.bytesAvailable()) / kMegabyte, 0, 'f', 0)};
        return Done{};
    }

    Result<> readParts(ZipReader& zip)
    {
        for (;;) {
            const auto entry = zip.next();
            if (!entry)
                return entry.error();
            if (!*entry)
                break;
            const auto part = m_missing.find((*entry)->name);
            if (part == m_missing.end() || !(*entry)->isFile)
                return damaged(
                    QStringLiteral("\"%1\" is no part of the book").arg((*entry)->name.left(80)));
            if (auto read = readPart(zip, *part->second); !read)
                return read;
            m_missing.erase(part);
        }
        if (!m_missing.empty())
            return damaged(QStringLiteral("%1 is missing").arg(m_missing.begin()->first));
        return Done{};
    }

    Result<> readPart(ZipReader& zip, const PackedPart& part)
    {
        const QString path = m_beside.filePath(part.name);
        QFile to(path);
        if (!QDir().mkpath(QFileInfo(path).absolutePath())
            || !to.open(QIODevice::WriteOnly | QIODevice::NewOnly))
            return Error{ErrorCode::CannotWrite, m_beside.place(), to.errorString()};
        QCryptographicHash hash(QCryptographicHash::Sha256);
        qint64 sum = 0;
        const auto read = zip.read([&](const char* bytes, qint64 count) -> Result<> {
            sum += count;
            if (sum > part.bytes) // what swells beyond its list is not written
                return damaged(QStringLiteral("%1 is larger than its list says").arg(part.name));
            hash.addData(QByteArrayView(bytes, count));
            if (to.write(bytes, count) != count)
                return Error{ErrorCode::CannotWrite, m_beside.place(), to.errorString()};
            m_done += count;
            if (m_progress && !m_progress(m_done, m_list->bytes()))
                return Error{ErrorCode::Cancelled, m_file, {}};
            return Done{};
        });
        if (!read)
            return read;
        if (sum != part.bytes || hash.result().toHex() != part.sha256.toLatin1())
            return damaged(QStringLiteral("%1 is not what was packed").arg(part.name));
        if (!to.flush() || ::fsync(to.handle()) != 0)
            return Error{ErrorCode::CannotWrite, m_beside.place(), to.errorString()};
        to.close();
        if (part.isPicture())
            to.setPermissions(QFile::ReadOwner | QFile::ReadGroup | QFile::ReadOther);
        return Done{};
    }

    // What was packed opens as a book before it is called one; that brings a book packed by an
    // earlier version up to date.
    Result<> checkBook() const
    {
        const auto store = BookStore::open(m_beside.path());
        if (store)
            return Done{};
        Error error = store.error();
        error.subject = m_file;
        return error;
    }

    [[nodiscard]] Error named(Error error) const
    {
        if (error.subject.isEmpty())
            error.subject = m_file;
        return error;
    }

    QString m_file;
    const PackProgress& m_progress;
    const QString& m_phrase;
    FolderBeside m_beside;
    std::optional<PackList> m_list;
    std::map<QString, const PackedPart*> m_missing;
    qint64 m_done = 0;
};

} // namespace

bool isLockedPack(const QString& file)
{
    QFile from(file);
    return from.open(QIODevice::ReadOnly) && isLocked(from);
}

Result<PackReport> unpackBook(
    const QString& file, const QString& folder, const PackProgress& progress, const QString& phrase)
{
    return Unpacker(file, folder, progress, phrase).unpack();
}

} // namespace wainscot
