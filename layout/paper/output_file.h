// The file a PDF is written to: whole under its name, or not at all.
#pragma once

#include "layout/paper/qpdf.h"

#include <QSaveFile>

#include <functional>
#include <stdexcept>

namespace wainscot::pdf {

class WriteFailed : public std::runtime_error {
public:
    using std::runtime_error::runtime_error;
};

class WriteCancelled : public std::exception { };

// Takes qpdf's output. Throws WriteFailed when the system refuses, WriteCancelled when `cancelled`
// says so.
class OutputFile final : public Pipeline {
public:
    OutputFile(const QString& path, std::function<bool()> cancelled);
    void open();
    void write(const unsigned char* data, std::size_t length) override;
    void finish() override { }
    // Gives the file its name.
    void commit();
    [[nodiscard]] qint64 bytes() const { return m_bytes; }

private:
    QSaveFile m_file;
    std::function<bool()> m_cancelled;
    qint64 m_bytes = 0;
};

} // namespace wainscot::pdf
