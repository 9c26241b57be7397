// Picture files for tests, made on the spot: photos of noise, tags, segments and chunks by hand.
#pragma once

#include <QByteArray>
#include <QImage>
#include <QString>
#include <QStringList>

#include <cstdint>

namespace wainscot::test {

// As hard to compress as a camera's picture (1/f texture with grain), quick to make at any size.
QImage noisePhoto(int width, int height, std::uint32_t seed);

// Four plain quarters, top left to bottom right: red, green, blue, yellow. Sizes divide by 32, so
// that JPEG keeps the edges.
QImage fourQuarters(int width = 128, int height = 64);

// EXIF's tree of tags, little-endian: orientation, DateTimeOriginal, OffsetTimeOriginal, a camera
// maker and a place by GPS.
struct Tags {
    int orientation = 1;
    QByteArray taken; // "2026:03:14 09:26:53"
    QByteArray offset; // "+01:00"
    QByteArray maker;
};
QByteArray exifTree(const Tags& tags);

QByteArray jpegOf(const QImage& image, int quality = 90);
QByteArray pngOf(const QImage& image);
// The file with a segment put behind its start, e.g. 0xfe for a comment.
QByteArray withSegment(const QByteArray& jpeg, int marker, const QByteArray& body);
QByteArray withExif(const QByteArray& jpeg, const QByteArray& tree);
QByteArray withProfile(const QByteArray& jpeg, const QByteArray& icc);
// A chunk of any PNG, with its checksum, and the file with one put behind its header.
QByteArray pngChunk(const QByteArray& kind, const QByteArray& body);
QByteArray withChunk(const QByteArray& png, const QByteArray& kind, const QByteArray& body);

QString writeFile(const QString& path, const QByteArray& bytes);
QByteArray readFile(const QString& path);

// Runs an independent program; false (and what it said on standard error) when it fails.
bool run(const QString& program, const QStringList& arguments);
// What the program printed.
QByteArray outputOf(const QString& program, const QStringList& arguments);

} // namespace wainscot::test
