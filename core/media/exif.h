// The tree of tags that EXIF and TIFF share (TIFF 6.0; CIPA DC-008 "Exif 2.32"), read for the few
// facts a book needs. Damaged trees give less, never a crash.
#pragma once

#include "core/base/geometry.h"
#include "core/model/experience.h"

#include <QByteArray>
#include <QByteArrayView>

#include <optional>

namespace wainscot {

struct ExifFacts {
    int orientation = 1; // 1..8; anything else in the file counts as 1
    std::optional<CaptureTime> captured; // when taken or scanned, never when changed
};

// `data` starts with the byte order mark ("II" or "MM").
[[nodiscard]] ExifFacts readExif(QByteArrayView data);

struct TiffHeader {
    SizePx size;
    int images = 0; // directories in the chain, counted up to 100
    int samples = 1;
    bool cmyk = false;
    QByteArray icc;
};
// The first picture of a TIFF file; nothing when the tree has no picture in it.
[[nodiscard]] std::optional<TiffHeader> readTiffHeader(QByteArrayView file);

// "2026:03:14 09:26:53" and "+01:00" as cameras write them; nothing for blanks and zeros.
[[nodiscard]] std::optional<CaptureTime> captureTime(QByteArrayView time, QByteArrayView offset);

} // namespace wainscot
