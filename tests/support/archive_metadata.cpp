// What the file says of itself, and other files inside it (6.6 to 6.8).
#include "tests/support/archive_clauses.h"

#include <QRegularExpression>
#include <QXmlStreamReader>

#include <set>

namespace wainscot::archive {

namespace {

QStringList metadata(const File& file)
{
    Handle stream = file.pdf->getRoot().getKey("/Metadata");
    if (!stream.isStream())
        return {QStringLiteral("none")};
    QStringList faults;
    if (!isName(stream.getDict().getKey("/Subtype"), "/XML"))
        faults << QStringLiteral("not XML");
    const QByteArray packet = packetOf(file);
    const QByteArray begin = packet.left(packet.indexOf("?>"));
    if (begin.contains("bytes=") || begin.contains("encoding="))
        faults << QStringLiteral("bytes or encoding in the packet");
    if (QString::fromUtf8(packet).toUtf8() != packet)
        faults << QStringLiteral("not UTF-8");
    QXmlStreamReader reader(packet);
    while (!reader.atEnd())
        reader.readNext();
    if (reader.hasError())
        faults << QStringLiteral("not well-formed: ") + reader.errorString();
    return faults;
}

QStringList furtherMetadata(const File& file)
{
    static const QStringList known{QStringLiteral("adobe:ns:meta/"),
        QStringLiteral("http://www.w3.org/1999/02/22-rdf-syntax-ns#"),
        QStringLiteral("http://purl.org/dc/elements/1.1/"),
        QStringLiteral("http://ns.adobe.com/xap/1.0/"),
        QStringLiteral("http://ns.adobe.com/pdf/1.3/"),
        QStringLiteral("http://www.aiim.org/pdfa/ns/id/")};
    static const QRegularExpression space(QStringLiteral("xmlns:(\\w+)=[\"']([^\"']*)[\"']"));
    QStringList faults;
    auto at = space.globalMatch(QString::fromUtf8(packetOf(file)));
    while (at.hasNext()) {
        const auto one = at.next();
        const bool ofArchives = one.captured(2) == known.last();
        if (one.captured(1) == QLatin1String("pdfaExtension"))
            faults << QStringLiteral("an extension schema");
        else if (!known.contains(one.captured(2)))
            faults << QStringLiteral("an unknown schema");
        if (ofArchives != (one.captured(1) == QLatin1String("pdfaid")))
            faults << QStringLiteral("another prefix");
    }
    return faults;
}

bool holdsFiles(const File& file)
{
    bool holds = false;
    visitDicts(file, [&](Handle, Handle dict) { holds = holds || dict.hasKey("/EF"); });
    return holds;
}

// Part 2 lets nothing in but files of PDF/A-1 and 2; ours are none, so they ask for part 3.
QStringList identification(const File& file)
{
    const QByteArray packet = packetOf(file);
    if (packet.isEmpty())
        return {}; // 6.6.2.1 says so
    QStringList faults;
    const char part = holdsFiles(file) ? '3' : '2';
    if (!packet.contains(QByteArray("<pdfaid:part>") + part + "</pdfaid:part>"))
        faults << QStringLiteral("no part %1").arg(QLatin1Char(part));
    if (!packet.contains("<pdfaid:conformance>U<") && !packet.contains("<pdfaid:conformance>B<"))
        faults << QStringLiteral("no level B or U");
    return faults;
}

// Rules of ISO 19005-3, 6.8 as the veraPDF profile PDFA-3B states them: both names, what it is to
// the document, and the document (here: its catalogue) points at it; a MIME type on what is inside.
QStringList attachedFiles(const File& file)
{
    static const std::set<std::string> known{
        "/Source", "/Data", "/Alternative", "/Supplement", "/Unspecified"};
    static const QRegularExpression mime(QStringLiteral("^/[-\\w+.]+/[-\\w+.]+$"));
    Handle associated = file.pdf->getRoot().getKey("/AF");
    QStringList faults;
    visitDicts(file, [&](Handle owner, Handle dict) {
        if (!dict.hasKey("/EF") || !isName(dict.getKey("/Type"), "/Filespec"))
            return;
        const std::string relation =
            dict.hasKey("/AFRelationship") ? dict.getKey("/AFRelationship").getName() : "";
        if (known.count(relation) == 0)
            faults << named(owner, QStringLiteral("what it is to the document is not said"));
        bool found = false;
        for (int i = 0; associated.isArray() && i < associated.getArrayNItems(); ++i)
            found = found || associated.getArrayItem(i).getObjGen() == owner.getObjGen();
        if (!found)
            faults << named(owner, QStringLiteral("nothing points at it"));
        Handle stream = dict.getKey("/EF").getKey("/F");
        if (!stream.isStream()) {
            faults << named(owner, QStringLiteral("nothing is inside"));
            return;
        }
        Handle type = stream.getDict().getKey("/Subtype");
        if (!type.isName() || !mime.match(QString::fromStdString(type.getName())).hasMatch())
            faults << named(owner, QStringLiteral("no MIME type"));
        if (!stream.getDict().getKey("/Params").isDictionary()
            || !stream.getDict().getKey("/Params").getKey("/ModDate").isString())
            faults << named(owner, QStringLiteral("no day"));
    });
    return faults;
}

QStringList attachments(const File& file)
{
    QStringList faults;
    visitDicts(file, [&](Handle owner, Handle dict) {
        if (isName(dict.getKey("/Type"), "/Filespec") && dict.hasKey("/EF")
            && (!dict.hasKey("/F") || !dict.hasKey("/UF")))
            faults << named(owner, QStringLiteral("an attachment without F or UF"));
    });
    return faults;
}

} // namespace

const std::vector<Clause>& metadataClauses()
{
    static const std::vector<Clause> all{
        {"6.6.2.1", "XMP in UTF-8", metadata},
        {"6.6.2.3", "schemas that need no description", furtherMetadata},
        {"6.6.4", "says its part, level B or U", identification},
        {"6.8-3", "part 3: attachments say what they are", attachedFiles},
        {"6.8", "attachments have both names", attachments},
    };
    return all;
}

} // namespace wainscot::archive
