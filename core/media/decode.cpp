#include "core/media/decode.h"

#include "core/media/orientation.h"
#include "core/media/treat.h"

namespace wainscot {

Result<QImage> decodeUpright(const PictureRecipe& recipe, SizePx within)
{
    if (within.isEmpty())
        return about(
            recipe.path, {ErrorCode::WrongUse, {}, QStringLiteral("was asked for no size")});
    const auto picture = openPicture(recipe.path);
    if (!picture)
        return picture.error();
    const SizePx upright = Turning(recipe.orientation).upright(picture->header.stored);
    const SizePx whole = treatedSize(recipe, upright);
    TreatRequest request;
    request.part = {0, 0, whole.width, whole.height};
    request.size = fitted(whole, within);
    auto rows = renderTreated(*picture, recipe, request);
    if (!rows)
        return about(recipe.path, rows.error());
    auto image = toImage(**rows);
    return image ? std::move(image) : about(recipe.path, image.error());
}

} // namespace wainscot
