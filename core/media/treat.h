// A picture as its recipe wants it: covered, straightened, in even light, cut and shrunk.
// Everything that shows a picture gets its pixels here, so that none shows what another one hides.
#pragma once

#include "core/media/render.h"

namespace wainscot {

// The size of the treated picture, from that of the upright one.
[[nodiscard]] SizePx treatedSize(const PictureRecipe& recipe, SizePx upright);

struct TreatRequest {
    RectPx part; // of the treated picture
    SizePx size; // of the result
    bool yCbCr = false; // rows may come in JPEG's own colour space, where nothing is treated
};

// As `render`, of the treated picture. A first decode at small size tells what covers a region and
// how the light fell; the second hands rows on as they come, and holds only those that one slanted
// row of a straightened page crosses.
// Errors: Damaged; Refused when the corners go round no page
Result<std::unique_ptr<RowSource>> renderTreated(
    const OpenedPicture& picture, const PictureRecipe& recipe, const TreatRequest& request);

// The same of an upright picture at hand, as large as fits `within`: what a person only tries.
// Errors: Refused as above; WrongUse for no size
Result<QImage> treatedImage(const QImage& upright, const Treatment& treatment, SizePx within);

} // namespace wainscot
