// A picture as rows of pixels that are asked for one by one, so that no stage ever holds a whole
// photo. Decoding, shrinking, colour and turning are each such a source, put behind one another.
#pragma once

#include "core/base/geometry.h"
#include "core/base/result.h"
#include "core/media/picture_header.h"

#include <cstdint>
#include <memory>
#include <vector>

class QImage;

namespace wainscot {

enum class PixelForm { Grey, Rgb, YCbCr, Cmyk }; // 8 bits a channel; CMYK: 255 = full ink

[[nodiscard]] constexpr int channelsOf(PixelForm kind)
{
    return kind == PixelForm::Grey ? 1 : kind == PixelForm::Cmyk ? 4 : 3;
}

class RowSource {
public:
    RowSource(SizePx size, PixelForm kind)
        : m_size(size)
        , m_kind(kind)
    {
    }
    RowSource(const RowSource&) = delete;
    RowSource& operator=(const RowSource&) = delete;
    virtual ~RowSource() = default;

    [[nodiscard]] SizePx size() const { return m_size; }
    [[nodiscard]] PixelForm kind() const { return m_kind; }
    [[nodiscard]] std::size_t rowBytes() const
    {
        return static_cast<std::size_t>(m_size.width) * std::size_t(channelsOf(m_kind));
    }
    // The next row from the top, rowBytes() long. False when it cannot be read.
    // REQUIRES: fewer than size().height rows were taken
    [[nodiscard]] virtual bool next(std::uint8_t* row) = 0;
    // Read so far, but not as it was written. Only JPEG can say so; others refuse.
    [[nodiscard]] virtual bool damaged() const { return false; }

private:
    SizePx m_size;
    PixelForm m_kind;
};

struct RectPx {
    int x = 0;
    int y = 0;
    int width = 0;
    int height = 0;
};

struct RowRequest {
    RectPx part; // of the stored picture; no pixel outside it reaches the rows
    SizePx needed; // what `part` will be shrunk to: the source may deliver anything from there up
    bool yCbCr = false; // JPEG's own colour space will do
};

// The stored pixels of the part. Errors: Damaged
Result<std::unique_ptr<RowSource>> openRows(
    const QByteArray& file, const PictureHeader& header, const RowRequest& request);
Result<std::unique_ptr<RowSource>> openJpegRows(const QByteArray& file, const RowRequest& request);
Result<std::unique_ptr<RowSource>> openPngRows(const QByteArray& file, const RowRequest& request);
// Any image, transparent parts on white.
[[nodiscard]] std::unique_ptr<RowSource> rowsOf(const QImage& image, const RectPx& part);
// Rows kept in memory, tightly packed.
[[nodiscard]] std::unique_ptr<RowSource> rowsOf(
    std::vector<std::uint8_t> pixels, SizePx size, PixelForm kind);

// Turned upright by EXIF `orientation`; where a turn needs all rows they are taken at once.
Result<std::unique_ptr<RowSource>> turned(std::unique_ptr<RowSource> source, int orientation);

// All remaining rows, tightly packed. Errors: Damaged
Result<std::vector<std::uint8_t>> takeAll(RowSource& source);

// Bytes of pixels that decoders of this process have produced so far: what refusing a file early
// saves, counted.
[[nodiscard]] std::uint64_t decodedBytes();
void countDecoded(std::size_t bytes);

} // namespace wainscot
