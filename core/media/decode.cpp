#include "core/media/decode.h"

#include "core/media/orientation.h"
#include "core/media/render.h"

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
    RenderRequest request;
    request.orientation = recipe.orientation;
    request.part = {0, 0, upright.width, upright.height};
    request.size = fitted(upright, within);
    auto rows = render(*picture, request);
    if (!rows)
        return about(recipe.path, rows.error());
    auto image = toImage(**rows);
    return image ? std::move(image) : about(recipe.path, image.error());
}

} // namespace wainscot
