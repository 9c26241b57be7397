#include "core/store/originals.h"

#include "core/store/disk.h"

#include <QCryptographicHash>
#include <QDir>
#include <QDirIterator>
#include <QFile>
#include <QFileInfo>
#include <QRegularExpression>
#include <QUuid>

#include <unistd.h>

namespace wainscot {

namespace {

constexpr qint64 kChunk = 1024 * 1024;
const QLatin1String kHalfWritten("incoming-");

Error cannotRead(const QFile& file)
{
    return Error{ErrorCode::CannotRead, QFileInfo(file).fileName(), file.errorString()};
}

Error cannotWrite(const QFile& file)
{
    return Error{ErrorCode::CannotWrite, QFileInfo(file).absolutePath(), file.errorString()};
}

// Reads a file to its end; copies it when there is something to copy it to.
Result<QString> readThrough(QFile& from, QFile* to)
{
    QCryptographicHash hash(QCryptographicHash::Sha256);
    QByteArray chunk(kChunk, Qt::Uninitialized);
    while (true) {
        const qint64 got = from.read(chunk.data(), kChunk);
        if (got < 0)
            return cannotRead(from);
        if (got == 0)
            return QString::fromLatin1(hash.result().toHex());
        hash.addData(QByteArrayView(chunk.constData(), got));
        if (to && to->write(chunk.constData(), got) != got)
            return cannotWrite(*to);
    }
}

Result<> copyAs(QFile& from, const QString& sha256, const QString& half)
{
    QFile to(half);
    if (!to.open(QIODevice::WriteOnly | QIODevice::NewOnly))
        return cannotWrite(to);
    const auto copied = readThrough(from, &to);
    if (!copied)
        return copied.error();
    if (*copied != sha256) {
        return Error{ErrorCode::CannotRead,
            QFileInfo(from).fileName(),
            QStringLiteral("it changed while it was being read")};
    }
    if (!to.flush() || ::fsync(to.handle()) != 0)
        return cannotWrite(to);
    to.setPermissions(QFile::ReadOwner | QFile::ReadGroup | QFile::ReadOther);
    return Done{};
}

} // namespace

Originals::Originals(QString folder)
    : m_folder(std::move(folder))
{
}

QString Originals::pathOf(const QString& sha256) const
{
    // A book that is damaged or meant badly could name any file of the computer.
    static const QRegularExpression name(QStringLiteral("\\A[0-9A-Za-z_-]{2,}\\z"));
    if (!name.match(sha256).hasMatch())
        return m_folder + QStringLiteral("/no/picture");
    return m_folder + QLatin1Char('/') + sha256.left(2) + QLatin1Char('/') + sha256;
}

Result<QString> Originals::sha256Of(const QString& filePath)
{
    QFile file(filePath);
    if (!file.exists())
        return Error{ErrorCode::NotFound, filePath, {}};
    if (!QFileInfo(filePath).isFile() || !file.open(QIODevice::ReadOnly))
        return cannotRead(file);
    return readThrough(file, nullptr);
}

Result<QString> Originals::keep(const QString& filePath) const
{
    auto sha256 = sha256Of(filePath);
    if (!sha256)
        return sha256;
    const QString path = pathOf(*sha256);
    if (QFile::exists(path)) {
        const auto kept = sha256Of(path);
        if (kept && *kept == *sha256)
            return sha256;
    }
    const QString shelf = QFileInfo(path).absolutePath();
    if (!QDir().mkpath(shelf) || !syncFolder(m_folder))
        return Error{ErrorCode::CannotWrite, shelf, {}};

    QFile from(filePath);
    if (!from.open(QIODevice::ReadOnly))
        return cannotRead(from);
    const QString half = m_folder + QLatin1Char('/') + kHalfWritten
        + QUuid::createUuid().toString(QUuid::WithoutBraces);
    if (auto copied = copyAs(from, *sha256, half); !copied) {
        QFile::remove(half);
        return copied.error();
    }
    if (!renameSafely(half, path)) {
        QFile::remove(half);
        return Error{ErrorCode::CannotWrite, path, {}};
    }
    return sha256;
}

Result<> Originals::remove(const QString& sha256) const
{
    static const QRegularExpression digits(QStringLiteral("\\A[0-9a-f]{64}\\z"));
    if (!digits.match(sha256).hasMatch())
        return Error{ErrorCode::WrongUse, sha256, {}};
    QFile file(pathOf(sha256));
    if (file.exists()) {
        file.setPermissions(QFile::ReadOwner | QFile::WriteOwner);
        if (!file.remove())
            return cannotWrite(file);
    }
    return Done{};
}

QStringList Originals::all() const
{
    QStringList names;
    QDirIterator files(m_folder, QDir::Files | QDir::Hidden, QDirIterator::Subdirectories);
    while (files.hasNext()) {
        files.next();
        if (!files.fileName().startsWith(kHalfWritten))
            names << files.fileName();
    }
    names.sort();
    return names;
}

void Originals::removeHalfWritten() const
{
    QDir folder(m_folder);
    for (const QString& name : folder.entryList({kHalfWritten + QLatin1Char('*')}, QDir::Files))
        folder.remove(name);
}

} // namespace wainscot
