// The file a PDF is written to: whole under its name, or not at all.
#pragma once

#include "layout/paper/qpdf.h"

#include <QCryptographicHash>
#include <QSaveFile>

#include <functional>
#include <memory>
#include <stdexcept>
#include <string>

namespace wainscot::pdf {

class WriteFailed : public std::runtime_error {
public:
    using std::runtime_error::runtime_error;
};

class WriteCancelled : public std::exception { };

// The number a file is known by (ISO 32000-1, 14.4), from what is written into it: the same content
// has the same. A photo passed through counts by the SHA-256 of its original, which says as much as
// a sum of its bytes; summing 200 MB of them took as long as writing them.
class FileNumber {
public:
    // The next block of just this length is what is known by the name.
    void expect(const QByteArray& name, qint64 length);
    void add(const char* data, qint64 length);
    // 32 hexadecimal digits of what was added.
    [[nodiscard]] std::string digits() const;

private:
    QCryptographicHash m_sum{QCryptographicHash::Md5};
    QByteArray m_name;
    qint64 m_length = -1; // of what is expected; -1 = nothing is
};

// Takes qpdf's output and gives it its number. Throws WriteFailed when the system refuses,
// WriteCancelled when `cancelled` says so.
class OutputFile final : public Pipeline {
public:
    OutputFile(
        const QString& path, std::function<bool()> cancelled, std::shared_ptr<FileNumber> number);
    void open();
    void write(const unsigned char* data, std::size_t length) override;
    void finish() override { }
    // Gives the file its name. Throws WriteFailed for a file that got no number.
    void commit();
    [[nodiscard]] qint64 bytes() const { return m_bytes; }

private:
    QSaveFile m_file;
    std::function<bool()> m_cancelled;
    std::shared_ptr<FileNumber> m_number;
    bool m_isNumbered = false;
    qint64 m_bytes = 0;
};

} // namespace wainscot::pdf
