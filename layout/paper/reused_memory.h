// Memory of pictures that is used again by the next one.
#pragma once

namespace wainscot::pdf {

// While it lives, blocks of up to 32 MB that are freed stay with the program instead of going back
// to the system, which would clear every page of them anew for the next picture: half the CPU of an
// archive of photos passed through. The limits are those that glibc itself comes to once a block of
// 32 MB was freed (mallopt(3), M_MMAP_THRESHOLD); they stay. What lies unused goes back at the end.
// Does nothing on other systems.
class ReusedMemory {
public:
    ReusedMemory();
    ReusedMemory(const ReusedMemory&) = delete;
    ReusedMemory& operator=(const ReusedMemory&) = delete;
    ~ReusedMemory();
};

} // namespace wainscot::pdf
