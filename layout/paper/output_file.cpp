#include "layout/paper/output_file.h"

#include "core/base/commit_file.h"

namespace wainscot::pdf {

OutputFile::OutputFile(const QString& path, std::function<bool()> cancelled)
    : Pipeline("output", nullptr)
    , m_file(path)
    , m_cancelled(std::move(cancelled))
{
}

void OutputFile::open()
{
    if (!m_file.open(QIODevice::WriteOnly))
        throw WriteFailed(m_file.errorString().toStdString());
}

void OutputFile::write(const unsigned char* data, std::size_t length)
{
    if (m_cancelled())
        throw WriteCancelled();
    const auto wanted = static_cast<qint64>(length);
    if (m_file.write(reinterpret_cast<const char*>(data), wanted) != wanted)
        throw WriteFailed(m_file.errorString().toStdString());
    m_bytes += wanted;
}

void OutputFile::commit()
{
    if (!commitWhole(m_file))
        throw WriteFailed(m_file.errorString().toStdString());
}

} // namespace wainscot::pdf
