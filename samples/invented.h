// A class of any size, made up from a seed: for tests of speed and of the edges (none, forty).
#pragma once

#include <QString>

namespace wainscot::samples {

struct InventedClass {
    QString childrenCsv;
    QString quotesCsv; // three answers for most children
};

// REQUIRES: 0 <= children <= 2000
[[nodiscard]] InventedClass inventClass(unsigned seed, int children);

} // namespace wainscot::samples
