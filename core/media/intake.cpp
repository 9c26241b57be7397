#include "core/media/intake.h"

#include "core/media/colour.h"
#include "core/media/exif.h"
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
        notes
            << QStringLiteral("it holds %1 pictures; only the first is used").arg(header.pictures);
    }
    if (header.cmyk && (header.icc.isEmpty() || !header.jpeg))
        notes << QStringLiteral("its printing colours (CMYK) can only be shown roughly");
    return notes;
}

// Decodes as little as shows whether all of it can be read: a JPEG at an eighth of its size.
Result<bool> hasDamage(const OpenedPicture& picture)
{
    // The checksums of a PNG have told already.
    if (picture.header.format == QLatin1String("png"))
        return false;
    const SizePx stored = picture.header.stored;
    RenderRequest request;
    request.part = {0, 0, stored.width, stored.height};
    request.size = fitted(stored, {8, 8});
    const auto rows = render(picture, request);
    if (!rows)
        return rows.error();
    if (const auto pixels = takeAll(**rows); !pixels)
        return pixels.error();
    return (*rows)->damaged();
}

Result<bool> makeProxiesOrCheck(const QString& path,
    const OpenedPicture& picture,
    const PictureFacts& facts,
    const Proxies* proxies)
{
    if (proxies != nullptr) {
        const auto made = proxies->make(facts.sha256, wholePicture(path, facts));
        if (made && !made->wasThere)
            return made->damaged;
        // A full disk is no reason to refuse the picture.
        if (!made && made.error().code != ErrorCode::CannotWrite)
            return made.error();
    }
    return hasDamage(picture);
}

} // namespace

Result<PictureFacts> inspectPicture(const QString& path, const Proxies* proxies)
{
    const QFileInfo info(path);
    if (info.isFile() && info.size() == 0)
        return about(path, {ErrorCode::Refused, {}, QStringLiteral("is empty")});
    const auto picture = openPicture(path);
    if (!picture)
        return picture.error();
    const PictureHeader& header = picture->header;
    if (!header.complete) {
        return about(path,
            {ErrorCode::Damaged,
                {},
                QStringLiteral("is damaged: the file breaks off or was changed")});
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
    const auto damage = makeProxiesOrCheck(path, *picture, facts, proxies);
    if (!damage)
        return about(path, damage.error());
    if (*damage)
        facts.notes.prepend(QStringLiteral("the file is damaged; part of the picture may be grey"));
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
