#include "core/media/bake.h"

#include "core/media/colour.h"
#include "core/media/jpeg_writer.h"
#include "core/media/orientation.h"
#include "core/media/treat.h"

namespace wainscot {

namespace {

struct Plan {
    OpenedPicture picture;
    SizePx whole; // upright and treated
    RectPx part; // of it
};

Result<Plan> planFor(const PictureRecipe& recipe, SizePx asked)
{
    const RectFraction& visible = recipe.visible;
    if (asked.isEmpty() || visible.width <= 0 || visible.height <= 0)
        return about(
            recipe.path, {ErrorCode::WrongUse, {}, QStringLiteral("was asked for no size")});
    auto picture = openPicture(recipe.path);
    if (!picture)
        return picture.error();
    Plan plan;
    plan.picture = *std::move(picture);
    const SizePx upright = Turning(recipe.orientation).upright(plan.picture.header.stored);
    plan.whole = treatedSize(recipe, upright);
    plan.part = visiblePixels(visible, plan.whole);
    return plan;
}

// There is nothing to change but what the original's compressed data tells besides.
bool mayPassThrough(const Plan& plan, const PictureRecipe& recipe, SizePx largest)
{
    const auto& jpeg = plan.picture.header.jpeg;
    if (!jpeg || !jpeg->ordinary || recipe.orientation != 1 || !recipe.treatment.isNothing())
        return false;
    if (jpeg->components != 1 && jpeg->components != 3)
        return false;
    const SizePx whole = plan.whole;
    const bool cropped = plan.part.width != whole.width || plan.part.height != whole.height;
    if (cropped || whole.width > largest.width || whole.height > largest.height)
        return false;
    const PixelForm kind = jpeg->components == 1 ? PixelForm::Grey : PixelForm::Rgb;
    return isAlreadySRgb(jpeg->icc, kind);
}

// Colour as fine as the original kept it: drawings and scans keep their sharp edges.
bool wantsFullChroma(const PictureHeader& header)
{
    if (header.jpeg)
        return !header.jpeg->chromaHalved;
    return header.format == QLatin1String("png") || header.format == QLatin1String("tiff");
}

} // namespace

Result<BakedJpeg> bakeJpeg(const PictureRecipe& recipe, SizePx largest)
{
    auto plan = planFor(recipe, largest);
    if (!plan)
        return plan.error();
    BakedJpeg baked;
    if (mayPassThrough(*plan, recipe, largest) && stripMetadata(plan->picture.file)) {
        baked.bytes = std::move(plan->picture.file);
        baked.size = plan->whole;
        baked.components = plan->picture.header.jpeg->components;
        baked.passedThrough = true;
        return baked;
    }
    TreatRequest request;
    request.part = plan->part;
    request.size = fitted({plan->part.width, plan->part.height}, largest);
    request.yCbCr = true;
    const auto rows = renderTreated(plan->picture, recipe, request);
    if (!rows)
        return about(recipe.path, rows.error());
    JpegStyle style;
    style.fullChroma = wantsFullChroma(plan->picture.header);
    const auto bytes = writeJpeg(**rows, style);
    if (!bytes)
        return about(recipe.path, bytes.error());
    baked.bytes = *bytes;
    baked.size = request.size;
    baked.components = (*rows)->kind() == PixelForm::Grey ? 1 : 3;
    return baked;
}

Result<QImage> bakeImage(const PictureRecipe& recipe, SizePx target)
{
    const auto plan = planFor(recipe, target);
    if (!plan)
        return plan.error();
    TreatRequest request;
    request.part = plan->part;
    request.size = covering({plan->part.width, plan->part.height}, target);
    const auto rows = renderTreated(plan->picture, recipe, request);
    if (!rows)
        return about(recipe.path, rows.error());
    auto image = toImage(**rows);
    return image ? std::move(image) : about(recipe.path, image.error());
}

} // namespace wainscot
