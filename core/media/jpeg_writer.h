// JPEGs that hold a picture and nothing else.
#pragma once

#include "core/media/rows.h"

#include <QByteArray>

namespace wainscot {

struct JpegStyle {
    int quality = 88; // libjpeg's scale, 1..100
    bool fullChroma = false; // 4:4:4, for drawings and other sharp colour edges; else 4:2:0
};

// Takes all rows. Baseline, no metadata, the same bytes for the same rows.
// Errors: Damaged (rows ended early), Internal
// REQUIRES: source is not CMYK
Result<QByteArray> writeJpeg(RowSource& source, const JpegStyle& style);

} // namespace wainscot
