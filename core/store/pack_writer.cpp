// A book into one file.
#include "core/store/pack.h"

#include "core/base/commit_file.h"
#include "core/store/book_store.h"
#include "core/store/lock.h"
#include "core/store/pack_list.h"
#include "core/store/zip_file.h"

#include <QCryptographicHash>
#include <QFile>
#include <QFileInfo>
#include <QSaveFile>
#include <QSet>
#include <QTemporaryDir>

namespace wainscot {

namespace {

constexpr qint64 kChunk = 1024 * 1024;

class Packer {
public:
    Packer(BookStore& store, QString file, const PackProgress& progress, const PackLock& lock)
        : m_store(store)
        , m_file(std::move(file))
        , m_progress(progress)
        , m_lock(lock)
    {
    }

    Result<PackReport> pack()
    {
        if (!m_folder.isValid())
            return Error{ErrorCode::CannotWrite, QFileInfo(m_file).absolutePath(), {}};
        if (auto listed = list(); !listed)
            return listed.error();
        QSaveFile to(m_file);
        if (!to.open(QIODevice::WriteOnly))
            return Error{ErrorCode::CannotWrite, m_file, to.errorString()};
        if (auto written = m_lock.phrase.isEmpty() ? write(to) : writeLocked(to); !written)
            return named(written.error());
        if (!commitWhole(to))
            return Error{ErrorCode::CannotWrite, m_file, to.errorString()};
        return PackReport{m_list.pictures(), m_list.bytes()};
    }

private:
    [[nodiscard]] QString pathOf(const PackedPart& part) const
    {
        return part.isPicture() ? m_store.originalPath(part.sha256)
                                : m_folder.filePath(kPackedBookName);
    }

    // The database as it is at this moment, without what was once in it.
    Result<> list()
    {
        const QString copy = m_folder.filePath(kPackedBookName);
        if (auto copied = m_store.copyDatabaseTo(copy); !copied)
            return copied;
        const auto sha256 = Originals::sha256Of(copy);
        if (!sha256)
            return sha256.error();
        m_list.parts.push_back({kPackedBookName, QFileInfo(copy).size(), *sha256});
        QSet<QString> there;
        for (const auto& [id, picture] : m_store.book().pictures.rows()) {
            const QFileInfo original(m_store.originalPath(picture.sha256));
            if (there.contains(picture.sha256))
                continue;
            there.insert(picture.sha256);
            if (!original.isFile())
                return Error{ErrorCode::Damaged,
                    picture.fileName,
                    QStringLiteral("it is missing from the book")};
            m_list.parts.push_back(
                {packedPictureName(picture.sha256), original.size(), picture.sha256});
        }
        return Done{};
    }

    Result<> writeLocked(QIODevice& to)
    {
        LockingDevice locking(to);
        if (auto begun = locking.begin(m_lock); !begun)
            return begun;
        auto written = write(locking);
        return written ? locking.finish() : written;
    }

    Result<> write(QIODevice& to)
    {
        ZipWriter zip(to);
        const QByteArray json = m_list.toJson();
        if (auto begun = zip.begin(kPackListName, json.size(), true); !begun)
            return begun;
        if (auto written = zip.write(json.constData(), json.size()); !written)
            return written;
        for (const PackedPart& part : m_list.parts) {
            if (auto written = writePart(zip, part); !written)
                return written;
        }
        return zip.finish();
    }

    Result<> writePart(ZipWriter& zip, const PackedPart& part)
    {
        QFile from(pathOf(part));
        if (!from.open(QIODevice::ReadOnly))
            return Error{ErrorCode::CannotRead, from.fileName(), from.errorString()};
        if (auto begun = zip.begin(part.name, part.bytes, !part.isPicture()); !begun)
            return begun;
        QCryptographicHash hash(QCryptographicHash::Sha256);
        qint64 sum = 0;
        for (;;) {
            const QByteArray chunk = from.read(kChunk);
            if (chunk.isEmpty())
                break;
            sum += chunk.size();
            hash.addData(chunk);
            if (sum > part.bytes)
                break;
            if (auto written = zip.write(chunk.constData(), chunk.size()); !written)
                return written;
            m_done += chunk.size();
            if (m_progress && !m_progress(m_done, m_list.bytes()))
                return Error{ErrorCode::Cancelled, m_file, {}};
        }
        if (sum != part.bytes || hash.result().toHex() != part.sha256.toLatin1())
            return Error{ErrorCode::Damaged,
                QFileInfo(from).fileName(),
                QStringLiteral("it has changed since it was gathered")};
        return Done{};
    }

    // The archive knows no file names.
    [[nodiscard]] Error named(Error error) const
    {
        if (error.subject.isEmpty())
            error.subject = m_file;
        return error;
    }

    BookStore& m_store;
    QString m_file;
    const PackProgress& m_progress;
    const PackLock& m_lock;
    QTemporaryDir m_folder;
    PackList m_list;
    qint64 m_done = 0;
};

} // namespace

Result<PackReport> packBook(
    BookStore& store, const QString& file, const PackProgress& progress, const PackLock& lock)
{
    return Packer(store, file, progress, lock).pack();
}

} // namespace wainscot
