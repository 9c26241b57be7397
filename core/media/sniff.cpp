#include "core/media/sniff.h"

#include "core/base/says.h"
#include "core/media/bytes.h"

namespace wainscot {

namespace {

// Brands of ISO/IEC 23008-12 (HEIF) whose pictures are HEVC; "mif1" and "msf1" are its general
// ones. AVIF has its own brands and is not among them.
bool isHeic(const Bytes& bytes)
{
    if (!bytes.says(4, "ftyp"))
        return false;
    for (const char* brand : {"heic", "heix", "heim", "heis", "hevc", "hevx", "mif1", "msf1"}) {
        if (bytes.says(8, QByteArrayView(brand, 4)))
            return true;
    }
    return false;
}

bool looksLikeText(QByteArrayView bytes)
{
    for (const char c : bytes) {
        const auto value = static_cast<unsigned char>(c);
        if (value < 9 || (value > 13 && value < 32))
            return false;
    }
    return !bytes.isEmpty();
}

} // namespace

QString pictureFormat(QByteArrayView firstBytes)
{
    const Bytes bytes(firstBytes);
    if (bytes.says(0, "\xff\xd8\xff"))
        return QStringLiteral("jpeg");
    if (bytes.says(0, "\x89PNG\r\n\x1a\n"))
        return QStringLiteral("png");
    if (bytes.says(0, "RIFF") && bytes.says(8, "WEBP"))
        return QStringLiteral("webp");
    if (bytes.says(0, QByteArrayView("II*\0", 4)) || bytes.says(0, QByteArrayView("MM\0*", 4)))
        return QStringLiteral("tiff");
    if (isHeic(bytes))
        return QStringLiteral("heic");
    return {};
}

QString whyNotAPicture(QByteArrayView firstBytes)
{
    const Bytes bytes(firstBytes);
    const QByteArray start = firstBytes.toByteArray().trimmed().toLower();
    if (firstBytes.isEmpty())
        return Says::tr("is empty");
    if (start.startsWith("<!doctype html") || start.startsWith("<html"))
        return Says::tr("is a web page, not a picture");
    if (start.startsWith("<svg") || start.startsWith("<?xml"))
        return Says::tr("is a drawing in XML (perhaps SVG), a kind that is not read");
    if (bytes.says(0, "GIF8"))
        return Says::tr("is a GIF, a kind that is not read");
    if (bytes.says(0, "%PDF"))
        return Says::tr("is a PDF, not a picture");
    if (bytes.says(4, "ftyp"))
        return Says::tr("is a film or a kind of picture that is not read");
    if (bytes.says(0, "BM"))
        return Says::tr("is a bitmap of a kind that is not read");
    if (looksLikeText(firstBytes))
        return Says::tr("holds text, not a picture");
    return Says::tr("is no picture of a kind that is read (JPEG, PNG, WebP, TIFF, HEIC)");
}

} // namespace wainscot
