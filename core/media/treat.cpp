#include "core/media/treat.h"

#include "core/media/cover.h"
#include "core/media/orientation.h"
#include "core/media/page_light.h"
#include "core/media/resample.h"
#include "core/media/straighten.h"

#include <optional>

namespace wainscot {

namespace {

constexpr SizePx kSmall{512, 512}; // of the copy that tells patches and light

using Rows = std::unique_ptr<RowSource>;

// What only the whole picture tells; the same for every part and size of it.
struct Findings {
    std::vector<CoverPatches> patches;
    std::optional<PageLight> light;
};

RectPx all(SizePx size)
{
    return {0, 0, size.width, size.height};
}

Result<Findings> findingsIn(
    const OpenedPicture& picture, const PictureRecipe& recipe, SizePx upright)
{
    Findings findings;
    const Treatment& treatment = recipe.treatment;
    if (treatment.covered.empty() && !treatment.evenLight)
        return findings;
    RenderRequest request;
    request.orientation = recipe.orientation;
    request.part = all(upright);
    request.size = fitted(upright, kSmall);
    auto rows = render(picture, request);
    if (!rows)
        return rows.error();
    const auto image = toImage(**rows);
    rows->reset(); // another may be waiting to decode
    if (!image)
        return image.error();
    for (const CoveredRegion& region : treatment.covered)
        findings.patches.emplace_back(region, *image);
    if (!treatment.evenLight)
        return findings;
    const SizePx small = request.size;
    Rows page =
        covered(rowsOf(*image, all(small)), {upright, all(upright), small}, findings.patches);
    if (treatment.straightening) {
        // Fractions of the picture, so the corners are those of the small copy as well.
        const SizePx size = fitted(treatedSize(recipe, upright), kSmall);
        const StraightenPlan plan =
            planStraightening({size, all(size), size}, treatment.straightening->corners, small);
        const auto whole = toImage(*page);
        if (!whole)
            return whole.error();
        page = straightened(resampled(rowsOf(*whole, plan.needed), plan.neededSize), plan);
    }
    const auto whole = toImage(*page);
    if (!whole)
        return whole.error();
    findings.light.emplace(*whole);
    return findings;
}

} // namespace

SizePx treatedSize(const PictureRecipe& recipe, SizePx upright)
{
    const auto& straightening = recipe.treatment.straightening;
    if (!straightening)
        return upright;
    return recipe.size.isEmpty() ? straightenedSize(straightening->corners, upright) : recipe.size;
}

Result<std::unique_ptr<RowSource>> renderTreated(
    const OpenedPicture& picture, const PictureRecipe& recipe, const TreatRequest& request)
{
    RenderRequest wanted;
    wanted.orientation = recipe.orientation;
    wanted.part = request.part;
    wanted.size = request.size;
    const Treatment& treatment = recipe.treatment;
    if (treatment.isNothing()) {
        wanted.yCbCr = request.yCbCr;
        return render(picture, wanted);
    }
    const SizePx upright = Turning(recipe.orientation).upright(picture.header.stored);
    if (treatment.straightening && !canStraighten(treatment.straightening->corners, upright)) {
        return about(recipe.path,
            {ErrorCode::Refused, {}, QStringLiteral("has corners that go round no page")});
    }
    auto findings = findingsIn(picture, recipe, upright);
    if (!findings)
        return findings.error();
    const PagePart page{treatedSize(recipe, upright), request.part, request.size};
    std::optional<StraightenPlan> plan;
    if (treatment.straightening) {
        plan = planStraightening(page, treatment.straightening->corners, upright);
        wanted.part = plan->needed;
        wanted.size = plan->neededSize;
        wanted.heldBesides = bytesHeld(*plan);
    }
    auto source = render(picture, wanted);
    if (!source)
        return source.error();
    Rows rows = covered(*std::move(source), {upright, wanted.part, wanted.size}, findings->patches);
    if (plan)
        rows = straightened(std::move(rows), *plan);
    if (findings->light)
        rows = evened(std::move(rows), page, *findings->light);
    return rows;
}

} // namespace wainscot
