#include "layout/paper/output_file.h"

#include "core/base/commit_file.h"

#include <string_view>

namespace wainscot::pdf {

namespace {

// What qpdf writes in place of a number when asked for a fixed one.
constexpr std::string_view kNoNumber = "<31415926535897932384626433832795>";

} // namespace

void FileNumber::expect(const QByteArray& name, qint64 length)
{
    m_name = name;
    m_length = length;
}

void FileNumber::add(const char* data, qint64 length)
{
    if (length != m_length) { // qpdf writes a picture's description first
        m_sum.addData(QByteArrayView(data, length));
        return;
    }
    m_sum.addData(m_name);
    m_length = -1;
}

std::string FileNumber::digits() const
{
    return m_sum.result().toHex().toStdString();
}

OutputFile::OutputFile(
    const QString& path, std::function<bool()> cancelled, std::shared_ptr<FileNumber> number)
    : Pipeline("output", nullptr)
    , m_file(path)
    , m_cancelled(std::move(cancelled))
    , m_number(std::move(number))
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
    const char* bytes = reinterpret_cast<const char*>(data);
    std::string number;
    if (std::string_view(bytes, length) == kNoNumber) {
        number = "<" + m_number->digits() + ">"; // twice the same: nothing is added here
        bytes = number.data();
        m_isNumbered = true;
    } else {
        m_number->add(bytes, wanted);
    }
    if (m_file.write(bytes, wanted) != wanted)
        throw WriteFailed(m_file.errorString().toStdString());
    m_bytes += wanted;
}

void OutputFile::commit()
{
    if (!m_isNumbered)
        throw WriteFailed("qpdf wrote no place for the number of the file");
    if (!commitWhole(m_file))
        throw WriteFailed(m_file.errorString().toStdString());
}

} // namespace wainscot::pdf
