// A file that goes along inside a PDF and belongs to the whole document (ISO 19005-3, 6.8).
// Internal: what a caller may attach is made from cleared panels, see pdf_writer.h.
#pragma once

#include "layout/paper/qpdf.h"

#include <QByteArray>
#include <QDateTime>
#include <QString>

namespace wainscot::pdf {

struct Attachment {
    QString name; // "display.json"
    QString mimeType; // "application/json"
    QString says; // what it is, for the list of attachments
    QByteArray bytes;
};

// `changed`: its day and the document's. REQUIRES: valid
void writeAttachment(QPDF& file, const Attachment& attachment, const QDateTime& changed);

// D:YYYYMMDDHHmmSS with the offset from UTC (ISO 32000-1, 7.9.4).
[[nodiscard]] QString pdfDate(const QDateTime& when);

} // namespace wainscot::pdf
