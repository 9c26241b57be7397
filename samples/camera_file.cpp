#include "samples/camera_file.h"

#include "core/base/commit_file.h"

#include <QBuffer>
#include <QFileInfo>
#include <QImageWriter>
#include <QSaveFile>
#include <QTransform>
#include <QtEndian>

#include <vector>

namespace wainscot::samples {

namespace {

// Tags and types of EXIF 2.31 and TIFF 6.0.
constexpr quint16 kOrientation = 0x0112;
constexpr quint16 kExifIfd = 0x8769;
constexpr quint16 kDateTimeOriginal = 0x9003;
constexpr quint16 kOffsetTimeOriginal = 0x9011;
constexpr quint16 kMakerNote = 0x927c;
constexpr quint16 kAscii = 2;
constexpr quint16 kShort = 3;
constexpr quint16 kLong = 4;
constexpr quint16 kUndefined = 7;

struct Field {
    quint16 tag = 0;
    quint16 type = 0;
    quint32 count = 0;
    QByteArray bytes; // of the value, little endian
};

template <class T> QByteArray littleEndian(T value)
{
    QByteArray bytes(sizeof(T), '\0');
    qToLittleEndian(value, bytes.data());
    return bytes;
}

Field text(quint16 tag, QByteArray value)
{
    value.append('\0');
    return {tag, kAscii, static_cast<quint32>(value.size()), value};
}

// An image file directory that begins at `offset` of the TIFF data; long values follow it.
QByteArray directory(const std::vector<Field>& fields, quint32 offset)
{
    QByteArray table = littleEndian(static_cast<quint16>(fields.size()));
    QByteArray values;
    const quint32 valuesAt = offset + 2 + 12 * static_cast<quint32>(fields.size()) + 4;
    for (const Field& field : fields) {
        table += littleEndian(field.tag) + littleEndian(field.type) + littleEndian(field.count);
        if (field.bytes.size() <= 4) {
            table += field.bytes.leftJustified(4, '\0');
        } else {
            table += littleEndian(valuesAt + static_cast<quint32>(values.size()));
            values += field.bytes;
            if (values.size() % 2 != 0)
                values.append('\0');
        }
    }
    return table + littleEndian(quint32(0)) + values;
}

QByteArray offsetText(int minutes)
{
    const int size = std::abs(minutes);
    return QStringLiteral("%1%2:%3")
        .arg(minutes < 0 ? QLatin1Char('-') : QLatin1Char('+'))
        .arg(size / 60, 2, 10, QLatin1Char('0'))
        .arg(size % 60, 2, 10, QLatin1Char('0'))
        .toLatin1();
}

std::vector<Field> exifFields(const CameraNotes& notes)
{
    std::vector<Field> fields;
    if (notes.taken) {
        fields.push_back(text(kDateTimeOriginal,
            notes.taken->toString(QStringLiteral("yyyy:MM:dd HH:mm:ss")).toLatin1()));
    }
    if (notes.offsetMinutes)
        fields.push_back(text(kOffsetTimeOriginal, offsetText(*notes.offsetMinutes)));
    if (notes.makerNote) {
        const QByteArray note = "Invented camera 7, set by the sample class";
        fields.push_back({kMakerNote, kUndefined, static_cast<quint32>(note.size()), note});
    }
    return fields;
}

// How upright pixels are turned for storage, so that the orientation turns them back.
QTransform storedFromUpright(int orientation)
{
    QTransform turn;
    if (orientation == 6)
        turn.rotate(-90);
    else if (orientation == 8)
        turn.rotate(90);
    else if (orientation == 3)
        turn.rotate(180);
    return turn;
}

QByteArray withExif(const QByteArray& jpeg, const CameraNotes& notes)
{
    const QByteArray block = exifBlock(notes);
    QByteArray segment("\xff\xe1", 2);
    const auto length = static_cast<quint16>(block.size() + 2);
    segment.append(static_cast<char>(length >> 8)).append(static_cast<char>(length & 0xff));
    return jpeg.left(2) + segment + block + jpeg.mid(2);
}

} // namespace

QByteArray exifBlock(const CameraNotes& notes)
{
    constexpr quint32 firstAt = 8;
    const auto orientation = static_cast<quint16>(notes.orientation);
    std::vector<Field> first{{kOrientation, kShort, 1, littleEndian(orientation)},
        {kExifIfd, kLong, 1, QByteArray(4, '\0')}};
    const auto secondAt = firstAt + static_cast<quint32>(directory(first, firstAt).size());
    first[1].bytes = littleEndian(secondAt);
    QByteArray tiff("II*\0", 4);
    tiff +=
        littleEndian(firstAt) + directory(first, firstAt) + directory(exifFields(notes), secondAt);
    return QByteArray("Exif\0\0", 6) + tiff;
}

Result<> writeCameraFile(const QString& path, const QImage& upright, const CameraNotes& notes)
{
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    const QByteArray format = QFileInfo(path).suffix().toLower().toLatin1();
    QImageWriter writer(&buffer, format == "tif" ? QByteArray("tiff") : format);
    if (format == "tif")
        writer.setCompression(1); // LZW
    else if (format == "png")
        writer.setCompression(50); // of 100; the size hardly falls beyond, the time doubles
    else
        writer.setQuality(90);
    const QTransform turn = storedFromUpright(notes.orientation);
    const bool sideways = format == "jpg" && !turn.isIdentity();
    if (!writer.write(sideways ? upright.transformed(turn) : upright))
        return Error{ErrorCode::CannotWrite, path, writer.errorString()};
    if (format == "jpg" && (notes.taken || notes.orientation != 1))
        bytes = withExif(bytes, notes);
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size() || !commitWhole(file))
        return Error{ErrorCode::CannotWrite, path, file.errorString()};
    return Done{};
}

} // namespace wainscot::samples
