// What a picture file says about itself before any pixel is decoded, the same for every format.
#pragma once

#include "core/base/geometry.h"
#include "core/base/result.h"
#include "core/media/jpeg_segments.h"

#include <QByteArray>
#include <QString>

#include <optional>

namespace wainscot {

struct PictureHeader {
    QString format;
    SizePx stored; // as the pixels lie in the file; for HEIC upright, since libheif turns it
    bool cmyk = false;
    bool grey = false;
    int pictures = 1; // in the file; only the first is used
    QByteArray exif; // the tag tree; orientation in it must not be used for HEIC
    QByteArray icc; // embedded profile, empty = none
    bool complete = true; // false: the file's structure ends early or contradicts itself
    std::optional<JpegHeader> jpeg;
};

// `file` holds the whole file and its first bytes were recognised as `format`.
// Errors: Damaged (no usable header), Refused (a kind of picture within the format that is not
// read); `detail` ends the sentence "FILE ..."; `subject` is left empty.
Result<PictureHeader> readPictureHeader(const QString& format, const QByteArray& file);

// The rules that need no pixel: at most kMostPixels, and no more pixels than so few bytes can
// honestly hold. Errors: Refused
Result<Done> checkSize(const PictureHeader& header, qint64 fileBytes);

// EXIF 1..8 from the one source that counts for the format.
[[nodiscard]] int orientationOf(const PictureHeader& header);

} // namespace wainscot
