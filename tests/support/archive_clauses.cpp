#include "tests/support/archive_clauses.h"

#include "tests/support/archive_file.h"
#include "tests/support/archive_further.h"

#include <QRawFont>
#include <QRegularExpression>
#include <QXmlStreamReader>

#include <qpdf/QPDFPageDocumentHelper.hh>

#include <cmath>
#include <set>

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

QStringList nesting(const File& file)
{
    QStringList faults;
    visitContents(file, [&](const Operators& words, Handle) {
        if (words.deepest > 28)
            faults << QStringLiteral("q nested %1 deep").arg(words.deepest);
    });
    return faults;
}

QStringList outputIntent(const File& file)
{
    Handle intents = file.pdf->getRoot().getKey("/OutputIntents");
    if (!intents.isArray() || intents.getArrayNItems() == 0)
        return {QStringLiteral("none")};
    Handle profile = intents.getArrayItem(0).getKey("/DestOutputProfile");
    if (!profile.isStream())
        return {QStringLiteral("no profile")};
    const auto data = profile.getStreamData();
    const QByteArray bytes(
        reinterpret_cast<const char*>(data->getBuffer()), qsizetype(data->getSize()));
    QStringList faults;
    if (bytes.mid(12, 4) != "mntr" && bytes.mid(12, 4) != "prtr")
        faults << QStringLiteral("neither of a screen nor of a printer");
    if (bytes.mid(16, 4) != "RGB " || profile.getDict().getKey("/N").getIntValueAsInt() != 3)
        faults << QStringLiteral("not RGB, but DeviceRGB is used");
    if (!isName(intents.getArrayItem(0).getKey("/S"), "/GTS_PDFA1"))
        faults << QStringLiteral("not of the kind for archives");
    return faults;
}

QStringList colours(const File& file)
{
    QStringList faults;
    visitValues(file, [&](Handle value) {
        if (isName(value, "/DeviceCMYK"))
            faults << QStringLiteral("DeviceCMYK with an RGB intent");
    });
    visitContents(file, [&](const Operators& words, Handle) {
        if (words.cmyk)
            faults << QStringLiteral("k or K");
    });
    return faults;
}

QStringList graphicsStates(const File& file)
{
    QStringList faults;
    visitDicts(file, [&](Handle owner, Handle dict) {
        if (!isName(dict.getKey("/Type"), "/ExtGState"))
            return;
        for (const char* key : {"/TR", "/HTP"}) {
            if (dict.hasKey(key))
                faults << named(owner, QString::fromLatin1(key));
        }
        if (dict.hasKey("/TR2") && !isName(dict.getKey("/TR2"), "/Default"))
            faults << named(owner, QStringLiteral("TR2"));
    });
    return faults;
}

QStringList images(const File& file)
{
    static const std::set<int> depths{1, 2, 4, 8, 16};
    QStringList faults;
    visitDicts(file, [&](Handle owner, Handle dict) {
        if (!owner.isStream() || !isName(dict.getKey("/Subtype"), "/Image"))
            return;
        if (dict.getKey("/Interpolate").isBool() && dict.getKey("/Interpolate").getBoolValue())
            faults << named(owner, QStringLiteral("interpolated"));
        for (const char* key : {"/Alternates", "/OPI"}) {
            if (dict.hasKey(key))
                faults << named(owner, QString::fromLatin1(key));
        }
        if (depths.count(dict.getKey("/BitsPerComponent").getIntValueAsInt()) == 0)
            faults << named(owner, QStringLiteral("bits"));
    });
    return faults;
}

QStringList forms(const File& file)
{
    QStringList faults;
    visitDicts(file, [&](Handle owner, Handle dict) {
        if (!owner.isStream() || !isName(dict.getKey("/Subtype"), "/Form"))
            return;
        for (const char* key : {"/OPI", "/PS", "/Ref"}) {
            if (dict.hasKey(key))
                faults << named(owner, QString::fromLatin1(key));
        }
    });
    return faults;
}

QStringList blending(const File& file)
{
    static const std::set<std::string> known{"/Normal",
        "/Compatible",
        "/Multiply",
        "/Screen",
        "/Overlay",
        "/Darken",
        "/Lighten",
        "/ColorDodge",
        "/ColorBurn",
        "/HardLight",
        "/SoftLight",
        "/Difference",
        "/Exclusion",
        "/Hue",
        "/Saturation",
        "/Color",
        "/Luminosity"};
    QStringList faults;
    visitDicts(file, [&](Handle owner, Handle dict) {
        if (dict.hasKey("/BM") && dict.getKey("/BM").isName()
            && known.count(dict.getKey("/BM").getName()) == 0)
            faults << named(owner, QStringLiteral("an unknown way to blend"));
    });
    return faults;
}

QStringList embedding(const File& file)
{
    QStringList faults;
    visitFonts(file, [&](Handle font) {
        if (isName(font.getKey("/Subtype"), "/Type0") || isName(font.getKey("/Subtype"), "/Type3"))
            return;
        if (!programOf(font).isStream())
            faults << named(font, QStringLiteral("not embedded"));
    });
    return faults;
}

QStringList glyphMaps(const File& file)
{
    QStringList faults;
    visitFonts(file, [&](Handle font) {
        if (!isName(font.getKey("/Subtype"), "/CIDFontType2"))
            return;
        Handle map = font.getKey("/CIDToGIDMap");
        if (!map.isStream() && !isName(map, "/Identity"))
            faults << named(font, QStringLiteral("no CIDToGIDMap"));
    });
    return faults;
}

// Widths by code out of an array of the form "first [w w w]".
std::map<int, double> widthsOf(Handle array)
{
    std::map<int, double> widths;
    for (int i = 0; array.isArray() && i + 1 < array.getArrayNItems();) {
        const int first = array.getArrayItem(i).getIntValueAsInt();
        Handle next = array.getArrayItem(i + 1);
        if (next.isArray()) {
            for (int k = 0; k < next.getArrayNItems(); ++k)
                widths[first + k] = next.getArrayItem(k).getNumericValue();
            i += 2;
        } else {
            for (int code = first; code <= next.getIntValueAsInt(); ++code)
                widths[code] = array.getArrayItem(i + 2).getNumericValue();
            i += 3;
        }
    }
    return widths;
}

QStringList widths(const File& file)
{
    QStringList faults;
    visitFonts(file, [&](Handle font) {
        if (!isName(font.getKey("/Subtype"), "/CIDFontType2")
            || !isName(font.getKey("/CIDToGIDMap"), "/Identity") || !programOf(font).isStream())
            return;
        const auto data = programOf(font).getStreamData();
        QRawFont raw(QByteArray(reinterpret_cast<const char*>(data->getBuffer()),
                         qsizetype(data->getSize())),
            1000,
            QFont::PreferNoHinting);
        if (!raw.isValid()) {
            faults << named(font, QStringLiteral("the program cannot be read"));
            return;
        }
        for (const auto& [code, width] : widthsOf(font.getKey("/W"))) {
            const auto advances = raw.advancesForGlyphIndexes({quint32(code)});
            if (advances.isEmpty() || std::abs(advances.front().x() - width) > 1)
                faults << named(font, QStringLiteral("width of glyph %1").arg(code));
        }
    });
    return faults;
}

QStringList unicode(const File& file)
{
    QStringList faults;
    visitFonts(file, [&](Handle font) {
        if (!isName(font.getKey("/Subtype"), "/Type0"))
            return;
        Handle map = font.getKey("/ToUnicode");
        if (!map.isStream()) {
            faults << named(font, QStringLiteral("no ToUnicode"));
            return;
        }
        const auto data = map.getStreamData();
        const QByteArray text(
            reinterpret_cast<const char*>(data->getBuffer()), qsizetype(data->getSize()));
        for (const char* banned : {"> <0000>", "> <FEFF>", "> <FFFE>"}) {
            if (text.contains(banned))
                faults << named(font, QStringLiteral("maps to no letter"));
        }
    });
    return faults;
}

QStringList missingGlyphs(const File& file)
{
    QStringList faults;
    visitContents(file, [&](const Operators& words, Handle resources) {
        for (const auto& [font, codes] : words.codes) {
            Handle dict = resources.getKey("/Font").getKey(font);
            Handle inner = dict.getKey("/DescendantFonts");
            const bool identity = inner.isArray()
                && (isName(inner.getArrayItem(0).getKey("/CIDToGIDMap"), "/Identity")
                    || isName(inner.getArrayItem(0).getKey("/Subtype"), "/CIDFontType0"));
            if (identity && codes.count(0) > 0)
                faults << QStringLiteral("%1 shows .notdef").arg(QString::fromStdString(font));
        }
    });
    return faults;
}

QStringList annotations(const File& file)
{
    static const std::set<std::string> banned{
        "/3D", "/Sound", "/Screen", "/Movie", "/FileAttachment"};
    constexpr int kHidden = 1 | 2 | 32 | 256; // invisible, hidden, no view, toggles no view
    QStringList faults;
    visitDicts(file, [&](Handle owner, Handle dict) {
        if (!isName(dict.getKey("/Type"), "/Annot"))
            return;
        const std::string kind = dict.getKey("/Subtype").getName();
        if (banned.count(kind) > 0)
            faults << named(owner, QString::fromStdString(kind));
        Handle flags = dict.getKey("/F");
        const int bits = flags.isInteger() ? flags.getIntValueAsInt() : 0;
        if (kind != "/Popup" && ((bits & 4) == 0 || (bits & kHidden) != 0))
            faults << named(owner, QStringLiteral("not printed with the page"));
        Handle look = dict.getKey("/AP");
        if (look.isDictionary() && (look.getKeys().size() != 1 || !look.hasKey("/N")))
            faults << named(owner, QStringLiteral("more looks than one"));
        if (!look.isDictionary() && kind != "/Link" && kind != "/Popup")
            faults << named(owner, QStringLiteral("no look"));
    });
    return faults;
}

QStringList actions(const File& file)
{
    static const std::set<std::string> banned{"/JavaScript",
        "/Launch",
        "/Sound",
        "/Movie",
        "/ResetForm",
        "/ImportData",
        "/Hide",
        "/SetOCGState",
        "/Rendition",
        "/Trans",
        "/GoTo3DView"};
    QStringList faults;
    visitDicts(file, [&](Handle owner, Handle dict) {
        Handle kind = dict.getKey("/S");
        if (kind.isName() && banned.count(kind.getName()) > 0)
            faults << named(owner, QString::fromStdString(kind.getName()));
    });
    return faults;
}

QStringList triggers(const File& file)
{
    QStringList faults;
    visitDicts(file, [&](Handle owner, Handle dict) {
        if (dict.hasKey("/AA"))
            faults << named(owner, QStringLiteral("AA"));
    });
    return faults;
}

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

QStringList layers(const File& file)
{
    Handle properties = file.pdf->getRoot().getKey("/OCProperties");
    if (!properties.isDictionary())
        return {};
    Handle usual = properties.getKey("/D");
    QStringList faults;
    if (!usual.getKey("/Name").isString())
        faults << QStringLiteral("layers without a name");
    if (usual.hasKey("/AS"))
        faults << QStringLiteral("layers that switch themselves");
    return faults;
}

QStringList presentations(const File& file)
{
    QStringList faults;
    if (file.pdf->getRoot().getKey("/Names").isDictionary()
        && file.pdf->getRoot().getKey("/Names").hasKey("/AlternatePresentations"))
        faults << QStringLiteral("AlternatePresentations");
    visitDicts(file, [&](Handle owner, Handle dict) {
        if (dict.hasKey("/PresSteps"))
            faults << named(owner, QStringLiteral("PresSteps"));
    });
    return faults;
}

QStringList formFields(const File& file)
{
    Handle form = file.pdf->getRoot().getKey("/AcroForm");
    QStringList faults;
    if (form.isDictionary() && form.hasKey("/XFA"))
        faults << QStringLiteral("XFA");
    if (form.isDictionary() && form.getKey("/NeedAppearances").isBool()
        && form.getKey("/NeedAppearances").getBoolValue())
        faults << QStringLiteral("NeedAppearances");
    return faults;
}

} // namespace

const std::vector<Clause>& clauses()
{
    static const std::vector<Clause> all{
        {"6.1.2", "header, and bytes above 127 after it", header},
        {"6.1.3", "ID, no Encrypt, nothing after the end", trailer},
        {"6.1.7", "no LZW, no Crypt, no data outside", streams},
        {"6.1.13", "lengths, numbers and page sides in their limits", limits},
        {"6.1.13-q", "q nested at most 28 deep", nesting},
        {"6.2.3", "an output intent with a profile", outputIntent},
        {"6.2.4.3", "device colours fit the output intent", colours},
        {"6.2.5", "no TR, no HTP", graphicsStates},
        {"6.2.8", "images: no interpolation, no alternates, known bits", images},
        {"6.2.9", "forms: no OPI, PS, Ref", forms},
        {"6.2.10", "known ways to blend", blending},
        {"6.2.11.3.2", "TrueType fonts map codes to glyphs", glyphMaps},
        {"6.2.11.4.1", "fonts are embedded", embedding},
        {"6.2.11.5", "widths agree within one unit", widths},
        {"6.2.11.7.2", "every font tells its letters", unicode},
        {"6.2.11.8", "no .notdef", missingGlyphs},
        {"6.3", "annotations print and look one way", annotations},
        {"6.4", "no XFA, no NeedAppearances", formFields},
        {"6.5.1", "no script, no launch", actions},
        {"6.5.2", "no triggers", triggers},
        {"6.6.2.1", "XMP in UTF-8", metadata},
        {"6.6.4", "says its part, level B or U", identification},
        {"6.8", "attachments have both names", attachments},
        {"6.8-3", "part 3: attachments say what they are", attachedFiles},
        {"6.9", "layers have a name and stay", layers},
        {"6.10", "no presentations", presentations},
    };
    return all;
}

QStringList faultsOf(const QByteArray& raw)
{
    QPDF pdf;
    pdf.setSuppressWarnings(true);
    pdf.processMemoryFile("file", raw.constData(), static_cast<std::size_t>(raw.size()));
    const File file{raw, &pdf};
    QStringList faults;
    for (const std::vector<Clause>* part : {&clauses(), &furtherClauses()}) {
        for (const Clause& clause : *part) {
            const QStringList found = clause.faults(file);
            for (const QString& fault : found)
                faults << QStringLiteral("%1: %2").arg(QLatin1String(clause.number), fault);
        }
    }
    return faults;
}

} // namespace wainscot::archive
