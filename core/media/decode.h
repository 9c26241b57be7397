// Pictures as upright sRGB images at the size that is needed, with as little decoded as that takes.
#pragma once

#include "core/media/bake.h"

#include <QImage>

namespace wainscot {

// The whole treated picture, shrunk to fit `within` and never enlarged. Transparent parts come out
// on white. Format_RGB32 or Format_Grayscale8; no text or other metadata of the file survives.
// `recipe.visible` is not looked at.
// Errors: CannotRead, Damaged, Refused (more than kMostPixels)
Result<QImage> decodeUpright(const PictureRecipe& recipe, SizePx within);

} // namespace wainscot
