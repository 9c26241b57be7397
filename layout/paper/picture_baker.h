// Bakes the planned pictures with a few workers into a temporary file, so that memory holds only
// the pictures being worked on.
#pragma once

#include "layout/paper/output_file.h"
#include "layout/paper/pdf_writer.h"
#include "layout/paper/picture_plan.h"
#include "layout/paper/qpdf.h"

#include <QTemporaryFile>

#include <functional>
#include <memory>
#include <vector>

namespace wainscot::pdf {

struct BakedPicture {
    qint64 offset = 0; // in the spool
    qint64 length = 0;
    SizePx size;
    int components = 3;
    // Of a picture that is passed through: delivers its bytes once more when the file is written,
    // which is cheaper than a copy in the spool. Empty when they cannot be had any more.
    std::function<QByteArray()> again;
    QByteArray original; // then the SHA-256 it is known by
    [[nodiscard]] bool passedThrough() const { return again != nullptr; }
};

// Compressed pictures on disk. The file has no name and vanishes with the program.
class Spool {
public:
    // In the folder of the file to be written, which needs as much room in any case.
    explicit Spool(const QString& targetPath);
    [[nodiscard]] bool open(QString& error);
    [[nodiscard]] bool append(const QByteArray& bytes, qint64& offset, QString& error);
    [[nodiscard]] QByteArray read(qint64 offset, qint64 length);

private:
    QTemporaryFile m_file;
    qint64 m_end = 0;
};

// In the order of the wanted ones. The first error stops all workers. REQUIRES: the source outlives
// the writing of the file
Result<std::vector<BakedPicture>> bakeAll(const std::vector<PlannedPicture>& wanted,
    PictureSource& source,
    int workers,
    const QString& targetPath,
    Spool& spool,
    const PaperWatch& watch);

// An image object that reads its data from the spool when the file is written.
[[nodiscard]] QPDFObjectHandle imageObject(QPDF& file,
    const BakedPicture& picture,
    const std::shared_ptr<Spool>& spool,
    const std::shared_ptr<FileNumber>& number);

} // namespace wainscot::pdf
