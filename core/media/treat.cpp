#include "core/media/treat.h"

#include "core/base/says.h"
#include "core/media/cover.h"
#include "core/media/orientation.h"
#include "core/media/page_light.h"
#include "core/media/resample.h"
#include "core/media/straighten.h"

#include <functional>
#include <optional>

namespace wainscot {

namespace {

constexpr SizePx kSmall{512, 512}; // of the copy that tells patches and light

using Rows = std::unique_ptr<RowSource>;

// Rows of a part of the upright picture in some size; `held` are bytes that will be kept of them.
using Opener = std::function<Result<Rows>(const RectPx& part, SizePx size, qint64 held)>;

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
    const Opener& open, const Treatment& treatment, SizePx upright, SizePx treated)
{
    Findings findings;
    if (treatment.covered.empty() && !treatment.evenLight)
        return findings;
    const SizePx small = fitted(upright, kSmall);
    auto rows = open(all(upright), small, 0);
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
    Rows page =
        covered(rowsOf(*image, all(small)), {upright, all(upright), small}, findings.patches);
    if (treatment.straightening) {
        // Fractions of the picture, so the corners are those of the small copy as well.
        const SizePx size = fitted(treated, kSmall);
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

// REQUIRES: the corners can be straightened
Result<Rows> treatedRows(
    const Opener& open, const Treatment& treatment, SizePx upright, const PagePart& page)
{
    auto findings = findingsIn(open, treatment, upright, page.whole);
    if (!findings)
        return findings.error();
    PagePart source{upright, page.part, page.size};
    std::optional<StraightenPlan> plan;
    if (treatment.straightening) {
        plan = planStraightening(page, treatment.straightening->corners, upright);
        source.part = plan->needed;
        source.size = plan->neededSize;
    }
    auto opened = open(source.part, source.size, plan ? bytesHeld(*plan) : 0);
    if (!opened)
        return opened.error();
    Rows rows = covered(*std::move(opened), source, findings->patches);
    if (plan)
        rows = straightened(std::move(rows), *plan);
    if (findings->light)
        rows = evened(std::move(rows), page, *findings->light);
    return rows;
}

Result<Done> canTreat(const Treatment& treatment, SizePx upright)
{
    if (treatment.straightening && !canStraighten(treatment.straightening->corners, upright))
        return Error{ErrorCode::Refused, {}, Says::tr("has corners that go round no page")};
    return Done{};
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
    RenderRequest plain;
    plain.orientation = recipe.orientation;
    if (recipe.treatment.isNothing()) {
        plain.part = request.part;
        plain.size = request.size;
        plain.yCbCr = request.yCbCr;
        return render(picture, plain);
    }
    const SizePx upright = Turning(recipe.orientation).upright(picture.header.stored);
    if (const auto can = canTreat(recipe.treatment, upright); !can)
        return about(recipe.path, can.error());
    const auto open = [&](const RectPx& part, SizePx size, qint64 held) {
        RenderRequest some = plain;
        some.part = part;
        some.size = size;
        some.heldBesides = held;
        return render(picture, some);
    };
    return treatedRows(open,
        recipe.treatment,
        upright,
        {treatedSize(recipe, upright), request.part, request.size});
}

Result<QImage> treatedImage(const QImage& upright, const Treatment& treatment, SizePx within)
{
    const SizePx size{upright.width(), upright.height()};
    if (size.isEmpty() || within.isEmpty())
        return Error{ErrorCode::WrongUse, {}, QStringLiteral("was asked for no size")};
    if (const auto can = canTreat(treatment, size); !can)
        return can.error();
    const SizePx whole =
        treatment.straightening ? straightenedSize(treatment.straightening->corners, size) : size;
    const auto open = [&](const RectPx& part, SizePx wanted, qint64) {
        return Result<Rows>(resampled(rowsOf(upright, part), wanted));
    };
    auto rows = treatedRows(open, treatment, size, {whole, all(whole), fitted(whole, within)});
    if (!rows)
        return rows.error();
    return toImage(**rows);
}

} // namespace wainscot
