#include "core/store/disk.h"

#include <QFile>
#include <QFileInfo>

#include <fcntl.h>
#include <unistd.h>

namespace wainscot {

namespace {

bool syncOpened(const QString& path, int flags)
{
    const int descriptor = ::open(QFile::encodeName(path).constData(), flags | O_CLOEXEC);
    if (descriptor < 0)
        return false;
    const bool synced = ::fsync(descriptor) == 0;
    ::close(descriptor);
    return synced;
}

} // namespace

bool syncFile(const QString& path)
{
    return syncOpened(path, O_RDONLY);
}

bool syncFolder(const QString& folder)
{
    return syncOpened(folder, O_RDONLY | O_DIRECTORY);
}

bool renameSafely(const QString& from, const QString& to)
{
    return ::rename(QFile::encodeName(from).constData(), QFile::encodeName(to).constData()) == 0
        && syncFolder(QFileInfo(to).absolutePath());
}

} // namespace wainscot
