// A JPEG file as its segments (ITU-T T.81 annex B), without decoding a pixel.
#pragma once

#include "core/base/geometry.h"

#include <QByteArray>
#include <QByteArrayView>

#include <optional>

namespace wainscot {

struct JpegHeader {
    SizePx size;
    int components = 0;
    int bits = 8;
    bool ordinary = false; // baseline or progressive Huffman coding, which every reader knows
    bool progressive = false; // must be held whole, as coefficients, to be decoded
    bool chromaHalved = false; // colour stored at half width (4:2:0, 4:2:2)
    bool adobe = false; // an Adobe segment, so CMYK is stored inverted
    bool hasScan = false; // pixels begin before the file ends
    QByteArray exif; // the tag tree, without "Exif\0\0"
    QByteArray icc;
};

// Nothing when there is no frame header in it.
[[nodiscard]] std::optional<JpegHeader> readJpegHeader(QByteArrayView file);

// Leaves the compressed picture and takes out what tells of people, places, cameras or other
// pictures: EXIF, XMP, comments, profiles, thumbnails, and whatever follows the end of the image.
// False, and nothing done, when the file does not run through to its end of image. In place, so
// that each photo of an archive is in memory once.
[[nodiscard]] bool stripMetadata(QByteArray& file);

} // namespace wainscot
