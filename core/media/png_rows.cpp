#include "core/media/rows.h"

#include "core/base/says.h"

#include <QByteArrayView>

#include <algorithm>
#include <csetjmp>
#include <cstring>

#include <png.h>

namespace wainscot {

namespace {

// libpng, like libjpeg, must not be returned to after an error: see jpeg_guard.h.
class PngRows final : public RowSource {
public:
    struct Opened {
        QByteArray file;
        qsizetype at = 0;
        png_structp png = nullptr;
        png_infop info = nullptr;
        SizePx size;
        int channels = 0; // with transparency
        bool interlaced = false;

        explicit Opened(QByteArray bytes)
            : file(std::move(bytes))
        {
        }
        Opened(const Opened&) = delete;
        Opened& operator=(const Opened&) = delete;
        ~Opened() { png_destroy_read_struct(&png, &info, nullptr); }

        bool start();
        bool readLine(png_bytep line);
        bool readAll(png_bytepp lines);
        [[nodiscard]] std::size_t lineBytes() const
        {
            return static_cast<std::size_t>(size.width) * static_cast<std::size_t>(channels);
        }
    };

    PngRows(std::unique_ptr<Opened> opened, const RectPx& part);
    bool next(std::uint8_t* row) override;

private:
    bool readInterlaced();
    bool takeLine(int y);

    std::unique_ptr<Opened> m_opened;
    RectPx m_part;
    std::vector<std::uint8_t> m_line;
    std::vector<std::uint8_t> m_whole; // only of interlaced files
    int m_row = 0;
    int m_taken = 0;
};

void readFrom(png_structp png, png_bytep to, std::size_t count)
{
    auto* opened = static_cast<PngRows::Opened*>(png_get_io_ptr(png));
    if (opened->file.size() - opened->at < static_cast<qsizetype>(count))
        png_error(png, "end of file");
    std::memcpy(to, opened->file.constData() + opened->at, count);
    opened->at += static_cast<qsizetype>(count);
}

bool PngRows::Opened::start()
{
    png = png_create_read_struct(
        PNG_LIBPNG_VER_STRING, nullptr, nullptr, [](png_structp, png_const_charp) {});
    info = png == nullptr ? nullptr : png_create_info_struct(png);
    if (info == nullptr)
        return false;
    if (setjmp(png_jmpbuf(png)) != 0)
        return false;
    png_set_read_fn(png, this, readFrom);
    // Text and unknown chunks are nothing we want to hold.
    png_set_keep_unknown_chunks(png, PNG_HANDLE_CHUNK_NEVER, nullptr, 0);
    png_read_info(png, info);
    png_set_expand(png);
    png_set_scale_16(png);
    png_set_interlace_handling(png);
    png_read_update_info(png, info);
    size = {static_cast<int>(png_get_image_width(png, info)),
        static_cast<int>(png_get_image_height(png, info))};
    channels = png_get_channels(png, info);
    interlaced = png_get_interlace_type(png, info) != PNG_INTERLACE_NONE;
    return true;
}

bool PngRows::Opened::readLine(png_bytep line)
{
    if (setjmp(png_jmpbuf(png)) != 0)
        return false;
    png_read_row(png, line, nullptr);
    return true;
}

bool PngRows::Opened::readAll(png_bytepp lines)
{
    if (setjmp(png_jmpbuf(png)) != 0)
        return false;
    png_read_image(png, lines);
    return true;
}

PngRows::PngRows(std::unique_ptr<Opened> opened, const RectPx& part)
    : RowSource({part.width, part.height}, opened->channels < 3 ? PixelForm::Grey : PixelForm::Rgb)
    , m_opened(std::move(opened))
    , m_part(part)
    , m_line(m_opened->lineBytes())
{
}

bool PngRows::readInterlaced()
{
    m_whole.resize(m_opened->lineBytes() * static_cast<std::size_t>(m_opened->size.height));
    std::vector<png_bytep> lines(static_cast<std::size_t>(m_opened->size.height));
    for (std::size_t y = 0; y < lines.size(); ++y)
        lines[y] = m_whole.data() + y * m_opened->lineBytes();
    countDecoded(m_whole.size());
    return m_opened->readAll(lines.data());
}

bool PngRows::takeLine(int y)
{
    if (m_opened->interlaced) {
        if (m_whole.empty() && !readInterlaced())
            return false;
        const auto from = m_whole.begin() + static_cast<std::ptrdiff_t>(m_line.size()) * y;
        std::copy_n(from, m_line.size(), m_line.begin());
        return true;
    }
    // Rows above the part are decoded and dropped: PNG has no way around them.
    for (; m_taken <= y; ++m_taken) {
        if (!m_opened->readLine(m_line.data()))
            return false;
        countDecoded(m_line.size());
    }
    return true;
}

bool PngRows::next(std::uint8_t* row)
{
    if (!takeLine(m_part.y + m_row++))
        return false;
    const int channels = m_opened->channels;
    const int colours = channelsOf(kind());
    const std::uint8_t* from = m_line.data() + std::ptrdiff_t(m_part.x) * channels;
    if (channels == colours) {
        std::copy_n(from, rowBytes(), row);
        return true;
    }
    for (int x = 0; x < m_part.width; ++x, from += channels) {
        const int cover = from[colours];
        for (int c = 0; c < colours; ++c) // on white, as paper is
            *row++ = static_cast<std::uint8_t>((from[c] * cover + 255 * (255 - cover) + 127) / 255);
    }
    return true;
}

} // namespace

Result<std::unique_ptr<RowSource>> openPngRows(const QByteArray& file, const RowRequest& request)
{
    auto opened = std::make_unique<PngRows::Opened>(file);
    const RectPx& part = request.part;
    if (!opened->start() || part.x + part.width > opened->size.width
        || part.y + part.height > opened->size.height)
        return Error{ErrorCode::Damaged, {}, Says::tr("is damaged and cannot be read")};
    return std::unique_ptr<RowSource>(std::make_unique<PngRows>(std::move(opened), part));
}

} // namespace wainscot
