#include "core/media/jpeg_segments.h"

#include "core/media/bytes.h"

#include <algorithm>
#include <cstring>
#include <map>
#include <vector>

namespace wainscot {

namespace {

constexpr int kEndOfImage = 0xd9;
constexpr int kStartOfScan = 0xda;
constexpr int kApp0 = 0xe0;
constexpr int kApp1 = 0xe1;
constexpr int kApp2 = 0xe2;
constexpr int kAdobe = 0xee;
constexpr int kApp15 = 0xef;
constexpr int kComment = 0xfe;

struct Segment {
    int marker = 0;
    qsizetype start = 0; // of the marker
    qsizetype end = 0; // past the segment, before any scan data
    QByteArrayView body; // without marker and length
};

bool standsAlone(int marker)
{
    return marker == 0x01 || (marker >= 0xd0 && marker <= kEndOfImage);
}

bool isFrame(int marker)
{
    return marker >= 0xc0 && marker <= 0xcf && marker != 0xc4 && marker != 0xc8 && marker != 0xcc;
}

// The segment at or after `at`; nothing when the file ends or its structure breaks.
std::optional<Segment> segmentAt(const Bytes& file, qsizetype at)
{
    if (file.u8(at) != 0xff)
        return std::nullopt;
    while (file.u8(at + 1) == 0xff) // fill bytes are allowed before any marker
        ++at;
    Segment segment;
    segment.marker = file.u8(at + 1);
    segment.start = at;
    if (segment.marker == 0 || !file.has(at, 2))
        return std::nullopt;
    if (standsAlone(segment.marker)) {
        segment.end = at + 2;
        return segment;
    }
    const qsizetype length = file.u16(at + 2);
    if (length < 2 || !file.has(at + 2, length))
        return std::nullopt;
    segment.end = at + 2 + length;
    segment.body = file.part(at + 4, length - 2);
    return segment;
}

// Where compressed data that starts at `at` stops: at the next marker that is not a restart.
qsizetype endOfScan(QByteArrayView file, qsizetype at)
{
    while (true) {
        at = file.indexOf('\xff', at);
        if (at < 0 || at + 1 >= file.size())
            return file.size();
        const int next = static_cast<unsigned char>(file[at + 1]);
        if (next != 0 && next != 0xff && (next < 0xd0 || next > 0xd7))
            return at;
        ++at;
    }
}

void readFrame(const Segment& segment, JpegHeader& header)
{
    const Bytes body(segment.body);
    header.bits = body.u8(0);
    header.size = {body.u16(3), body.u16(1)};
    header.components = body.u8(5);
    header.ordinary = segment.marker <= 0xc2;
    header.progressive = (segment.marker & 3) == 2;
    if (header.components >= 3)
        header.chromaHalved = body.u8(7) >> 4 > body.u8(10) >> 4;
}

// A stretch of a file that stays.
struct Kept {
    qsizetype start = 0;
    qsizetype length = 0;
    bool isJfif = false; // version and density stay, a thumbnail inside goes
};
constexpr qsizetype kJfifLength = 18; // marker, length, name, version, density, no thumbnail

bool mayStay(const Segment& segment)
{
    if (segment.marker == kComment)
        return false;
    if (segment.marker < kApp0 || segment.marker > kApp15)
        return true;
    // Readers tell RGB from YCbCr by Adobe's segment; it names no one.
    return segment.marker == kAdobe && segment.body.startsWith("Adobe");
}

// Nothing when the file does not run through to its end of image.
std::optional<std::vector<Kept>> keptOf(QByteArrayView file)
{
    const Bytes bytes(file);
    std::vector<Kept> kept;
    const auto keep = [&](qsizetype start, qsizetype end) {
        if (!kept.empty() && !kept.back().isJfif && kept.back().start + kept.back().length == start)
            kept.back().length += end - start;
        else
            kept.push_back({start, end - start});
    };
    for (auto segment = segmentAt(bytes, 0); segment;) {
        const bool jfif =
            segment->marker == kApp0 && segment->body.startsWith(QByteArrayView("JFIF\0", 5));
        if (jfif && segment->end - segment->start >= kJfifLength)
            kept.push_back({segment->start, kJfifLength, true});
        else if (mayStay(*segment))
            keep(segment->start, segment->end);
        if (segment->marker == kEndOfImage)
            return kept;
        qsizetype next = segment->end;
        if (segment->marker == kStartOfScan) {
            next = endOfScan(file, segment->end);
            keep(segment->end, next);
        }
        segment = segmentAt(bytes, next);
    }
    return std::nullopt;
}

} // namespace

std::optional<JpegHeader> readJpegHeader(QByteArrayView file)
{
    const Bytes bytes(file);
    JpegHeader header;
    std::map<int, QByteArrayView> icc; // in pieces of up to 64 KB, by number
    for (auto segment = segmentAt(bytes, 0); segment; segment = segmentAt(bytes, segment->end)) {
        if (isFrame(segment->marker) && header.components == 0)
            readFrame(*segment, header);
        else if (segment->marker == kApp1 && segment->body.startsWith(QByteArrayView("Exif\0\0", 6))
            && header.exif.isEmpty())
            header.exif = segment->body.sliced(6).toByteArray();
        else if (segment->marker == kApp2 && segment->body.size() > 14
            && segment->body.startsWith(QByteArrayView("ICC_PROFILE\0", 12)))
            icc[Bytes(segment->body).u8(12)] = segment->body.sliced(14);
        else if (segment->marker == kAdobe && segment->body.startsWith("Adobe"))
            header.adobe = true;
        header.hasScan = segment->marker == kStartOfScan;
        if (header.hasScan || segment->marker == kEndOfImage)
            break;
    }
    for (const auto& [number, piece] : icc)
        header.icc.append(piece);
    if (header.components == 0)
        return std::nullopt;
    return header;
}

bool stripMetadata(QByteArray& file)
{
    const auto kept = keptOf(file);
    if (!kept)
        return false;
    // Forwards in place: what is kept never grows, so nothing still to be moved is written over.
    char* const bytes = file.data();
    qsizetype end = 0;
    for (const Kept& one : *kept) {
        std::memmove(bytes + end, bytes + one.start, static_cast<std::size_t>(one.length));
        if (one.isJfif) { // without the thumbnail inside
            bytes[end + 2] = 0;
            bytes[end + 3] = 16;
        }
        end += one.length;
        if (one.isJfif)
            std::memset(bytes + end - 2, 0, 2);
    }
    file.truncate(end);
    return true;
}

} // namespace wainscot
