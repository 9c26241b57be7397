#include "core/media/intake.h"

#include "core/base/says.h"
#include "core/media/colour.h"
#include "core/media/exif.h"
#include "core/media/likeness.h"
#include "core/media/orientation.h"
#include "core/media/proxies.h"
#include "core/media/render.h"

#include <QCryptographicHash>
#include <QFileInfo>

namespace wainscot {

namespace {

ColourKind colourOf(const PictureHeader& header)
{
    if (header.cmyk)
        return ColourKind::Cmyk;
    if (header.grey)
        return ColourKind::Grey;
    if (header.icc.isEmpty())
        return ColourKind::Untagged;
    return isAlreadySRgb(header.icc, PixelForm::Rgb) ? ColourKind::SRgb : ColourKind::OtherRgb;
}

QStringList notesOn(const PictureHeader& header)
{
    QStringList notes;
    if (header.pictures > 1) {
        notes << Says::tr("it holds %1 pictures; only the first is used").arg(header.pictures);
    }
    if (header.cmyk && (header.icc.isEmpty() || !header.jpeg))
        notes << Says::tr("its printing colours (CMYK) can only be shown roughly");
    return notes;
}

struct SmallLook {
    PictureLook look;
    bool damaged = false;
};

// Decodes no more than it takes to see whether all of it can be read and what it looks like: a JPEG
// at an eighth of its size.
Result<SmallLook> lookSmall(const OpenedPicture& picture, int orientation)
{
    const SizePx upright = Turning(orientation).upright(picture.header.stored);
    RenderRequest request;
    request.orientation = orientation;
    request.part = {0, 0, upright.width, upright.height};
    request.size = fitted(upright, {kLookSidePx, kLookSidePx});
    const auto rows = render(picture, request);
    if (!rows)
        return rows.error();
    const auto image = toImage(**rows);
    if (!image)
        return image.error();
    return SmallLook{lookOf(*image), (*rows)->damaged()};
}

// With proxies the thumbnail has been decoded anyway.
Result<SmallLook> makeProxiesOrLook(const QString& path,
    const OpenedPicture& picture,
    const PictureFacts& facts,
    const Proxies* proxies)
{
    if (proxies != nullptr) {
        const auto made = proxies->make(facts.sha256, wholePicture(path, facts));
        // A full disk is no reason to refuse the picture.
        if (!made && made.error().code != ErrorCode::CannotWrite)
            return made.error();
        const QImage thumbnail =
            proxies->cached(facts.sha256, wholePicture(path, facts), ProxySize::Thumbnail);
        if (made && !made->wasThere && !thumbnail.isNull())
            return SmallLook{lookOf(thumbnail), made->damaged};
    }
    return lookSmall(picture, facts.orientation);
}

} // namespace

Result<PictureFacts> inspectPicture(const QString& path, const Proxies* proxies)
{
    const QFileInfo info(path);
    if (info.isFile() && info.size() == 0)
        return about(path, {ErrorCode::Refused, {}, Says::tr("is empty")});
    const auto picture = openPicture(path);
    if (!picture)
        return picture.error();
    const PictureHeader& header = picture->header;
    if (!header.complete) {
        return about(path,
            {ErrorCode::Damaged, {}, Says::tr("is damaged: the file breaks off or was changed")});
    }
    PictureFacts facts;
    facts.format = header.format;
    facts.fileBytes = picture->file.size();
    facts.sha256 = QString::fromLatin1(
        QCryptographicHash::hash(picture->file, QCryptographicHash::Sha256).toHex());
    facts.storedSize = header.stored;
    facts.orientation = orientationOf(header);
    facts.size = Turning(facts.orientation).upright(header.stored);
    facts.captured = readExif(header.exif).captured;
    facts.colour = colourOf(header);
    facts.notes = notesOn(header);
    const auto seen = makeProxiesOrLook(path, *picture, facts, proxies);
    if (!seen)
        return about(path, seen.error());
    facts.look = seen->look;
    if (seen->damaged)
        facts.notes.prepend(Says::tr("the file is damaged; part of the picture may be grey"));
    return facts;
}

PictureRecipe wholePicture(const QString& path, const PictureFacts& facts)
{
    PictureRecipe recipe;
    recipe.path = path;
    recipe.format = facts.format;
    recipe.orientation = facts.orientation;
    recipe.size = facts.size;
    return recipe;
}

} // namespace wainscot
