// Put before the C library (LD_PRELOAD), lets the Nth thing that would change the disk fail:
//   FAILING_DISK_AT=N      which one, from 1
//   FAILING_DISK_FROM=1    that one and all after it, as on a disk that stays full
//   FAILING_DISK_UNDER=P   only files whose path begins with P
//   FAILING_DISK_TOLD=F    this file is made when something was made to fail
#include "tests/support/preload.h"

#include <sys/stat.h>

#include <atomic>
#include <cerrno>
#include <cstdarg>

namespace {

using wainscot::preload::next;
using wainscot::preload::setting;

template <class Where> bool isUnder(Where where)
{
    return wainscot::preload::isUnder(where, "FAILING_DISK_UNDER");
}

std::atomic<long> g_count{0};

// Counts one change, and says whether it is one of those to fail.
template <class Where> bool fails(Where where)
{
    static const long at = std::atol(setting("FAILING_DISK_AT"));
    static const bool all = *setting("FAILING_DISK_FROM") == '1';
    if (at <= 0 || !isUnder(where))
        return false;
    const long number = ++g_count;
    if (number != at && !(all && number > at))
        return false;
    const long told =
        ::syscall(SYS_openat, AT_FDCWD, setting("FAILING_DISK_TOLD"), O_CREAT | O_WRONLY, 0600);
    if (told >= 0)
        ::syscall(SYS_close, told);
    errno = all ? ENOSPC : EIO;
    return true;
}

} // namespace

// NOLINTBEGIN(readability-identifier-naming,readability-inconsistent-declaration-parameter-name)
#define FAILING(result, name, parameters, arguments, where)                                        \
    extern "C" result name parameters                                                              \
    {                                                                                              \
        static const auto real = next<result(*) parameters>(#name);                                \
        return fails(where) ? result(-1) : real arguments;                                         \
    }

FAILING(ssize_t, write, (int fd, const void* data, size_t size), (fd, data, size), fd)
FAILING(
    ssize_t, pwrite, (int fd, const void* data, size_t size, off_t at), (fd, data, size, at), fd)
FAILING(ssize_t,
    pwrite64,
    (int fd, const void* data, size_t size, off64_t at),
    (fd, data, size, at),
    fd)
FAILING(int, fsync, (int fd), (fd), fd)
FAILING(int, fdatasync, (int fd), (fd), fd)
FAILING(int, ftruncate, (int fd, off_t length), (fd, length), fd)
FAILING(int, ftruncate64, (int fd, off64_t length), (fd, length), fd)
FAILING(int, rename, (const char* from, const char* to), (from, to), to)
FAILING(int,
    renameat2,
    (int a, const char* from, int b, const char* to, unsigned flags),
    (a, from, b, to, flags),
    to)
FAILING(int, link, (const char* from, const char* to), (from, to), to)
FAILING(int, mkdir, (const char* path, mode_t mode), (path, mode), path)

// A full disk still takes files away; only one that breaks does not.
extern "C" int unlink(const char* path)
{
    static const auto real = next<int (*)(const char*)>("unlink");
    return *setting("FAILING_DISK_FROM") != '1' && fails(path) ? -1 : real(path);
}

#define FAILING_OPEN(name)                                                                         \
    extern "C" int name(const char* path, int flags, ...)                                          \
    {                                                                                              \
        static const auto real = next<int (*)(const char*, int, ...)>(#name);                      \
        va_list more;                                                                              \
        va_start(more, flags);                                                                     \
        const auto mode = (flags & (O_CREAT | O_TMPFILE)) != 0 ? va_arg(more, mode_t) : 0;         \
        va_end(more);                                                                              \
        return (flags & O_CREAT) != 0 && fails(path) ? -1 : real(path, flags, mode);               \
    }

FAILING_OPEN(open)
FAILING_OPEN(open64)
// NOLINTEND(readability-identifier-naming,readability-inconsistent-declaration-parameter-name)
