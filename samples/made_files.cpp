#include "samples/made_files.h"

#include "core/base/commit_file.h"

#include <QCryptographicHash>
#include <QFile>
#include <QFileInfo>
#include <QSaveFile>

namespace wainscot::samples {

namespace {

const QString kList = QStringLiteral(".made");

QByteArray hashOf(const QByteArray& bytes)
{
    return QCryptographicHash::hash(bytes, QCryptographicHash::Sha256).toHex();
}

// Empty for a file that is not there or cannot be read.
QByteArray hashOfFile(const QString& path)
{
    QFile file(path);
    QCryptographicHash hash(QCryptographicHash::Sha256);
    return file.open(QIODevice::ReadOnly) && hash.addData(&file) ? hash.result().toHex()
                                                                 : QByteArray();
}

Result<> writeWhole(const QString& path, const QByteArray& bytes)
{
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size() || !commitWhole(file))
        return Error{ErrorCode::CannotWrite, path, file.errorString()};
    return Done{};
}

} // namespace

Result<MadeFiles> MadeFiles::openIn(const QString& folder)
{
    if (!QDir().mkpath(folder))
        return Error{ErrorCode::CannotWrite, folder, QStringLiteral("the folder cannot be made")};
    MadeFiles made(folder);
    QFile list(made.pathOf(kList));
    if (!list.open(QIODevice::ReadOnly))
        return made;
    const QStringList lines =
        QString::fromUtf8(list.readAll()).split(QLatin1Char('\n'), Qt::SkipEmptyParts);
    for (const QString& line : lines) {
        const QStringList parts = line.split(QLatin1Char('\t'));
        if (parts.size() == 3)
            made.m_made.insert(parts[0], {parts[1], parts[2].toLatin1()});
    }
    return made;
}

Result<> MadeFiles::putText(const QString& file, const QString& text)
{
    const QByteArray bytes = text.toUtf8();
    const QString recipe = QString::fromLatin1(hashOf(bytes));
    if (m_made.value(file).recipe == recipe && QFileInfo::exists(pathOf(file)))
        return Done{};
    if (const auto room = makeRoomFor(file); !room)
        return room;
    if (const auto written = writeWhole(pathOf(file), bytes); !written)
        return written;
    return note(file, recipe);
}

Result<> MadeFiles::putMade(const QString& file,
    const QString& recipe,
    const std::function<Result<>(const QString& path)>& make)
{
    const auto known = m_made.constFind(file);
    if (known != m_made.cend() && known->recipe == recipe
        && known->sha256 == hashOfFile(pathOf(file)))
        return Done{};
    if (const auto room = makeRoomFor(file); !room)
        return room;
    if (const auto made = make(pathOf(file)); !made)
        return made;
    return note(file, recipe);
}

Result<> MadeFiles::removeOthers(const QString& subfolder, const QStringList& wanted)
{
    const QStringList known = m_made.keys();
    for (const QString& file : known) {
        if (!file.startsWith(subfolder + QLatin1Char('/')) || wanted.contains(file))
            continue;
        const QString path = pathOf(file);
        if (hashOfFile(path) == m_made.value(file).sha256 && !QFile::remove(path))
            return Error{ErrorCode::CannotWrite, path, {}};
        m_made.remove(file);
    }
    return save();
}

Result<> MadeFiles::makeRoomFor(const QString& file) const
{
    const QString path = pathOf(file);
    if (QFileInfo::exists(path) && !m_made.contains(file)) {
        return Error{ErrorCode::Refused,
            path,
            QStringLiteral("a file that is not the sample's is there already; choose another "
                           "folder")};
    }
    const QString folder = QFileInfo(path).path();
    if (!QDir().mkpath(folder))
        return Error{ErrorCode::CannotWrite, folder, QStringLiteral("the folder cannot be made")};
    return Done{};
}

Result<> MadeFiles::note(const QString& file, const QString& recipe)
{
    m_made.insert(file, {recipe, hashOfFile(pathOf(file))});
    return save();
}

Result<> MadeFiles::save() const
{
    QStringList lines;
    for (auto entry = m_made.cbegin(); entry != m_made.cend(); ++entry) {
        lines.append(entry.key() + QLatin1Char('\t') + entry->recipe + QLatin1Char('\t')
            + QString::fromLatin1(entry->sha256));
    }
    lines.sort();
    return writeWhole(pathOf(kList), (lines.join(QLatin1Char('\n')) + QLatin1Char('\n')).toUtf8());
}

} // namespace wainscot::samples
