// Put before the C library (LD_PRELOAD), makes a disk behave as one far away over a bad network:
// slow, in pieces (short reads and writes), interrupted, and at last breaking off.
//   FAR_DISK_SEED=N      what happens when; 0 = nothing
//   FAR_DISK_BREAKS=N    of a thousand calls so many fail (EIO), reading ones too
//   FAR_DISK_LOCKS=0     there are no locks (ENOLCK), as on shares without a lock service
//   FAR_DISK_UNDER=P     only files whose path begins with P
#include "tests/support/preload.h"

#include <cerrno>
#include <cstdarg>
#include <mutex>
#include <random>

namespace {

using wainscot::preload::next;
using wainscot::preload::setting;

enum class Fate { Whole, InPieces, Interrupted, Broken };

unsigned draw()
{
    static std::mutex mutex;
    static std::mt19937 random(unsigned(std::atol(setting("FAR_DISK_SEED"))));
    const std::lock_guard lock(mutex);
    return random();
}

bool isFar(int descriptor)
{
    static const bool on = std::atol(setting("FAR_DISK_SEED")) > 0;
    return on && wainscot::preload::isUnder(descriptor, "FAR_DISK_UNDER");
}

Fate fateOf(bool mayBeInPieces)
{
    static const unsigned breaks = unsigned(std::atol(setting("FAR_DISK_BREAKS")));
    ::usleep(draw() % 100);
    if (draw() % 1000 < breaks)
        return Fate::Broken;
    if (!mayBeInPieces)
        return Fate::Whole;
    const unsigned chance = draw() % 20;
    return chance == 0 ? Fate::Interrupted : chance < 6 ? Fate::InPieces : Fate::Whole;
}

template <class Call> auto carried(int descriptor, size_t size, Call call) -> decltype(call(size))
{
    if (!isFar(descriptor))
        return call(size);
    switch (fateOf(true)) {
    case Fate::Broken:
        errno = EIO;
        return -1;
    case Fate::Interrupted:
        errno = EINTR;
        return -1;
    case Fate::InPieces:
        return call(size > 1 ? 1 + draw() % (size - 1) : size);
    case Fate::Whole:
        break;
    }
    return call(size);
}

} // namespace

// NOLINTBEGIN(readability-identifier-naming,readability-inconsistent-declaration-parameter-name)
extern "C" ssize_t read(int fd, void* data, size_t size)
{
    static const auto real = next<ssize_t (*)(int, void*, size_t)>("read");
    return carried(fd, size, [&](size_t part) { return real(fd, data, part); });
}

extern "C" ssize_t write(int fd, const void* data, size_t size)
{
    static const auto real = next<ssize_t (*)(int, const void*, size_t)>("write");
    return carried(fd, size, [&](size_t part) { return real(fd, data, part); });
}

#define FAR_AT(name, pointer, offset)                                                              \
    extern "C" ssize_t name(int fd, pointer data, size_t size, offset at)                          \
    {                                                                                              \
        static const auto real = next<ssize_t (*)(int, pointer, size_t, offset)>(#name);           \
        return carried(fd, size, [&](size_t part) { return real(fd, data, part, at); });           \
    }

FAR_AT(pread, void*, off_t)
FAR_AT(pread64, void*, off64_t)
FAR_AT(pwrite, const void*, off_t)
FAR_AT(pwrite64, const void*, off64_t)

#define FAR_SYNC(name)                                                                             \
    extern "C" int name(int fd)                                                                    \
    {                                                                                              \
        static const auto real = next<int (*)(int)>(#name);                                        \
        if (isFar(fd) && fateOf(false) == Fate::Broken) {                                          \
            errno = EIO;                                                                           \
            return -1;                                                                             \
        }                                                                                          \
        return real(fd);                                                                           \
    }

FAR_SYNC(fsync)
FAR_SYNC(fdatasync)

#define FAR_CONTROL(name)                                                                          \
    extern "C" int name(int fd, int command, ...)                                                  \
    {                                                                                              \
        static const auto real = next<int (*)(int, int, ...)>(#name);                              \
        static const bool locks = *setting("FAR_DISK_LOCKS") != '0';                               \
        va_list more;                                                                              \
        va_start(more, command);                                                                   \
        void* argument = va_arg(more, void*);                                                      \
        va_end(more);                                                                              \
        if (!locks && (command == F_SETLK || command == F_SETLKW) && isFar(fd)) {                  \
            errno = ENOLCK;                                                                        \
            return -1;                                                                             \
        }                                                                                          \
        return real(fd, command, argument);                                                        \
    }

FAR_CONTROL(fcntl)
FAR_CONTROL(fcntl64)
// NOLINTEND(readability-identifier-naming,readability-inconsistent-declaration-parameter-name)
