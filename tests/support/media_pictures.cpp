#include "tests/support/media_pictures.h"

#include <QBuffer>
#include <QFile>
#include <QImageWriter>
#include <QPainter>
#include <QProcess>
#include <QtEndian>

#include <algorithm>
#include <cstdio>
#include <random>
#include <vector>

#include <zlib.h>

namespace wainscot::test {

namespace {

// One tile of summed octaves that repeats without a seam.
constexpr int kTile = 512;

std::vector<float> textureTile(std::mt19937& random)
{
    std::vector<float> tile(std::size_t(kTile) * kTile, 0.0F);
    for (int cell = 256; cell >= 1; cell /= 2) {
        const int cells = kTile / cell;
        std::vector<float> knots(std::size_t(cells) * std::size_t(cells));
        for (float& knot : knots)
            knot = float(random() % 2001) / 1000.0F - 1.0F;
        const float strength = cell == 1 ? 9.0F : 4.0F * std::min(16.0F, float(cell)) / 4.0F;
        for (int y = 0; y < kTile; ++y) {
            for (int x = 0; x < kTile; ++x) {
                const auto knot = [&](int kx, int ky) {
                    return knots[std::size_t(ky % cells) * std::size_t(cells)
                        + std::size_t(kx % cells)];
                };
                const float fx = float(x % cell) / float(cell);
                const float fy = float(y % cell) / float(cell);
                const int kx = x / cell;
                const int ky = y / cell;
                const float top = knot(kx, ky) * (1 - fx) + knot(kx + 1, ky) * fx;
                const float low = knot(kx, ky + 1) * (1 - fx) + knot(kx + 1, ky + 1) * fx;
                tile[std::size_t(y) * kTile + std::size_t(x)] +=
                    strength * (top * (1 - fy) + low * fy);
            }
        }
    }
    return tile;
}

class TreeWriter {
public:
    // Entries must come in the order of their tags.
    void text(quint16 tag, const QByteArray& value) { entry(tag, 2, value + '\0'); }
    void number16(quint16 tag, quint16 value) { entry(tag, 3, le(value) + QByteArray(2, '\0'), 1); }
    void number32(quint16 tag, quint32 value) { entry(tag, 4, le(value), 1); }
    [[nodiscard]] qsizetype size() const
    {
        return 2 + 12 * m_entries.size() / 12 + 4 + m_values.size();
    }
    // `at` is where this directory begins in the tree.
    [[nodiscard]] QByteArray bytes(quint32 at) const
    {
        QByteArray out = le(quint16(m_entries.size() / 12)) + m_entries + le(quint32(0));
        const auto values = quint32(at + quint32(out.size()));
        for (const auto& [place, offset] : m_far)
            out.replace(place, 4, le(quint32(values + offset)));
        return out + m_values;
    }
    template <class Number> static QByteArray le(Number value)
    {
        QByteArray out(sizeof value, '\0');
        qToLittleEndian(value, out.data());
        return out;
    }

private:
    void entry(quint16 tag, quint16 type, const QByteArray& value, int count = -1)
    {
        m_entries += le(tag) + le(type) + le(quint32(count < 0 ? value.size() : count));
        if (value.size() <= 4) {
            m_entries += value.leftJustified(4, '\0');
            return;
        }
        m_far.push_back({2 + m_entries.size(), quint32(m_values.size())});
        m_entries += QByteArray(4, '\0');
        m_values += value;
        if (m_values.size() % 2 != 0)
            m_values += '\0';
    }

    QByteArray m_entries;
    QByteArray m_values;
    std::vector<std::pair<qsizetype, quint32>> m_far;
};

} // namespace

QImage noisePhoto(int width, int height, std::uint32_t seed)
{
    std::mt19937 random(seed);
    const std::vector<float> light = textureTile(random);
    const std::vector<float> hue = textureTile(random);
    QImage image(width, height, QImage::Format_RGB888);
    for (int y = 0; y < height; ++y) {
        uchar* to = image.scanLine(y);
        // Tiles are shifted against each other, so that nothing repeats in a straight line.
        const int shift = y / kTile * 173;
        for (int x = 0; x < width; ++x) {
            const auto at = std::size_t(y % kTile) * kTile + std::size_t((x + shift) % kTile);
            const float l = 128 + 40.0F * float(x) / float(width) + light[at];
            const float h = hue[at] * 0.4F;
            *to++ = uchar(std::clamp(l + h, 0.0F, 255.0F));
            *to++ = uchar(std::clamp(l, 0.0F, 255.0F));
            *to++ = uchar(std::clamp(l - h, 0.0F, 255.0F));
        }
    }
    return image;
}

QImage fourQuarters(int width, int height)
{
    QImage image(width, height, QImage::Format_RGB32);
    QPainter painter(&image);
    const int w = width / 2;
    const int h = height / 2;
    painter.fillRect(0, 0, w, h, QColor(220, 30, 30));
    painter.fillRect(w, 0, w, h, QColor(30, 160, 40));
    painter.fillRect(0, h, w, h, QColor(30, 50, 210));
    painter.fillRect(w, h, w, h, QColor(230, 220, 40));
    return image;
}

QByteArray exifTree(const Tags& tags)
{
    // TIFF 6.0: header, first directory, then the EXIF and GPS directories it points to.
    const auto build = [&](quint32 exifAt, quint32 gpsAt) {
        TreeWriter first;
        if (!tags.maker.isEmpty())
            first.text(271, tags.maker);
        first.number16(274, quint16(tags.orientation));
        first.number32(34665, exifAt);
        first.number32(34853, gpsAt);
        return first.bytes(8);
    };
    TreeWriter exif;
    if (!tags.taken.isEmpty())
        exif.text(0x9003, tags.taken);
    if (!tags.offset.isEmpty())
        exif.text(0x9011, tags.offset);
    TreeWriter gps;
    gps.text(1, "N");
    gps.text(29, "2026:03:14");
    const auto exifAt = quint32(8 + build(0, 0).size());
    const QByteArray exifBytes = exif.bytes(exifAt);
    const auto gpsAt = quint32(exifAt + quint32(exifBytes.size()));
    return QByteArray("II*\0\x08\0\0\0", 8) + build(exifAt, gpsAt) + exifBytes + gps.bytes(gpsAt);
}

QByteArray jpegOf(const QImage& image, int quality)
{
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QImageWriter writer(&buffer, "jpeg");
    writer.setQuality(quality);
    writer.write(image);
    return bytes;
}

QByteArray pngOf(const QImage& image)
{
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    image.save(&buffer, "PNG");
    return bytes;
}

QByteArray withSegment(const QByteArray& jpeg, int marker, const QByteArray& body)
{
    QByteArray segment(4, '\0');
    segment[0] = '\xff';
    segment[1] = char(marker);
    qToBigEndian(quint16(body.size() + 2), segment.data() + 2);
    return jpeg.left(2) + segment + body + jpeg.mid(2);
}

QByteArray withExif(const QByteArray& jpeg, const QByteArray& tree)
{
    return withSegment(jpeg, 0xe1, QByteArray("Exif\0\0", 6) + tree);
}

QByteArray withProfile(const QByteArray& jpeg, const QByteArray& icc)
{
    constexpr qsizetype piece = 65000;
    const auto count = (icc.size() + piece - 1) / piece;
    QByteArray out = jpeg;
    for (qsizetype i = count; i-- > 0;) {
        const QByteArray head = QByteArray("ICC_PROFILE\0", 12) + char(i + 1) + char(count);
        out = withSegment(out, 0xe2, head + icc.mid(i * piece, piece));
    }
    return out;
}

QByteArray pngChunk(const QByteArray& kind, const QByteArray& body)
{
    QByteArray length(4, '\0');
    qToBigEndian(quint32(body.size()), length.data());
    const QByteArray covered = kind + body;
    QByteArray sum(4, '\0');
    qToBigEndian(quint32(crc32(
                     0, reinterpret_cast<const Bytef*>(covered.constData()), uInt(covered.size()))),
        sum.data());
    return length + covered + sum;
}

QByteArray withChunk(const QByteArray& png, const QByteArray& kind, const QByteArray& body)
{
    constexpr qsizetype headerEnd = 8 + 25;
    return png.left(headerEnd) + pngChunk(kind, body) + png.mid(headerEnd);
}

QString writeFile(const QString& path, const QByteArray& bytes)
{
    QFile file(path);
    if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size())
        std::fprintf(stderr, "cannot write %s\n", qPrintable(path));
    return path;
}

QByteArray readFile(const QString& path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

bool run(const QString& program, const QStringList& arguments)
{
    QProcess process;
    process.start(program, arguments);
    const bool ended = process.waitForFinished(120'000);
    if (ended && process.exitStatus() == QProcess::NormalExit && process.exitCode() == 0)
        return true;
    std::fprintf(
        stderr, "%s failed: %s\n", qPrintable(program), process.readAllStandardError().constData());
    return false;
}

QByteArray outputOf(const QString& program, const QStringList& arguments)
{
    QProcess process;
    process.start(program, arguments);
    process.waitForFinished(120'000);
    return process.readAllStandardOutput();
}

} // namespace wainscot::test
