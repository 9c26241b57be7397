#include "core/media/rows.h"

#include "core/base/says.h"
#include "core/media/jpeg_guard.h"

#include <algorithm>

namespace wainscot {

namespace {

constexpr int kEighths = 8; // libjpeg-turbo decodes at 1/8 to 8/8 at a fraction of the work

// What libjpeg is asked for, in the pixels of the scaled picture.
struct ScaledPart {
    int eighths = kEighths;
    RectPx part;
};

struct Span {
    int from = 0;
    int count = 0;
};

// Blocks that straddle the edge mix both sides when scaled, so only blocks that lie wholly inside
// are used. At full scale pixels are cut exactly.
Span scaledSpan(int from, int count, int whole, int block, int eighths)
{
    if (eighths == kEighths)
        return {from, count};
    const int first = (from + block - 1) / block;
    const bool reachesEnd = from + count == whole;
    const int start = first * block * eighths / kEighths;
    const int end = reachesEnd ? (whole * eighths + kEighths - 1) / kEighths
                               : (from + count) / block * block * eighths / kEighths;
    return {start, end - start};
}

class JpegRows final : public RowSource {
public:
    struct Opened; // the decompressor on its way from header to rows

    JpegRows(std::unique_ptr<Opened> opened, SizePx size, PixelForm kind);
    ~JpegRows() override;
    bool next(std::uint8_t* row) override;
    [[nodiscard]] bool damaged() const override;

private:
    bool readLine();

    std::unique_ptr<Opened> m_opened;
    std::vector<std::uint8_t> m_line;
};

struct JpegRows::Opened {
    QByteArray file;
    JpegErrors errors;
    jpeg_decompress_struct info = {};
    int lead = 0; // pixels libjpeg delivers left of the part
    int lineWidth = 0;
    bool inverted = false;

    explicit Opened(QByteArray bytes)
        : file(std::move(bytes))
    {
        info.err = &errors.manager;
    }
    Opened(const Opened&) = delete;
    Opened& operator=(const Opened&) = delete;
    ~Opened() { jpeg_destroy_decompress(&info); }

    bool readHeader();
    bool chooseColour(bool yCbCr);
    [[nodiscard]] ScaledPart choosePart(const RowRequest& request) const;
    bool start(const ScaledPart& scaled);
};

bool JpegRows::Opened::readHeader()
{
    if (setjmp(errors.jump) != 0)
        return false;
    jpeg_create_decompress(&info);
    jpeg_mem_src(&info,
        reinterpret_cast<const unsigned char*>(file.constData()),
        static_cast<unsigned long>(file.size()));
    return jpeg_read_header(&info, TRUE) == JPEG_HEADER_OK;
}

bool JpegRows::Opened::chooseColour(bool yCbCr)
{
    switch (info.jpeg_color_space) {
    case JCS_GRAYSCALE:
        info.out_color_space = JCS_GRAYSCALE;
        return true;
    case JCS_YCbCr:
        info.out_color_space = yCbCr ? JCS_YCbCr : JCS_RGB;
        return true;
    case JCS_RGB:
        info.out_color_space = JCS_RGB;
        return true;
    case JCS_CMYK:
    case JCS_YCCK:
        info.out_color_space = JCS_CMYK;
        // Adobe's writers store CMYK as 255 = no ink, and mark that with their segment.
        inverted = info.saw_Adobe_marker != 0;
        return true;
    default:
        return false;
    }
}

ScaledPart JpegRows::Opened::choosePart(const RowRequest& request) const
{
    const RectPx& part = request.part;
    const int width = static_cast<int>(info.image_width);
    const int height = static_cast<int>(info.image_height);
    for (int eighths = 1; eighths < kEighths; ++eighths) {
        const Span across =
            scaledSpan(part.x, part.width, width, info.max_h_samp_factor * DCTSIZE, eighths);
        const Span down =
            scaledSpan(part.y, part.height, height, info.max_v_samp_factor * DCTSIZE, eighths);
        if (across.count >= request.needed.width && down.count >= request.needed.height)
            return {eighths, {across.from, down.from, across.count, down.count}};
    }
    return {kEighths, part};
}

bool JpegRows::Opened::start(const ScaledPart& scaled)
{
    if (setjmp(errors.jump) != 0)
        return false;
    info.scale_num = static_cast<unsigned>(scaled.eighths);
    info.scale_denom = kEighths;
    info.dct_method = JDCT_ISLOW;
    jpeg_start_decompress(&info);
    JDIMENSION from = static_cast<JDIMENSION>(scaled.part.x);
    JDIMENSION width = static_cast<JDIMENSION>(scaled.part.width);
    if (width < info.output_width)
        jpeg_crop_scanline(&info, &from, &width); // widens to the left, to a whole block
    lead = scaled.part.x - static_cast<int>(from);
    lineWidth = static_cast<int>(width);
    if (scaled.part.y > 0)
        jpeg_skip_scanlines(&info, static_cast<JDIMENSION>(scaled.part.y));
    return true;
}

JpegRows::JpegRows(std::unique_ptr<Opened> opened, SizePx size, PixelForm kind)
    : RowSource(size, kind)
    , m_opened(std::move(opened))
    , m_line(static_cast<std::size_t>(m_opened->lineWidth) * std::size_t(channelsOf(kind)))
{
}

JpegRows::~JpegRows() = default;

bool JpegRows::readLine()
{
    if (setjmp(m_opened->errors.jump) != 0)
        return false;
    jpeg_decompress_struct& info = m_opened->info;
    JSAMPROW line = m_line.data();
    if (jpeg_read_scanlines(&info, &line, 1) != 1)
        return false;
    // Only the end tells of data that was left over because codes in the middle were changed.
    if (info.output_scanline == info.output_height)
        jpeg_finish_decompress(&info);
    return true;
}

bool JpegRows::next(std::uint8_t* row)
{
    if (!readLine())
        return false;
    countDecoded(m_line.size());
    const auto lead = static_cast<std::ptrdiff_t>(m_opened->lead) * channelsOf(kind());
    const auto from = m_line.begin() + lead;
    std::copy_n(from, rowBytes(), row);
    if (m_opened->inverted)
        std::transform(row, row + rowBytes(), row, [](std::uint8_t ink) { return 255 - ink; });
    return true;
}

bool JpegRows::damaged() const
{
    return m_opened->info.err->num_warnings > 0;
}

PixelForm kindOf(J_COLOR_SPACE space)
{
    switch (space) {
    case JCS_GRAYSCALE:
        return PixelForm::Grey;
    case JCS_YCbCr:
        return PixelForm::YCbCr;
    case JCS_CMYK:
        return PixelForm::Cmyk;
    default:
        return PixelForm::Rgb;
    }
}

} // namespace

Result<std::unique_ptr<RowSource>> openJpegRows(const QByteArray& file, const RowRequest& request)
{
    const Error damaged{ErrorCode::Damaged, {}, Says::tr("is damaged and cannot be read")};
    auto opened = std::make_unique<JpegRows::Opened>(file);
    if (!opened->readHeader() || !opened->chooseColour(request.yCbCr))
        return damaged;
    const ScaledPart scaled = opened->choosePart(request);
    if (!opened->start(scaled))
        return damaged;
    const PixelForm kind = kindOf(opened->info.out_color_space);
    const SizePx size{scaled.part.width, scaled.part.height};
    return std::unique_ptr<RowSource>(std::make_unique<JpegRows>(std::move(opened), size, kind));
}

} // namespace wainscot
