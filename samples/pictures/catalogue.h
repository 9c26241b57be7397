// The list of pictures with their sizes and seeds. A picture follows from its size and seed alone,
// not from the number of threads; another compiler or another Qt may draw single pixels otherwise.
#pragma once

#include <QImage>
#include <QSize>

#include <cstdint>
#include <vector>

namespace wainscot::samples {

// `size` is what the invented camera or scanner makes; any other is the same scene, finer or
// coarser.
struct Entry {
    const char* name = nullptr;
    QSize size;
    std::uint32_t seed = 0;
    QImage (*make)(QSize, std::uint32_t) = nullptr;
};
const std::vector<Entry>& catalogue();

} // namespace wainscot::samples
