// HEIC files through libheif.
#pragma once

#include "core/media/picture_header.h"

#include <QImage>

namespace wainscot {

// The first (primary) picture; its profile is raw ICC or made from the colour primaries (nclx).
Result<PictureHeader> readHeicHeader(const QByteArray& file);

// Upright, as libheif turns it; Format_RGB888 or, where the file has transparency, RGBA8888. Not
// colour-converted. Errors: Damaged
Result<QImage> decodeHeic(const QByteArray& file);

} // namespace wainscot
