// A book out of one file. Everything in the file may be wrong or meant badly.
#include "core/store/pack.h"

#include "core/store/book_store.h"
#include "core/store/pack_list.h"
#include "core/store/zip_file.h"

#include <QCryptographicHash>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QStorageInfo>
#include <QTemporaryDir>

#include <map>
#include <optional>

namespace wainscot {

namespace {

class Unpacker {
public:
    Unpacker(const QString& file, const QString& folder, const PackProgress& progress)
        : m_file(file)
        , m_folder(QDir(folder).absolutePath())
        , m_progress(progress)
        , m_beside(m_folder + QStringLiteral(".unpacking-XXXXXX"))
    {
    }

    Result<PackReport> unpack()
    {
        const bool free = !QFileInfo::exists(m_folder)
            || (QFileInfo(m_folder).isDir() && QDir(m_folder).isEmpty());
        if (!free)
            return Error{ErrorCode::WrongUse, m_folder, QStringLiteral("it is not empty")};
        QFile from(m_file);
        if (!from.exists())
            return Error{ErrorCode::NotFound, m_file, {}};
        if (!from.open(QIODevice::ReadOnly))
            return Error{ErrorCode::CannotRead, m_file, from.errorString()};
        if (!m_beside.isValid())
            return Error{ErrorCode::CannotWrite, QFileInfo(m_folder).absolutePath(), {}};
        ZipReader zip(from);
        for (auto step : {&Unpacker::readList, &Unpacker::readParts}) {
            if (auto done = (this->*step)(zip); !done)
                return named(done.error());
        }
        if (auto whole = checkBook(); !whole)
            return whole.error();
        if (auto moved = moveIntoPlace(); !moved)
            return moved.error();
        return PackReport{m_list->pictures(), m_list->bytes()};
    }

private:
    [[nodiscard]] Error damaged(const QString& why) const
    {
        return Error{ErrorCode::Damaged, m_file, why};
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
        const QStorageInfo disk(QFileInfo(m_folder).absolutePath());
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
            return Error{ErrorCode::CannotWrite, m_folder, to.errorString()};
        QCryptographicHash hash(QCryptographicHash::Sha256);
        qint64 sum = 0;
        const auto read = zip.read([&](const char* bytes, qint64 count) -> Result<> {
            sum += count;
            if (sum > part.bytes) // what swells beyond its list is not written
                return damaged(QStringLiteral("%1 is larger than its list says").arg(part.name));
            hash.addData(QByteArrayView(bytes, count));
            if (to.write(bytes, count) != count)
                return Error{ErrorCode::CannotWrite, m_folder, to.errorString()};
            m_done += count;
            if (m_progress && !m_progress(m_done, m_list->bytes()))
                return Error{ErrorCode::Cancelled, m_file, {}};
            return Done{};
        });
        if (!read)
            return read;
        if (sum != part.bytes || hash.result().toHex() != part.sha256.toLatin1())
            return damaged(QStringLiteral("%1 is not what was packed").arg(part.name));
        if (!to.flush())
            return Error{ErrorCode::CannotWrite, m_folder, to.errorString()};
        to.close();
        if (part.isPicture())
            to.setPermissions(QFile::ReadOwner | QFile::ReadGroup | QFile::ReadOther);
        return Done{};
    }

    // What was packed opens as a book before it is called one.
    Result<> checkBook() const
    {
        const auto store = BookStore::open(m_beside.path(), Access::ReadOnly);
        if (store)
            return Done{};
        Error error = store.error();
        error.subject = m_file;
        return error;
    }

    Result<> moveIntoPlace()
    {
        QFile::setPermissions(m_beside.path(),
            QFile::ReadOwner | QFile::WriteOwner
                | QFile::ExeOwner); // the class's words are private
        QDir().rmdir(m_folder);
        if (!QDir().rename(m_beside.path(), m_folder))
            return Error{ErrorCode::CannotWrite, m_folder, {}};
        m_beside.setAutoRemove(false);
        return Done{};
    }

    [[nodiscard]] Error named(Error error) const
    {
        if (error.subject.isEmpty())
            error.subject = m_file;
        return error;
    }

    QString m_file;
    QString m_folder;
    const PackProgress& m_progress;
    QTemporaryDir m_beside; // removed again unless all went well
    std::optional<PackList> m_list;
    std::map<QString, const PackedPart*> m_missing;
    qint64 m_done = 0;
};

} // namespace

Result<PackReport> unpackBook(
    const QString& file, const QString& folder, const PackProgress& progress)
{
    return Unpacker(file, folder, progress).unpack();
}

} // namespace wainscot
