// Pictures decoded and baked with their middle covered, as they leave the book.
#include "core/media/bake.h"
#include "core/media/decode.h"
#include "core/media/intake.h"
#include "core/media/jpeg_segments.h"
#include "core/media/picture_header.h"
#include "tests/fuzz/targets.h"

namespace wainscot::fuzz {

namespace {

constexpr SizePx kWithin{40, 40};
// Such headers are refused by their numbers, or cost seconds of honest decoding.
constexpr qint64 kMostTried = 4'000'000;

// One colour stands in the inner part of what is covered, where no neighbour is mixed in.
void lookForMiddle(const QImage& image)
{
    must(image.width() <= kWithin.width && image.height() <= kWithin.height, "within its size");
    const QRect inner(
        image.width() * 3 / 8, image.height() * 3 / 8, image.width() / 4, image.height() / 4);
    for (int y = inner.top(); y <= inner.bottom(); ++y) {
        for (int x = inner.left(); x <= inner.right(); ++x)
            must(
                image.pixel(x, y) == image.pixel(inner.topLeft()), "what is covered has no detail");
    }
}

} // namespace

void pixels(const std::uint8_t* bytes, std::size_t count)
{
    static const QString file = place() + QStringLiteral("/picture");
    put(file, bytes, count);
    const auto facts = inspectPicture(file);
    if (!facts) {
        must(!facts.error().detail.isEmpty(), "a reason");
        return;
    }
    if (qint64(facts->size.width) * facts->size.height > kMostTried)
        return;
    PictureRecipe recipe = wholePicture(file, *facts);
    recipe.treatment.covered = {{{0.25, 0.25, 0.5, 0.5}, Cover::Flat, false}};
    const auto image = decodeUpright(recipe, kWithin);
    must(image ? !image->isNull() : !image.error().detail.isEmpty(), "pixels or a reason");
    if (image)
        lookForMiddle(*image);
    const auto baked = bakeJpeg(recipe, kWithin);
    must(baked ? !baked->passedThrough : !baked.error().detail.isEmpty(), "a JPEG or a reason");
    if (!baked)
        return;
    const auto header = readJpegHeader(baked->bytes);
    must(
        header && header->exif.isEmpty() && header->size == baked->size, "a JPEG without metadata");
}

} // namespace wainscot::fuzz
