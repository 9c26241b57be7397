// The list of pictures with their sizes and seeds.
#pragma once

#include <QImage>
#include <QSize>
#include <cstdint>
#include <vector>

namespace wainscot::samples {

struct Entry {
    const char* name;
    QSize size;
    std::uint32_t seed;
    QImage (*make)(QSize, std::uint32_t);
};
const std::vector<Entry>& catalogue();

} // namespace wainscot::samples
