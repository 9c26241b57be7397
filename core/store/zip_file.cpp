#include "core/store/zip_file.h"

#include <QIODevice>

#include <archive.h>
#include <archive_entry.h>

#include <array>

namespace wainscot {

namespace {

constexpr std::size_t kChunk = 64 * 1024;

QString whyOf(archive* handle)
{
    const char* text = archive_error_string(handle);
    return text != nullptr ? QString::fromLocal8Bit(text) : QString();
}

la_ssize_t writeTo(archive* handle, void* device, const void* bytes, std::size_t count)
{
    auto* to = static_cast<QIODevice*>(device);
    const qint64 written = to->write(static_cast<const char*>(bytes), qint64(count));
    if (written < 0)
        archive_set_error(handle, EIO, "%s", to->errorString().toLocal8Bit().constData());
    return written;
}

struct Source {
    QIODevice* device = nullptr;
    std::array<char, kChunk> chunk{};
};

la_ssize_t readFrom(archive* handle, void* data, const void** bytes)
{
    auto* source = static_cast<Source*>(data);
    *bytes = source->chunk.data();
    const qint64 got = source->device->read(source->chunk.data(), qint64(kChunk));
    if (got < 0)
        archive_set_error(
            handle, EIO, "%s", source->device->errorString().toLocal8Bit().constData());
    return got;
}

la_int64_t seekIn(archive* /*handle*/, void* data, la_int64_t offset, int whence)
{
    QIODevice* device = static_cast<Source*>(data)->device;
    const qint64 from = whence == SEEK_SET ? 0
        : whence == SEEK_CUR               ? device->pos()
                                           : device->size();
    return device->seek(from + offset) ? device->pos() : ARCHIVE_FATAL;
}

} // namespace

struct ZipWriter::State {
    archive* handle = archive_write_new();
    QIODevice* to = nullptr;
    bool opened = false;
    [[nodiscard]] Error failed() const { return Error{ErrorCode::CannotWrite, {}, whyOf(handle)}; }
};

ZipWriter::ZipWriter(QIODevice& to)
    : m_state(std::make_unique<State>())
{
    m_state->to = &to;
    archive_write_set_format_zip(m_state->handle);
    archive_write_set_bytes_in_last_block(m_state->handle, 1);
    m_state->opened =
        archive_write_open2(m_state->handle, &to, nullptr, writeTo, nullptr, nullptr) == ARCHIVE_OK;
}

ZipWriter::~ZipWriter()
{
    archive_write_free(m_state->handle);
}

Result<> ZipWriter::begin(const QString& name, qint64 bytes, bool compress)
{
    if (!m_state->opened)
        return m_state->failed();
    archive* handle = m_state->handle;
    const auto method = compress ? archive_write_zip_set_compression_deflate(handle)
                                 : archive_write_zip_set_compression_store(handle);
    if (method != ARCHIVE_OK)
        return m_state->failed();
    // No times, owners or rights go along: the same book makes the same file.
    const std::unique_ptr<archive_entry, decltype(&archive_entry_free)> entry(
        archive_entry_new(), archive_entry_free);
    archive_entry_set_pathname_utf8(entry.get(), name.toUtf8().constData());
    archive_entry_set_size(entry.get(), bytes);
    archive_entry_set_filetype(entry.get(), AE_IFREG);
    archive_entry_set_perm(entry.get(), 0644);
    if (archive_write_header(handle, entry.get()) != ARCHIVE_OK)
        return m_state->failed();
    return Done{};
}

Result<> ZipWriter::write(const char* bytes, qint64 count)
{
    if (archive_write_data(m_state->handle, bytes, std::size_t(count)) != count)
        return m_state->failed();
    return Done{};
}

Result<> ZipWriter::finish()
{
    if (!m_state->opened || archive_write_close(m_state->handle) != ARCHIVE_OK)
        return m_state->failed();
    return Done{};
}

struct ZipReader::State {
    archive* handle = archive_read_new();
    Source source;
    bool opened = false;
    [[nodiscard]] Error failed() const { return Error{ErrorCode::Damaged, {}, whyOf(handle)}; }
};

ZipReader::ZipReader(QIODevice& from)
    : m_state(std::make_unique<State>())
{
    m_state->source.device = &from;
    archive* handle = m_state->handle;
    archive_read_support_format_zip(handle);
    archive_read_set_callback_data(handle, &m_state->source);
    archive_read_set_read_callback(handle, readFrom);
    archive_read_set_seek_callback(handle, seekIn);
    m_state->opened = archive_read_open1(handle) == ARCHIVE_OK;
}

ZipReader::~ZipReader()
{
    archive_read_free(m_state->handle);
}

Result<std::optional<ZipEntry>> ZipReader::next()
{
    if (!m_state->opened)
        return m_state->failed();
    archive_entry* entry = nullptr;
    const int got = archive_read_next_header(m_state->handle, &entry);
    if (got == ARCHIVE_EOF)
        return std::optional<ZipEntry>();
    if (got != ARCHIVE_OK)
        return m_state->failed();
    const char* name = archive_entry_pathname_utf8(entry);
    return std::optional<ZipEntry>(ZipEntry{name != nullptr ? QString::fromUtf8(name) : QString(),
        archive_entry_filetype(entry) == AE_IFREG && archive_entry_hardlink(entry) == nullptr});
}

Result<> ZipReader::read(const TakeBytes& take)
{
    std::array<char, kChunk> chunk{};
    for (;;) {
        const la_ssize_t got = archive_read_data(m_state->handle, chunk.data(), kChunk);
        if (got == 0)
            return Done{};
        if (got < 0)
            return m_state->failed();
        if (auto taken = take(chunk.data(), got); !taken)
            return taken;
    }
}

} // namespace wainscot
