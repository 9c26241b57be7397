// What the libraries share that are put before the C library (LD_PRELOAD) in tests. Linux only.
#pragma once

#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <dlfcn.h>
#include <fcntl.h>
#include <sys/syscall.h>
#include <unistd.h>

namespace wainscot::preload {

inline const char* setting(const char* name)
{
    const char* value = std::getenv(name);
    return value != nullptr ? value : "";
}

// Whether a path lies in the folder that an environment variable names.
inline bool isUnder(const char* path, const char* variable)
{
    const char* under = setting(variable);
    return *under != '\0' && std::strncmp(path, under, std::strlen(under)) == 0;
}

inline bool isUnder(int descriptor, const char* variable)
{
    char link[64];
    char path[4096];
    std::snprintf(link, sizeof link, "/proc/self/fd/%d", descriptor);
    const long length = ::syscall(SYS_readlinkat, AT_FDCWD, link, path, sizeof path - 1);
    if (length <= 0)
        return false;
    path[length] = '\0';
    return isUnder(path, variable);
}

// The function of this name that would have been called.
template <class Function> Function next(const char* name)
{
    return reinterpret_cast<Function>(::dlsym(RTLD_NEXT, name));
}

} // namespace wainscot::preload
