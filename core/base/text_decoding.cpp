#include "core/base/text_decoding.h"

#include <QStringDecoder>

#include <array>
#include <optional>

namespace wainscot {

namespace {

// 0x80..0x9f; every other byte of Windows-1252 is the letter of the same number.
constexpr std::array<char16_t, 32> kWindows1252{0x20ac,
    0x0081,
    0x201a,
    0x0192,
    0x201e,
    0x2026,
    0x2020,
    0x2021,
    0x02c6,
    0x2030,
    0x0160,
    0x2039,
    0x0152,
    0x008d,
    0x017d,
    0x008f,
    0x0090,
    0x2018,
    0x2019,
    0x201c,
    0x201d,
    0x2022,
    0x2013,
    0x2014,
    0x02dc,
    0x2122,
    0x0161,
    0x203a,
    0x0153,
    0x009d,
    0x017e,
    0x0178};

QString fromWindows1252(const QByteArray& bytes)
{
    QString text = QString::fromLatin1(bytes);
    for (QChar& c : text) {
        if (c.unicode() >= 0x80 && c.unicode() <= 0x9f)
            c = QChar(kWindows1252[c.unicode() - 0x80U]);
    }
    return text;
}

std::optional<QString> decoded(const QByteArray& bytes, QStringConverter::Encoding encoding)
{
    QStringDecoder decoder(encoding);
    QString text = decoder.decode(bytes);
    if (decoder.hasError())
        return std::nullopt;
    return text;
}

} // namespace

QString textFromBytes(const QByteArray& bytes)
{
    if (bytes.startsWith("\xff\xfe") || bytes.startsWith("\xfe\xff")) {
        // The decoder takes the byte order from the mark and leaves the mark out.
        QStringDecoder decoder(QStringConverter::Utf16);
        return decoder.decode(bytes);
    }
    if (auto text = decoded(bytes, QStringConverter::Utf8))
        return *text;
    return fromWindows1252(bytes);
}

} // namespace wainscot
