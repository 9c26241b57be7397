#include "core/media/chunks.h"

#include "core/base/says.h"
#include "core/media/bytes.h"

#include <zlib.h>

namespace wainscot {

namespace {

constexpr qsizetype kMostProfileBytes = 4 * 1024 * 1024; // real profiles end near 3 MB

Error damaged()
{
    return {ErrorCode::Damaged, {}, Says::tr("is damaged: its beginning cannot be read")};
}

// The profile in an iCCP chunk: a name, a zero, the method 0, then zlib data.
QByteArray inflatedProfile(QByteArrayView chunk)
{
    const qsizetype nameEnd = chunk.indexOf('\0');
    if (nameEnd < 0 || nameEnd + 2 >= chunk.size())
        return {};
    const QByteArrayView packed = chunk.sliced(nameEnd + 2);
    QByteArray profile(kMostProfileBytes, Qt::Uninitialized);
    auto length = static_cast<uLongf>(profile.size());
    const int rc = uncompress(reinterpret_cast<Bytef*>(profile.data()),
        &length,
        reinterpret_cast<const Bytef*>(packed.data()),
        static_cast<uLong>(packed.size()));
    if (rc != Z_OK)
        return {};
    profile.truncate(static_cast<qsizetype>(length));
    profile.squeeze();
    return profile;
}

bool checksumHolds(const Bytes& bytes, qsizetype at, qsizetype length)
{
    const QByteArrayView covered = bytes.part(at + 4, length + 4);
    const uLong sum =
        crc32(0, reinterpret_cast<const Bytef*>(covered.data()), static_cast<uInt>(covered.size()));
    return bytes.has(at + 8 + length, 4) && bytes.u32(at + 8 + length) == sum;
}

SizePx webpFrameSize(const Bytes& bytes, QByteArrayView kind, qsizetype body)
{
    if (kind == "VP8X") {
        const auto u24 = [&](qsizetype at) { return int(bytes.u32(at) & 0xffffff); };
        return {u24(body + 4) + 1, u24(body + 7) + 1};
    }
    if (kind == "VP8L") {
        const std::uint32_t packed = bytes.u32(body + 1);
        return {int(packed & 0x3fff) + 1, int(packed >> 14 & 0x3fff) + 1};
    }
    return {bytes.u16(body + 6) & 0x3fff, bytes.u16(body + 8) & 0x3fff};
}

} // namespace

Result<PictureHeader> readPngHeader(const QByteArray& file)
{
    const Bytes bytes(file);
    if (!bytes.says(12, "IHDR") || bytes.u32(8) != 13 || !bytes.has(8, 25))
        return damaged();
    PictureHeader header;
    header.format = QStringLiteral("png");
    const std::uint32_t width = bytes.u32(16);
    const std::uint32_t height = bytes.u32(20);
    if (width == 0 || height == 0 || (width | height) > 0x7fffffff)
        return damaged();
    header.stored = {static_cast<int>(width), static_cast<int>(height)};
    header.grey = (bytes.u8(25) & 2) == 0; // colour types 0 and 4
    header.complete = false;
    for (qsizetype at = 8; bytes.has(at, 12);) {
        const qsizetype length = bytes.u32(at);
        if (length > 0x7fffffff || !checksumHolds(bytes, at, length))
            break;
        const QByteArrayView body = bytes.part(at + 8, length);
        if (bytes.says(at + 4, "eXIf"))
            header.exif = body.toByteArray();
        else if (bytes.says(at + 4, "iCCP"))
            header.icc = inflatedProfile(body);
        else if (bytes.says(at + 4, "acTL"))
            header.pictures = static_cast<int>(std::min<std::uint32_t>(bytes.u32(at + 8), 1000));
        else if (bytes.says(at + 4, "IEND"))
            header.complete = true;
        at += 12 + length;
    }
    return header;
}

Result<PictureHeader> readWebpHeader(const QByteArray& file)
{
    const Bytes bytes(file, ByteOrder::Little);
    PictureHeader header;
    header.format = QStringLiteral("webp");
    header.complete = bytes.has(8, bytes.u32(4));
    int frames = 0;
    for (qsizetype at = 12; bytes.has(at, 8);) {
        const QByteArrayView kind = bytes.part(at, 4);
        const qsizetype length = bytes.u32(at + 4);
        const QByteArrayView body = bytes.part(at + 8, length);
        if (at == 12)
            header.stored = webpFrameSize(bytes, kind, at + 8);
        if (kind == "EXIF") {
            // Some writers put the JPEG prefix in front of the tag tree.
            const bool prefixed = body.startsWith(QByteArrayView("Exif\0\0", 6));
            header.exif = (prefixed ? body.sliced(6) : body).toByteArray();
        } else if (kind == "ICCP") {
            header.icc = body.toByteArray();
        } else if (kind == "ANMF") {
            ++frames;
        }
        at += 8 + length + length % 2;
    }
    header.pictures = std::max(1, frames);
    if (header.stored.isEmpty())
        return damaged();
    return header;
}

} // namespace wainscot
