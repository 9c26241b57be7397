// How the file is put together (6.1).
#include "tests/support/archive_clauses.h"

#include <QRegularExpression>

#include <qpdf/QPDFPageDocumentHelper.hh>

#include <cmath>
#include <limits>

namespace wainscot::archive {

namespace {

QStringList header(const File& file)
{
    static const QRegularExpression form(QStringLiteral("^%PDF-1\\.[0-7][\\r\\n]"));
    if (!form.match(QString::fromLatin1(file.raw.left(16))).hasMatch())
        return {QStringLiteral("the first line is no header")};
    const qsizetype second = file.raw.indexOf('\n') + 1;
    bool marked = file.raw.mid(second, 1) == "%";
    for (qsizetype i = second + 1; i < second + 5; ++i)
        marked = marked && static_cast<unsigned char>(file.raw.at(i)) > 127;
    return marked ? QStringList() : QStringList{QStringLiteral("no comment of bytes above 127")};
}

QStringList trailer(const File& file)
{
    QStringList faults;
    if (!file.pdf->getTrailer().getKey("/ID").isArray())
        faults << QStringLiteral("no ID");
    if (file.pdf->getTrailer().hasKey("/Encrypt"))
        faults << QStringLiteral("encrypted");
    const qsizetype end = file.raw.lastIndexOf("%%EOF");
    const QByteArray rest = file.raw.mid(end + 5);
    if (end < 0 || (rest != "" && rest != "\n" && rest != "\r" && rest != "\r\n"))
        faults << QStringLiteral("something after the end");
    return faults;
}

QStringList xrefSpacing(const File& file)
{
    static const QRegularExpression loose(QStringLiteral("(^|[\\r\\n])xref[ \\t]"));
    return loose.match(QString::fromLatin1(file.raw)).hasMatch()
        ? QStringList{QStringLiteral("spaces after xref")}
        : QStringList();
}

// In content, where we write the strings ourselves.
QStringList hexStrings(const File& file)
{
    static const QRegularExpression hex(QStringLiteral("(?<!<)<([^<>]*)>(?!>)"));
    static const QRegularExpression digits(QStringLiteral("^[0-9A-Fa-f\\s]*$"));
    QStringList faults;
    for (auto& page : QPDFPageDocumentHelper(*file.pdf).getAllPages()) {
        for (Handle content : page.getPageContents()) {
            auto at =
                hex.globalMatch(QString::fromLatin1(QByteArray::fromStdString(contentOf(content))));
            while (at.hasNext()) {
                QString text = at.next().captured(1);
                if (!digits.match(text).hasMatch())
                    faults << QStringLiteral("no hexadecimal digit");
                if (text.remove(QRegularExpression(QStringLiteral("\\s"))).size() % 2 != 0)
                    faults << QStringLiteral("an odd number of digits");
            }
        }
    }
    return faults;
}

QStringList streams(const File& file)
{
    QStringList faults;
    visitValues(file, [&](Handle value) {
        if (!value.isStream())
            return;
        for (const QString& filter : filtersOf(value)) {
            if (filter == QLatin1String("/LZWDecode") || filter == QLatin1String("/Crypt"))
                faults << named(value, filter);
        }
        for (const char* key : {"/F", "/FFilter", "/FDecodeParms"}) {
            if (value.getDict().hasKey(key))
                faults << named(value, QStringLiteral("data outside the file"));
        }
    });
    return faults;
}

QStringList filters(const File& file)
{
    static const QStringList known{QStringLiteral("/ASCIIHexDecode"),
        QStringLiteral("/ASCII85Decode"),
        QStringLiteral("/FlateDecode"),
        QStringLiteral("/RunLengthDecode"),
        QStringLiteral("/CCITTFaxDecode"),
        QStringLiteral("/JBIG2Decode"),
        QStringLiteral("/DCTDecode"),
        QStringLiteral("/LZWDecode"), // refused by another rule
        QStringLiteral("/Crypt")};
    QStringList faults;
    visitValues(file, [&](Handle value) {
        const QStringList used = value.isStream() ? filtersOf(value) : QStringList();
        for (const QString& filter : used) {
            if (filter == QLatin1String("/JPXDecode"))
                faults << named(value, QStringLiteral("a JPEG 2000 picture"));
            else if (!known.contains(filter))
                faults << named(value, QStringLiteral("an unknown filter"));
        }
    });
    return faults;
}

QStringList names(const File& file)
{
    QStringList faults;
    const auto isUtf8 = [](Handle name) {
        const QByteArray bytes = QByteArray::fromStdString(name.getName());
        return QString::fromUtf8(bytes).toUtf8() == bytes;
    };
    visitDicts(file, [&](Handle owner, Handle dict) {
        for (const char* key : {"/BaseFont", "/FontName", "/S"}) {
            if (dict.getKey(key).isName() && !isUtf8(dict.getKey(key)))
                faults << named(owner, QStringLiteral("a name that is not UTF-8"));
        }
    });
    return faults;
}

QStringList limits(const File& file)
{
    QStringList faults;
    visitValues(file, [&](Handle value) {
        if (value.isName() && value.getName().size() > 128) // with its slash
            faults << QStringLiteral("a name of %1 bytes").arg(value.getName().size());
        if (value.isString() && value.getStringValue().size() > 32767)
            faults << QStringLiteral("a string of %1 bytes").arg(value.getStringValue().size());
        if (value.isReal() && std::abs(value.getNumericValue()) > 3.403e38)
            faults << QStringLiteral("a number out of range");
    });
    if (file.pdf->getObjectCount() > 8388607)
        faults << QStringLiteral("too many objects");
    for (auto& page : QPDFPageDocumentHelper(*file.pdf).getAllPages()) {
        Handle box = page.getAttribute("/MediaBox", false);
        for (const auto& [low, high] : {std::pair(0, 2), std::pair(1, 3)}) {
            const double side =
                box.getArrayItem(high).getNumericValue() - box.getArrayItem(low).getNumericValue();
            if (side < 3 || side > 14400)
                faults << QStringLiteral("a page side of %1").arg(side);
        }
    }
    return faults;
}

QStringList numbers(const File& file)
{
    QStringList faults;
    visitValues(file, [&](Handle value) {
        if (value.isInteger() && std::abs(value.getIntValue()) > std::numeric_limits<int>::max())
            faults << QStringLiteral("an integer out of range");
        if (value.isReal() && value.getNumericValue() != 0
            && std::abs(value.getNumericValue()) < 1.175e-38)
            faults << QStringLiteral("a number too near zero");
    });
    return faults;
}

QStringList nesting(const File& file)
{
    QStringList faults;
    visitContents(file, [&](const Operators& words, Handle) {
        if (words.deepest > 28)
            faults << QStringLiteral("q nested %1 deep").arg(words.deepest);
    });
    return faults;
}

} // namespace

const std::vector<Clause>& structureClauses()
{
    static const std::vector<Clause> all{
        {"6.1.2", "header, and bytes above 127 after it", header},
        {"6.1.3", "ID, no Encrypt, nothing after the end", trailer},
        {"6.1.4", "one line end after xref", xrefSpacing},
        {"6.1.6", "hexadecimal strings", hexStrings},
        {"6.1.7", "no LZW, no Crypt, no data outside", streams},
        {"6.1.7", "standard filters", filters},
        {"6.1.8", "names in UTF-8", names},
        {"6.1.13", "lengths, numbers and page sides in their limits", limits},
        {"6.1.13", "numbers in their limits", numbers},
        {"6.1.13-q", "q nested at most 28 deep", nesting},
    };
    return all;
}

} // namespace wainscot::archive
