#include "core/media/heic.h"

#include "core/base/says.h"
#include "core/media/bytes.h"
#include "core/media/colour.h"
#include "core/media/heif_references.h"

#include <libheif/heif.h>

#include <memory>

namespace wainscot {

namespace {

struct FreeContext {
    void operator()(heif_context* context) const { heif_context_free(context); }
};
struct FreeHandle {
    void operator()(heif_image_handle* handle) const { heif_image_handle_release(handle); }
};
struct FreeImage {
    void operator()(heif_image* image) const { heif_image_release(image); }
};
struct FreeNclx {
    void operator()(heif_color_profile_nclx* nclx) const { heif_nclx_color_profile_free(nclx); }
};

struct Opened {
    std::unique_ptr<heif_context, FreeContext> context;
    std::unique_ptr<heif_image_handle, FreeHandle> handle;
};

Error damaged(const heif_error& error)
{
    return {ErrorCode::Damaged,
        {},
        Says::tr("is damaged and cannot be read (%1)").arg(QLatin1String(error.message))};
}

// `file` must outlive what is returned.
Result<Opened> open(const QByteArray& file)
{
    if (const Result<> sound = checkHeifReferences(file); !sound)
        return sound.error();
    Opened opened;
    opened.context.reset(heif_context_alloc());
    heif_error error = heif_context_read_from_memory_without_copy(
        opened.context.get(), file.constData(), static_cast<std::size_t>(file.size()), nullptr);
    if (error.code != heif_error_Ok)
        return damaged(error);
    heif_image_handle* handle = nullptr;
    error = heif_context_get_primary_image_handle(opened.context.get(), &handle);
    opened.handle.reset(handle);
    if (error.code != heif_error_Ok)
        return damaged(error);
    return opened;
}

QByteArray exifOf(const heif_image_handle* handle)
{
    heif_item_id id = 0;
    if (heif_image_handle_get_list_of_metadata_block_IDs(handle, "Exif", &id, 1) != 1)
        return {};
    QByteArray block(
        static_cast<qsizetype>(heif_image_handle_get_metadata_size(handle, id)), Qt::Uninitialized);
    if (block.size() < 4
        || heif_image_handle_get_metadata(handle, id, block.data()).code != heif_error_Ok)
        return {};
    // ISO/IEC 23008-12 annex A: a 32-bit offset to the tag tree comes first.
    const qsizetype start = 4 + qsizetype(Bytes(block).u32(0));
    return start < block.size() ? block.mid(start) : QByteArray();
}

QByteArray profileOf(const heif_image_handle* handle)
{
    const std::size_t size = heif_image_handle_get_raw_color_profile_size(handle);
    if (size > 0) {
        QByteArray icc(static_cast<qsizetype>(size), Qt::Uninitialized);
        const heif_error error = heif_image_handle_get_raw_color_profile(handle, icc.data());
        return error.code == heif_error_Ok ? icc : QByteArray();
    }
    heif_color_profile_nclx* raw = nullptr;
    if (heif_image_handle_get_nclx_color_profile(handle, &raw).code != heif_error_Ok)
        return {};
    const std::unique_ptr<heif_color_profile_nclx, FreeNclx> nclx(raw);
    // SMPTE EG 432-1 primaries are those of Display P3; all else is close to or meant as sRGB.
    return nclx->color_primaries == heif_color_primaries_SMPTE_EG_432_1 ? displayP3Profile()
                                                                        : QByteArray();
}

} // namespace

Result<PictureHeader> readHeicHeader(const QByteArray& file)
{
    const auto opened = open(file);
    if (!opened)
        return opened.error();
    const heif_image_handle* handle = opened->handle.get();
    PictureHeader header;
    header.format = QStringLiteral("heic");
    header.stored = {heif_image_handle_get_width(handle), heif_image_handle_get_height(handle)};
    header.pictures = heif_context_get_number_of_top_level_images(opened->context.get());
    header.exif = exifOf(handle);
    header.icc = profileOf(handle);
    if (header.stored.isEmpty())
        return Error{ErrorCode::Damaged, {}, Says::tr("is damaged: it names no picture")};
    return header;
}

Result<QImage> decodeHeic(const QByteArray& file)
{
    const auto opened = open(file);
    if (!opened)
        return opened.error();
    const heif_image_handle* handle = opened->handle.get();
    const bool alpha = heif_image_handle_has_alpha_channel(handle) != 0;
    heif_image* raw = nullptr;
    const heif_error error = heif_decode_image(handle,
        &raw,
        heif_colorspace_RGB,
        alpha ? heif_chroma_interleaved_RGBA : heif_chroma_interleaved_RGB,
        nullptr);
    const std::unique_ptr<heif_image, FreeImage> image(raw);
    if (error.code != heif_error_Ok)
        return damaged(error);
    int stride = 0;
    const std::uint8_t* pixels =
        heif_image_get_plane_readonly(image.get(), heif_channel_interleaved, &stride);
    const int width = heif_image_get_width(image.get(), heif_channel_interleaved);
    const int height = heif_image_get_height(image.get(), heif_channel_interleaved);
    if (pixels == nullptr || width <= 0 || height <= 0)
        return Error{ErrorCode::Damaged, {}, Says::tr("is damaged and cannot be read")};
    const QImage view(
        pixels, width, height, stride, alpha ? QImage::Format_RGBA8888 : QImage::Format_RGB888);
    return view.copy();
}

} // namespace wainscot
