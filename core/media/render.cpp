#include "core/media/render.h"

#include "core/base/says.h"
#include "core/media/colour.h"
#include "core/media/intake.h"
#include "core/media/orientation.h"
#include "core/media/resample.h"
#include "core/media/sniff.h"

#include <QFile>
#include <QFileInfo>

#include <algorithm>
#include <cmath>
#include <mutex>

namespace wainscot {

namespace {

constexpr qint64 kLargeBytes = 48'000'000;

// What a decoder or a turn must hold at once; streamed rows do not count.
qint64 bytesHeld(const PictureHeader& header, const RenderRequest& request)
{
    const qint64 stored = qint64(header.stored.width) * header.stored.height;
    const qint64 result = qint64(request.size.width) * request.size.height;
    qint64 bytes = request.heldBesides + (request.orientation > 2 ? result * 6 : 0);
    if (header.jpeg)
        bytes += header.jpeg->progressive ? stored * 3 : 0;
    else if (header.format != QLatin1String("png"))
        bytes += stored * 8;
    return bytes;
}

// Lets one large picture at a time through.
class TakingTurns final : public RowSource {
public:
    TakingTurns(std::unique_lock<std::mutex> turn, std::unique_ptr<RowSource> source)
        : RowSource(source->size(), source->kind())
        , m_turn(std::move(turn))
        , m_source(std::move(source))
    {
    }
    bool next(std::uint8_t* row) override { return m_source->next(row); }
    [[nodiscard]] bool damaged() const override { return m_source->damaged(); }

private:
    std::unique_lock<std::mutex> m_turn; // released after the source is gone
    std::unique_ptr<RowSource> m_source;
};

SizePx scaledBy(SizePx size, double scale)
{
    return {std::clamp(int(std::lround(size.width * scale)), 1, size.width),
        std::clamp(int(std::lround(size.height * scale)), 1, size.height)};
}

} // namespace

Error about(const QString& path, Error error)
{
    error.subject = QFileInfo(path).fileName();
    return error;
}

Result<OpenedPicture> openPicture(const QString& path)
{
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return about(path, {ErrorCode::CannotRead, {}, Says::tr("cannot be opened")});
    if (file.size() > kMostFileBytes)
        return about(path, {ErrorCode::Refused, {}, Says::tr("is too large a file")});
    OpenedPicture picture;
    picture.file = file.readAll();
    if (file.error() != QFileDevice::NoError)
        return about(path, {ErrorCode::CannotRead, {}, Says::tr("cannot be read")});
    const QByteArrayView start =
        QByteArrayView(picture.file).first(std::min<qsizetype>(picture.file.size(), 512));
    const QString format = pictureFormat(start);
    if (format.isEmpty())
        return about(path, {ErrorCode::Refused, {}, whyNotAPicture(start)});
    auto header = readPictureHeader(format, picture.file);
    if (!header)
        return about(path, header.error());
    picture.header = *std::move(header);
    if (const auto size = checkSize(picture.header, picture.file.size()); !size)
        return about(path, size.error());
    return picture;
}

RectPx visiblePixels(const RectFraction& visible, SizePx upright)
{
    // A fraction that names a pixel edge must find it again in spite of rounding.
    constexpr double hair = 1e-6;
    const auto span = [](double from, double length, int whole, int& start, int& count) {
        start = std::clamp(int(std::ceil(from * whole - hair)), 0, whole - 1);
        const int end = int(std::floor((from + length) * whole + hair));
        count = std::clamp(end, start + 1, whole) - start;
    };
    RectPx part;
    span(visible.x, visible.width, upright.width, part.x, part.width);
    span(visible.y, visible.height, upright.height, part.y, part.height);
    return part;
}

SizePx fitted(SizePx size, SizePx within)
{
    return scaledBy(size,
        std::min({1.0, double(within.width) / size.width, double(within.height) / size.height}));
}

SizePx covering(SizePx size, SizePx target)
{
    return scaledBy(size,
        std::min(
            1.0, std::max(double(target.width) / size.width, double(target.height) / size.height)));
}

Result<std::unique_ptr<RowSource>> render(
    const OpenedPicture& picture, const RenderRequest& request)
{
    std::unique_lock<std::mutex> turn;
    if (bytesHeld(picture.header, request) > kLargeBytes) {
        static std::mutex s_large;
        turn = std::unique_lock(s_large);
    }
    const Turning turning(request.orientation);
    RowRequest rows;
    rows.part = turning.stored(request.part, picture.header.stored);
    rows.needed = turning.stored(request.size);
    rows.yCbCr = request.yCbCr && isAlreadySRgb(picture.header.icc, PixelForm::YCbCr);
    auto source = openRows(picture.file, picture.header, rows);
    if (!source)
        return source.error();
    auto small = resampled(*std::move(source), rows.needed);
    auto upright = turned(inSRgb(std::move(small), picture.header.icc), request.orientation);
    if (!upright || !turn.owns_lock())
        return upright;
    return std::unique_ptr<RowSource>(
        std::make_unique<TakingTurns>(std::move(turn), *std::move(upright)));
}

Result<QImage> toImage(RowSource& source)
{
    const bool grey = source.kind() == PixelForm::Grey;
    QImage image(source.size().width,
        source.size().height,
        grey ? QImage::Format_Grayscale8 : QImage::Format_RGB32);
    if (image.isNull())
        return Error{ErrorCode::Refused, {}, Says::tr("is too large for the memory")};
    std::vector<std::uint8_t> row(source.rowBytes());
    for (int y = 0; y < image.height(); ++y) {
        if (!source.next(row.data()))
            return Error{ErrorCode::Damaged, {}, Says::tr("is damaged and cannot be read")};
        if (grey) {
            std::copy(row.begin(), row.end(), image.scanLine(y));
            continue;
        }
        auto* to = reinterpret_cast<QRgb*>(image.scanLine(y));
        for (std::size_t at = 0; at < row.size(); at += 3)
            *to++ = qRgb(row[at], row[at + 1], row[at + 2]);
    }
    return image;
}

} // namespace wainscot
