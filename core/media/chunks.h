// PNG and WebP files as their chunks, without decoding a pixel.
#pragma once

#include "core/media/picture_header.h"

namespace wainscot {

// PNG (W3C PNG, third edition): every chunk's checksum is tested on the way.
Result<PictureHeader> readPngHeader(const QByteArray& file);

// WebP (RFC 9649).
Result<PictureHeader> readWebpHeader(const QByteArray& file);

} // namespace wainscot
