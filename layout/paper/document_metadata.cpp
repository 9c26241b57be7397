#include "layout/paper/document_metadata.h"

#include "layout/paper/attachment.h"
#include "layout/paper/qpdf.h"

#include <array>
#include <lcms2.h>
#include <stdexcept>
#include <string>

namespace wainscot::pdf {

namespace {

using Handle = QPDFObjectHandle;

QString isoDate(const QDateTime& when)
{
    return when.toOffsetFromUtc(when.offsetFromUtc()).toString(Qt::ISODate);
}

// A packet of XMP with the same facts as the information dictionary.
std::string xmpPacket(const DocumentFacts& facts)
{
    QString body = QStringLiteral("<dc:format>application/pdf</dc:format>\n<dc:title><rdf:Alt>"
                                  "<rdf:li xml:lang=\"x-default\">%1</rdf:li></rdf:Alt>"
                                  "</dc:title>\n")
                       .arg(facts.title.toHtmlEscaped());
    if (!facts.language.isEmpty())
        body +=
            QStringLiteral("<dc:language><rdf:Bag><rdf:li>%1</rdf:li></rdf:Bag></dc:language>\n")
                .arg(facts.language.toHtmlEscaped());
    if (facts.created.isValid())
        body += QStringLiteral("<xmp:CreateDate>%1</xmp:CreateDate>\n"
                               "<xmp:ModifyDate>%1</xmp:ModifyDate>\n")
                    .arg(isoDate(facts.created));
    if (facts.archivalPart > 0)
        body += QStringLiteral("<pdfaid:part>%1</pdfaid:part>\n"
                               "<pdfaid:conformance>U</pdfaid:conformance>\n")
                    .arg(facts.archivalPart);
    const QString packet =
        QStringLiteral("<?xpacket begin=\"\uFEFF\" id=\"W5M0MpCehiHzreSzNTczkc9d\"?>\n"
                       "<x:xmpmeta xmlns:x=\"adobe:ns:meta/\">\n"
                       "<rdf:RDF xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\">\n"
                       "<rdf:Description rdf:about=\"\""
                       " xmlns:dc=\"http://purl.org/dc/elements/1.1/\""
                       " xmlns:xmp=\"http://ns.adobe.com/xap/1.0/\""
                       " xmlns:pdfaid=\"http://www.aiim.org/pdfa/ns/id/\">\n")
        + body
        + QStringLiteral("</rdf:Description>\n</rdf:RDF>\n</x:xmpmeta>\n<?xpacket end=\"w\"?>");
    return packet.toStdString();
}

std::string srgbProfile()
{
    const cmsHPROFILE profile = cmsCreate_sRGBProfile();
    if (profile == nullptr)
        throw std::runtime_error("the sRGB profile cannot be made");
    // ICC.1:2004-10, the newest that PDF 1.7 takes (PDF Reference 1.7, table 4.17). Version 2 holds
    // curves as tables, which poppler turns round by search: some 70 ms for each page.
    cmsSetProfileVersion(profile, 4.2);
    cmsUInt32Number length = 0;
    cmsSaveProfileToMem(profile, nullptr, &length);
    std::string bytes(length, '\0');
    const bool saved = cmsSaveProfileToMem(profile, bytes.data(), &length) != 0;
    cmsCloseProfile(profile);
    constexpr std::size_t dateAt = 24; // ICC.1, header: six 16-bit numbers, year first
    constexpr std::array<char, 12> date{'\x07', '\xD0', 0, 1, 0, 1, 0, 0, 0, 0, 0, 0};
    constexpr std::size_t idAt = 84; // a check sum of the profile, or zeros
    if (!saved || length < 128)
        throw std::runtime_error("the sRGB profile cannot be made");
    bytes.replace(dateAt, date.size(), date.data(), date.size());
    bytes.replace(idAt, 16, 16, '\0');
    return bytes;
}

void writeOutputIntent(QPDF& file)
{
    Handle profile = Handle::newStream(&file, srgbProfile());
    profile.getDict().replaceKey("/N", Handle::newInteger(3));
    Handle intent = Handle::parse("<< /Type /OutputIntent /S /GTS_PDFA1"
                                  " /OutputConditionIdentifier (sRGB IEC61966-2.1)"
                                  " /Info (sRGB IEC61966-2.1) >>");
    intent.replaceKey("/DestOutputProfile", profile);
    file.getRoot().replaceKey(
        "/OutputIntents", Handle::newArray({file.makeIndirectObject(intent)}));
}

} // namespace

void writeMetadata(QPDF& file, const DocumentFacts& facts)
{
    Handle root = file.getRoot();
    if (!facts.language.isEmpty())
        root.replaceKey("/Lang", Handle::newString(facts.language.toStdString()));
    root.replaceKey("/ViewerPreferences", Handle::parse("<< /DisplayDocTitle true >>"));
    writeOutputIntent(file);

    Handle packet = Handle::newStream(&file, xmpPacket(facts));
    packet.getDict().replaceKey("/Type", Handle::newName("/Metadata"));
    packet.getDict().replaceKey("/Subtype", Handle::newName("/XML"));
    root.replaceKey("/Metadata", packet);

    Handle info = file.makeIndirectObject(Handle::newDictionary());
    info.replaceKey("/Title", Handle::newUnicodeString(facts.title.toStdString()));
    if (facts.created.isValid()) {
        const std::string date = pdfDate(facts.created).toStdString();
        info.replaceKey("/CreationDate", Handle::newString(date));
        info.replaceKey("/ModDate", Handle::newString(date));
    }
    file.getTrailer().replaceKey("/Info", info);
}

} // namespace wainscot::pdf
