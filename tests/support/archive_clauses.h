// Clauses of ISO 19005-2 (PDF/A-2, levels B and U) as the public rules of the veraPDF profiles
// PDFA-2B and PDFA-2U state them (github.com/veraPDF/veraPDF-validation-profiles), as far as a file
// can be checked against them here, and what PDFA-3B (ISO 19005-3, 6.8) says of attached files. Not
// checked: the outlines and widths of fonts that are not TrueType, the content of the colour
// profile beyond its header, digital signatures.
#pragma once

#include <functional>
#include <vector>

#include "tests/support/archive_file.h"

namespace wainscot::archive {

struct Clause {
    const char* number; // "6.2.11.4.1"
    const char* says;
    std::function<QStringList(const File&)> faults; // empty = kept
};

// Of all themes. A number stands there once for each thing that is looked at apart.
[[nodiscard]] const std::vector<Clause>& clauses();

// What we never write at all (inks, JPEG 2000, halftones, simple TrueType fonts ...) is refused as
// such, which is stricter than the rules about it.
[[nodiscard]] const std::vector<Clause>& structureClauses();
[[nodiscard]] const std::vector<Clause>& graphicsClauses();
[[nodiscard]] const std::vector<Clause>& fontsClauses();
[[nodiscard]] const std::vector<Clause>& actsClauses();
[[nodiscard]] const std::vector<Clause>& metadataClauses();

// The numbers of all clauses that a file does not keep, with what was found.
[[nodiscard]] QStringList faultsOf(const QByteArray& raw);

} // namespace wainscot::archive
