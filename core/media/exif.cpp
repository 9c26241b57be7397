#include "core/media/exif.h"

#include "core/media/bytes.h"

#include <algorithm>

namespace wainscot {

namespace {

// Tag numbers from TIFF 6.0 and CIPA DC-008.
enum Tag : std::uint16_t {
    ImageWidth = 256,
    ImageLength = 257,
    Photometric = 262,
    Orientation = 274,
    SamplesPerPixel = 277,
    IccProfile = 34675,
    ExifDirectory = 34665,
    DateTimeOriginal = 0x9003,
    DateTimeDigitized = 0x9004,
    OffsetTimeOriginal = 0x9011,
    OffsetTimeDigitized = 0x9012,
};
constexpr int kPhotometricSeparated = 5; // CMYK
constexpr int kMostDirectories = 100; // a chain that bites its own tail must end

class TagTree {
public:
    explicit TagTree(QByteArrayView data)
        : m_bytes(data, data.startsWith("II") ? ByteOrder::Little : ByteOrder::Big)
    {
        const bool marked = data.startsWith("II") || data.startsWith("MM");
        m_first = marked && m_bytes.u16(2) == 42 ? m_bytes.u32(4) : 0;
    }

    [[nodiscard]] qsizetype first() const { return m_first; } // 0 = no tree
    [[nodiscard]] qsizetype next(qsizetype directory) const
    {
        return m_bytes.u32(directory + 2 + 12 * qsizetype(m_bytes.u16(directory)));
    }
    [[nodiscard]] std::optional<std::uint32_t> number(qsizetype directory, Tag tag) const
    {
        const qsizetype at = find(directory, tag);
        if (at == 0)
            return std::nullopt;
        const bool isShort = m_bytes.u16(at + 2) == 3;
        return isShort ? m_bytes.u16(at + 8) : m_bytes.u32(at + 8);
    }
    // Text and other runs of single bytes.
    [[nodiscard]] QByteArrayView bytes(qsizetype directory, Tag tag) const
    {
        const qsizetype at = find(directory, tag);
        if (at == 0)
            return {};
        const qsizetype count = m_bytes.u32(at + 4);
        return m_bytes.part(count <= 4 ? at + 8 : qsizetype(m_bytes.u32(at + 8)), count);
    }

private:
    [[nodiscard]] qsizetype find(qsizetype directory, Tag tag) const
    {
        const int count = m_bytes.u16(directory);
        for (int i = 0; i < count; ++i) {
            const qsizetype at = directory + 2 + 12 * qsizetype(i);
            if (!m_bytes.has(at, 12))
                return 0;
            if (m_bytes.u16(at) == tag)
                return at;
        }
        return 0;
    }

    Bytes m_bytes;
    qsizetype m_first = 0;
};

std::optional<int> offsetMinutes(QByteArrayView text)
{
    // "+01:00"; "Z" is seen in the wild for "+00:00".
    const QByteArray trimmed =
        QByteArray(text.data(), qstrnlen(text.data(), text.size())).trimmed();
    if (trimmed == "Z")
        return 0;
    if (trimmed.size() != 6 || trimmed[3] != ':' || (trimmed[0] != '+' && trimmed[0] != '-'))
        return std::nullopt;
    bool hoursOk = false;
    bool minutesOk = false;
    const int hours = trimmed.mid(1, 2).toInt(&hoursOk);
    const int minutes = trimmed.mid(4, 2).toInt(&minutesOk);
    if (!hoursOk || !minutesOk || hours > 14 || minutes > 59)
        return std::nullopt;
    return (trimmed[0] == '-' ? -1 : 1) * (hours * 60 + minutes);
}

} // namespace

std::optional<CaptureTime> captureTime(QByteArrayView time, QByteArrayView offset)
{
    const QString text = QString::fromLatin1(time.data(), std::min<qsizetype>(time.size(), 19));
    const QDate date = QDate::fromString(text.left(10), QStringLiteral("yyyy:MM:dd"));
    const QTime clock = QTime::fromString(text.mid(11), QStringLiteral("HH:mm:ss"));
    if (!date.isValid() || !clock.isValid())
        return std::nullopt;
    return CaptureTime{QDateTime(date, clock, Qt::LocalTime), offsetMinutes(offset)};
}

ExifFacts readExif(QByteArrayView data)
{
    ExifFacts facts;
    const TagTree tree(data);
    if (tree.first() == 0)
        return facts;
    const std::uint32_t orientation = tree.number(tree.first(), Orientation).value_or(1);
    facts.orientation = orientation >= 1 && orientation <= 8 ? static_cast<int>(orientation) : 1;
    const qsizetype exif = tree.number(tree.first(), ExifDirectory).value_or(0);
    if (exif == 0)
        return facts;
    facts.captured =
        captureTime(tree.bytes(exif, DateTimeOriginal), tree.bytes(exif, OffsetTimeOriginal));
    if (!facts.captured) {
        facts.captured =
            captureTime(tree.bytes(exif, DateTimeDigitized), tree.bytes(exif, OffsetTimeDigitized));
    }
    return facts;
}

std::optional<TiffHeader> readTiffHeader(QByteArrayView file)
{
    const TagTree tree(file);
    const qsizetype first = tree.first();
    if (first == 0)
        return std::nullopt;
    TiffHeader header;
    const std::uint32_t width = tree.number(first, ImageWidth).value_or(0);
    const std::uint32_t height = tree.number(first, ImageLength).value_or(0);
    constexpr std::uint32_t most = 1 << 30;
    if (width == 0 || height == 0 || width > most || height > most)
        return std::nullopt;
    header.size = {static_cast<int>(width), static_cast<int>(height)};
    header.samples = static_cast<int>(tree.number(first, SamplesPerPixel).value_or(1) & 0xff);
    header.cmyk = tree.number(first, Photometric).value_or(0) == kPhotometricSeparated;
    header.icc = tree.bytes(first, IccProfile).toByteArray();
    for (qsizetype at = first; at != 0 && header.images < kMostDirectories; at = tree.next(at))
        ++header.images;
    return header;
}

} // namespace wainscot
