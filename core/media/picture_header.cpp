#include "core/media/picture_header.h"

#include "core/base/says.h"
#include "core/media/chunks.h"
#include "core/media/exif.h"
#include "core/media/heic.h"
#include "core/media/intake.h"

namespace wainscot {

namespace {

// A photo holds 0.5 to 20 pixels for each byte, a blank scanned page up to about 100. More than
// this, in a large picture, is a file made to fill the memory. Own measurements, no source.
constexpr qint64 kMostPixelsPerByte = 200;
constexpr qint64 kPixelsBelowSuspicion = 20'000'000;

Error refused(const QString& detail)
{
    return {ErrorCode::Refused, {}, detail};
}

Result<PictureHeader> jpegHeader(const QByteArray& file)
{
    PictureHeader header;
    header.format = QStringLiteral("jpeg");
    header.jpeg = readJpegHeader(file);
    if (!header.jpeg || header.jpeg->size.isEmpty() || !header.jpeg->hasScan)
        return Error{ErrorCode::Damaged, {}, Says::tr("breaks off before the picture begins")};
    if (header.jpeg->bits != 8)
        return refused(Says::tr("is a JPEG with more than 8 bits a colour, which is not read"));
    header.stored = header.jpeg->size;
    header.grey = header.jpeg->components == 1;
    header.cmyk = header.jpeg->components == 4;
    header.exif = header.jpeg->exif;
    header.icc = header.jpeg->icc;
    return header;
}

Result<PictureHeader> tiffHeader(const QByteArray& file)
{
    const auto tiff = readTiffHeader(file);
    if (!tiff)
        return Error{ErrorCode::Damaged, {}, Says::tr("is damaged: it names no picture")};
    PictureHeader header;
    header.format = QStringLiteral("tiff");
    header.stored = tiff->size;
    header.cmyk = tiff->cmyk;
    header.grey = tiff->samples <= 2;
    header.pictures = tiff->images;
    header.icc = tiff->icc;
    header.exif = file; // a TIFF file is itself the tree of tags; the bytes are shared
    return header;
}

} // namespace

Result<PictureHeader> readPictureHeader(const QString& format, const QByteArray& file)
{
    if (format == QLatin1String("jpeg"))
        return jpegHeader(file);
    if (format == QLatin1String("png"))
        return readPngHeader(file);
    if (format == QLatin1String("webp"))
        return readWebpHeader(file);
    if (format == QLatin1String("tiff"))
        return tiffHeader(file);
    if (format == QLatin1String("heic"))
        return readHeicHeader(file);
    return refused(Says::tr("is no picture of a kind that is read"));
}

Result<Done> checkSize(const PictureHeader& header, qint64 fileBytes)
{
    const qint64 pixels = qint64(header.stored.width) * header.stored.height;
    if (pixels > kMostPixels) {
        return refused(Says::tr("has %1 million pixels; %2 million is the most that is read")
                           .arg(pixels / 1'000'000)
                           .arg(kMostPixels / 1'000'000));
    }
    if (pixels > kPixelsBelowSuspicion && pixels > fileBytes * kMostPixelsPerByte)
        return refused(Says::tr("claims far more pixels than a file of its size can hold"));
    return Done{};
}

int orientationOf(const PictureHeader& header)
{
    // libheif applies a HEIC file's own turning; its EXIF still tells the old one.
    return header.format == QLatin1String("heic") ? 1 : readExif(header.exif).orientation;
}

} // namespace wainscot
