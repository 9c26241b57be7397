// From whatever colours a file has to sRGB (IEC 61966-2-1), through Little CMS: one engine for RGB,
// grey and CMYK, a row at a time.
#pragma once

#include "core/media/rows.h"

#include <QByteArray>

namespace wainscot {

// True when no conversion is needed: no profile, one that comes out as sRGB within two levels, or
// one that cannot be used for pixels of that kind.
[[nodiscard]] bool isAlreadySRgb(const QByteArray& icc, PixelForm kind);

// Rows in sRGB: `source` itself when isAlreadySRgb. Grey stays grey; CMYK becomes RGB, without a
// usable profile by the plain product of inks. Relative colorimetric with black point
// compensation.
// REQUIRES: source is not YCbCr unless isAlreadySRgb
[[nodiscard]] std::unique_ptr<RowSource> inSRgb(
    std::unique_ptr<RowSource> source, const QByteArray& icc);

// Display P3: SMPTE EG 432-1 primaries, D65, sRGB's own transfer curve.
[[nodiscard]] QByteArray displayP3Profile();

} // namespace wainscot
