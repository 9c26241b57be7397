#include "tests/support/small_disk.h"

#include <QDir>
#include <QFile>

#include <gtest/gtest.h>

#include <sys/mount.h>
#include <sys/statvfs.h>

#include <sched.h>
#include <unistd.h>

namespace wainscot {

namespace {

bool writeOnce(const char* path, const QByteArray& text)
{
    QFile file(QString::fromLatin1(path));
    return file.open(QIODevice::WriteOnly) && file.write(text) == text.size();
}

// A mount of its own for this process, as root by right, else as root of a user namespace.
bool separate()
{
    const QByteArray user = QByteArray::number(::getuid());
    const QByteArray group = QByteArray::number(::getgid());
    if (::unshare(CLONE_NEWNS) != 0) {
        if (::unshare(CLONE_NEWUSER | CLONE_NEWNS) != 0)
            return false;
        if (!writeOnce("/proc/self/setgroups", "deny")
            || !writeOnce("/proc/self/uid_map", "0 " + user + " 1")
            || !writeOnce("/proc/self/gid_map", "0 " + group + " 1"))
            return false;
    }
    return ::mount("none", "/", nullptr, MS_REC | MS_PRIVATE, nullptr) == 0;
}

QByteArray sized(qint64 bytes)
{
    return "size=" + QByteArray::number(bytes);
}

} // namespace

bool SmallDisk::canBeHad()
{
    static const bool can = separate();
    return can;
}

SmallDisk::SmallDisk(const QString& folder, qint64 bytes)
    : m_folder(folder)
{
    QDir().mkpath(folder);
    const QByteArray path = QFile::encodeName(folder);
    EXPECT_EQ(::mount("none", path.constData(), "tmpfs", 0, sized(bytes).constData()), 0);
}

SmallDisk::~SmallDisk()
{
    ::umount2(QFile::encodeName(m_folder).constData(), MNT_DETACH);
}

void SmallDisk::resize(qint64 bytes) const
{
    const QByteArray path = QFile::encodeName(m_folder);
    EXPECT_EQ(::mount("none", path.constData(), "tmpfs", MS_REMOUNT, sized(bytes).constData()), 0);
}

qint64 SmallDisk::used() const
{
    struct statvfs state = {};
    EXPECT_EQ(::statvfs(QFile::encodeName(m_folder).constData(), &state), 0);
    return qint64(state.f_blocks - state.f_bfree) * qint64(state.f_frsize);
}

} // namespace wainscot
