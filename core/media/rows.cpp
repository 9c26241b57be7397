#include "core/media/rows.h"

#include "core/base/says.h"
#include "core/media/heic.h"
#include "core/media/orientation.h"

#include <QBuffer>
#include <QImage>
#include <QImageReader>

#include <algorithm>
#include <atomic>

namespace wainscot {

namespace {

std::atomic<std::uint64_t> s_decodedBytes = 0;

class ImageRows final : public RowSource {
public:
    ImageRows(QImage image, const RectPx& part, PixelForm kind)
        : RowSource({part.width, part.height}, kind)
        , m_image(std::move(image))
        , m_part(part)
    {
    }
    bool next(std::uint8_t* row) override
    {
        const uchar* from = m_image.constScanLine(m_part.y + m_row++)
            + std::ptrdiff_t(m_part.x) * channelsOf(kind());
        std::copy_n(from, rowBytes(), row);
        return true;
    }

private:
    QImage m_image;
    RectPx m_part;
    int m_row = 0;
};

class KeptRows final : public RowSource {
public:
    KeptRows(std::vector<std::uint8_t> pixels, SizePx size, PixelForm kind, bool damage = false)
        : RowSource(size, kind)
        , m_pixels(std::move(pixels))
        , m_damaged(damage)
    {
    }
    bool next(std::uint8_t* row) override
    {
        std::copy_n(m_pixels.data() + m_at, rowBytes(), row);
        m_at += rowBytes();
        return true;
    }
    [[nodiscard]] bool damaged() const override { return m_damaged; }

private:
    std::vector<std::uint8_t> m_pixels;
    std::size_t m_at = 0;
    bool m_damaged;
};

// Left and right change places; needs no more than the row itself.
class MirroredRows final : public RowSource {
public:
    explicit MirroredRows(std::unique_ptr<RowSource> source)
        : RowSource(source->size(), source->kind())
        , m_source(std::move(source))
    {
    }
    bool next(std::uint8_t* row) override
    {
        if (!m_source->next(row))
            return false;
        const int channels = channelsOf(kind());
        for (int left = 0, right = size().width - 1; left < right; ++left, --right) {
            std::swap_ranges(row + std::ptrdiff_t(left) * channels,
                row + std::ptrdiff_t(left + 1) * channels,
                row + std::ptrdiff_t(right) * channels);
        }
        return true;
    }
    [[nodiscard]] bool damaged() const override { return m_source->damaged(); }

private:
    std::unique_ptr<RowSource> m_source;
};

std::vector<std::uint8_t> turnedPixels(
    const std::vector<std::uint8_t>& stored, SizePx size, int channels, int orientation)
{
    const Turning turning(orientation);
    const SizePx upright = turning.upright(size);
    std::vector<std::uint8_t> out(stored.size());
    auto to = out.begin();
    // Walks the upright picture in reading order and steps through the stored one.
    const std::ptrdiff_t pixel = channels;
    const std::ptrdiff_t line = pixel * size.width;
    const std::ptrdiff_t right =
        turning.swaps ? (turning.flipsY ? -line : line) : (turning.flipsX ? -pixel : pixel);
    const std::ptrdiff_t below =
        turning.swaps ? (turning.flipsX ? -pixel : pixel) : (turning.flipsY ? -line : line);
    std::ptrdiff_t start =
        (turning.flipsX ? line - pixel : 0) + (turning.flipsY ? line * (size.height - 1) : 0);
    for (int y = 0; y < upright.height; ++y, start += below) {
        std::ptrdiff_t from = start;
        for (int x = 0; x < upright.width; ++x, from += right)
            to = std::copy_n(stored.data() + from, channels, to);
    }
    return out;
}

// WebP and TIFF, through Qt and not turned by it.
Result<QImage> readThroughQt(const QByteArray& file, const PictureHeader& header)
{
    // Qt's own cap (128 MB in 6.4) would refuse honest photos; ours was applied to the header.
    static const bool raised = [] {
        QImageReader::setAllocationLimit(1300);
        return true;
    }();
    QByteArray bytes = file; // shared, not copied
    QBuffer buffer(&bytes);
    if (!raised || !buffer.open(QIODevice::ReadOnly))
        return Error{ErrorCode::Internal, {}, {}};
    QImageReader reader(&buffer, header.format.toLatin1());
    reader.setAutoDetectImageFormat(false);
    reader.setAutoTransform(false);
    QImage image = reader.read();
    if (image.isNull())
        return Error{ErrorCode::Damaged, {}, Says::tr("is damaged and cannot be read")};
    return image;
}

QImage onWhite(const QImage& image)
{
    QImage opaque = image.convertToFormat(QImage::Format_RGBA8888);
    for (int y = 0; y < opaque.height(); ++y) {
        uchar* pixel = opaque.scanLine(y);
        for (int x = 0; x < opaque.width(); ++x, pixel += 4) {
            for (int c = 0; c < 3; ++c)
                pixel[c] = uchar((pixel[c] * pixel[3] + 255 * (255 - pixel[3]) + 127) / 255);
        }
    }
    return opaque.convertToFormat(QImage::Format_RGBX8888).convertToFormat(QImage::Format_RGB888);
}

} // namespace

std::uint64_t decodedBytes()
{
    return s_decodedBytes;
}

void countDecoded(std::size_t bytes)
{
    s_decodedBytes += bytes;
}

std::unique_ptr<RowSource> rowsOf(const QImage& image, const RectPx& part)
{
    const bool grey =
        image.format() == QImage::Format_Grayscale8 || image.format() == QImage::Format_Grayscale16;
    QImage plain;
    if (grey)
        plain = image.convertToFormat(QImage::Format_Grayscale8);
    else if (image.hasAlphaChannel())
        plain = onWhite(image);
    else
        plain = image.convertToFormat(QImage::Format_RGB888);
    return std::make_unique<ImageRows>(plain, part, grey ? PixelForm::Grey : PixelForm::Rgb);
}

std::unique_ptr<RowSource> rowsOf(std::vector<std::uint8_t> pixels, SizePx size, PixelForm kind)
{
    return std::make_unique<KeptRows>(std::move(pixels), size, kind);
}

Result<std::unique_ptr<RowSource>> openRows(
    const QByteArray& file, const PictureHeader& header, const RowRequest& request)
{
    if (header.jpeg)
        return openJpegRows(file, request);
    if (header.format == QLatin1String("png"))
        return openPngRows(file, request);
    const bool heic = header.format == QLatin1String("heic");
    auto image = heic ? decodeHeic(file) : readThroughQt(file, header);
    if (!image)
        return image.error();
    // All that reads its rows trusts the header.
    if (image->width() != header.stored.width || image->height() != header.stored.height)
        return Error{ErrorCode::Damaged, {}, Says::tr("contradicts itself about its size")};
    countDecoded(static_cast<std::size_t>(image->sizeInBytes()));
    return rowsOf(*image, request.part);
}

Result<std::unique_ptr<RowSource>> turned(std::unique_ptr<RowSource> source, int orientation)
{
    if (orientation == 1)
        return source;
    if (orientation == 2)
        return std::unique_ptr<RowSource>(std::make_unique<MirroredRows>(std::move(source)));
    const auto stored = takeAll(*source);
    if (!stored)
        return stored.error();
    const int channels = channelsOf(source->kind());
    return std::unique_ptr<RowSource>(
        std::make_unique<KeptRows>(turnedPixels(*stored, source->size(), channels, orientation),
            Turning(orientation).upright(source->size()),
            source->kind(),
            source->damaged()));
}

Result<std::vector<std::uint8_t>> takeAll(RowSource& source)
{
    std::vector<std::uint8_t> pixels(
        source.rowBytes() * static_cast<std::size_t>(source.size().height));
    for (std::size_t at = 0; at < pixels.size(); at += source.rowBytes()) {
        if (!source.next(pixels.data() + at))
            return Error{ErrorCode::Damaged, {}, Says::tr("is damaged and cannot be read")};
    }
    return pixels;
}

} // namespace wainscot
