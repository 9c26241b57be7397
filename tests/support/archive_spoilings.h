// Ways to spoil a file, one at a time, and the clause that must notice each.
#pragma once

#include <qpdf/QPDF.hh>

#include <functional>
#include <vector>

namespace wainscot::archive {

struct Spoiling {
    const char* clause;
    const char* what;
    std::function<void(QPDF&)> spoil; // throws when the file has nothing of the kind
    bool attached = false; // the file that is spoiled holds another
};

// Beside those of bytes (header, trailer, xref), which the test makes itself.
[[nodiscard]] const std::vector<Spoiling>& spoilings();
[[nodiscard]] const std::vector<Spoiling>& furtherSpoilings();

} // namespace wainscot::archive
