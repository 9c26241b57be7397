#include "core/media/jpeg_writer.h"

#include "core/media/jpeg_guard.h"

#include <cstdlib>

namespace wainscot {

namespace {

class Writer {
public:
    Writer() { m_info.err = &m_errors.manager; }
    Writer(const Writer&) = delete;
    Writer& operator=(const Writer&) = delete;
    ~Writer()
    {
        jpeg_destroy_compress(&m_info);
        std::free(m_bytes);
    }

    bool start(SizePx size, PixelForm kind, const JpegStyle& style)
    {
        if (setjmp(m_errors.jump) != 0)
            return false;
        jpeg_create_compress(&m_info);
        jpeg_mem_dest(&m_info, &m_bytes, &m_count);
        m_info.image_width = static_cast<JDIMENSION>(size.width);
        m_info.image_height = static_cast<JDIMENSION>(size.height);
        m_info.input_components = channelsOf(kind);
        m_info.in_color_space = kind == PixelForm::Grey ? JCS_GRAYSCALE
            : kind == PixelForm::YCbCr                  ? JCS_YCbCr
                                                        : JCS_RGB;
        jpeg_set_defaults(&m_info);
        jpeg_set_quality(&m_info, style.quality, TRUE);
        if (style.fullChroma) {
            m_info.comp_info[0].h_samp_factor = 1;
            m_info.comp_info[0].v_samp_factor = 1;
        }
        jpeg_start_compress(&m_info, TRUE);
        return true;
    }
    bool put(std::uint8_t* row)
    {
        if (setjmp(m_errors.jump) != 0)
            return false;
        JSAMPROW line = row;
        return jpeg_write_scanlines(&m_info, &line, 1) == 1;
    }
    bool finish()
    {
        if (setjmp(m_errors.jump) != 0)
            return false;
        jpeg_finish_compress(&m_info);
        return true;
    }
    [[nodiscard]] QByteArray bytes() const
    {
        return {reinterpret_cast<const char*>(m_bytes), static_cast<qsizetype>(m_count)};
    }

private:
    JpegErrors m_errors;
    jpeg_compress_struct m_info = {};
    unsigned char* m_bytes = nullptr;
    unsigned long m_count = 0;
};

} // namespace

Result<QByteArray> writeJpeg(RowSource& source, const JpegStyle& style)
{
    const Error internal{ErrorCode::Internal, {}, QStringLiteral("could not be made into a JPEG")};
    Writer writer;
    if (!writer.start(source.size(), source.kind(), style))
        return internal;
    std::vector<std::uint8_t> row(source.rowBytes());
    for (int y = 0; y < source.size().height; ++y) {
        if (!source.next(row.data()))
            return Error{ErrorCode::Damaged, {}, QStringLiteral("is damaged and cannot be read")};
        if (!writer.put(row.data()))
            return internal;
    }
    if (!writer.finish())
        return internal;
    return writer.bytes();
}

} // namespace wainscot
