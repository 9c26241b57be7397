// Which character id a glyph of a CFF font answers to (Adobe Technical Note 5176).
#pragma once

#include <QByteArray>

#include <cstdint>
#include <optional>
#include <vector>

namespace wainscot::pdf {

struct CffCharset {
    // A PDF shows glyphs of a CID-keyed font by character id, of any other font by glyph number
    // (ISO 32000-1, 9.7.4.2).
    bool cidKeyed = false;
    std::vector<std::uint16_t> cidOfGlyph; // CID-keyed fonts only
};

// From a font's "CFF " table; nothing if it contradicts itself.
[[nodiscard]] std::optional<CffCharset> readCffCharset(const QByteArray& cff);

} // namespace wainscot::pdf
