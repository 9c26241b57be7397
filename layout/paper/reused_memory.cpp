#include "layout/paper/reused_memory.h"

#include <cstdlib>

#ifdef __GLIBC__
#include <malloc.h>
#endif

namespace wainscot::pdf {

#ifdef __GLIBC__

ReusedMemory::ReusedMemory()
{
    constexpr int largestKept = 32 << 20;
    mallopt(M_MMAP_THRESHOLD, largestKept);
    mallopt(M_TRIM_THRESHOLD, 2 * largestKept);
}

ReusedMemory::~ReusedMemory()
{
    malloc_trim(0);
}

#else

ReusedMemory::ReusedMemory() = default;
ReusedMemory::~ReusedMemory() = default;

#endif

} // namespace wainscot::pdf
