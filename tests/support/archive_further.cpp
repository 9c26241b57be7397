#include "tests/support/archive_further.h"

#include "tests/support/archive_fonts.h"

#include <QRegularExpression>

#include <qpdf/QPDFPageDocumentHelper.hh>
#include <qpdf/QPDFPageObjectHelper.hh>

#include <cmath>
#include <limits>

namespace wainscot::archive {

namespace {

// ISO 32000-1, annex A.
const std::set<std::string> kOperators{"b",
    "B",
    "b*",
    "B*",
    "BDC",
    "BMC",
    "BT",
    "c",
    "cm",
    "CS",
    "cs",
    "d",
    "d0",
    "d1",
    "Do",
    "DP",
    "EMC",
    "ET",
    "f",
    "F",
    "f*",
    "G",
    "g",
    "gs",
    "h",
    "i",
    "j",
    "J",
    "K",
    "k",
    "l",
    "m",
    "M",
    "MP",
    "n",
    "q",
    "Q",
    "re",
    "RG",
    "rg",
    "ri",
    "s",
    "S",
    "SC",
    "sc",
    "SCN",
    "scn",
    "sh",
    "T*",
    "Tc",
    "Td",
    "TD",
    "Tf",
    "Tj",
    "TJ",
    "TL",
    "Tm",
    "Tr",
    "Ts",
    "Tw",
    "Tz",
    "v",
    "w",
    "W",
    "W*",
    "y",
    "'",
    "\"",
    "BX",
    "EX",
    "BI",
    "ID",
    "EI"};

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

QStringList filters(const File& file)
{
    static const QStringList known{QStringLiteral("/ASCIIHexDecode"),
        QStringLiteral("/ASCII85Decode"),
        QStringLiteral("/FlateDecode"),
        QStringLiteral("/RunLengthDecode"),
        QStringLiteral("/CCITTFaxDecode"),
        QStringLiteral("/JBIG2Decode"),
        QStringLiteral("/DCTDecode"),
        QStringLiteral("/LZWDecode"), // archive_clauses.cpp
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

QStringList content(const File& file)
{
    QStringList faults;
    visitContents(file, [&](const Operators& words, Handle) {
        for (const std::string& used : words.used) {
            if (kOperators.count(used) == 0)
                faults << QStringLiteral("an unknown operator");
            if (used == "BI")
                faults << QStringLiteral("an inline image");
        }
        for (const std::string& intent : words.intents) {
            static const std::set<std::string> known{
                "/RelativeColorimetric", "/AbsoluteColorimetric", "/Perceptual", "/Saturation"};
            if (known.count(intent) == 0)
                faults << QStringLiteral("an unknown intent");
        }
    });
    for (auto& page : QPDFPageDocumentHelper(*file.pdf).getAllPages()) {
        if (!page.getObjectHandle().hasKey("/Resources"))
            faults << QStringLiteral("no resources of its own");
    }
    return faults;
}

QStringList intents(const File& file)
{
    Handle intents = file.pdf->getRoot().getKey("/OutputIntents");
    QStringList faults;
    for (int i = 0; intents.isArray() && i < intents.getArrayNItems(); ++i) {
        Handle profile = intents.getArrayItem(i).getKey("/DestOutputProfile");
        if (intents.getArrayItem(i).hasKey("/DestOutputProfileRef"))
            faults << QStringLiteral("a profile elsewhere");
        if (profile.getObjGen() != intents.getArrayItem(0).getKey("/DestOutputProfile").getObjGen())
            faults << QStringLiteral("two profiles");
    }
    return faults;
}

QStringList spaces(const File& file)
{
    QStringList faults;
    visitValues(file, [&](Handle value) {
        if (!value.isArray() || value.getArrayNItems() == 0)
            return;
        Handle kind = value.getArrayItem(0);
        if (isName(kind, "/ICCBased"))
            faults << QStringLiteral("an ICC colour space");
        if (isName(kind, "/Separation") || isName(kind, "/DeviceN"))
            faults << QStringLiteral("a colour space of inks");
    });
    return faults;
}

QStringList halftones(const File& file)
{
    QStringList faults;
    visitDicts(file, [&](Handle owner, Handle dict) {
        if (isName(dict.getKey("/Type"), "/ExtGState") && dict.hasKey("/HT"))
            faults << named(owner, QStringLiteral("a halftone"));
    });
    return faults;
}

QStringList postScript(const File& file)
{
    QStringList faults;
    visitDicts(file, [&](Handle owner, Handle dict) {
        if (owner.isStream() && isName(dict.getKey("/Subtype"), "/PS"))
            faults << named(owner, QStringLiteral("a PostScript object"));
    });
    return faults;
}

QStringList furtherAnnotations(const File& file)
{
    static const std::set<std::string> known{"/Text",
        "/Link",
        "/FreeText",
        "/Line",
        "/Square",
        "/Circle",
        "/Polygon",
        "/PolyLine",
        "/Highlight",
        "/Underline",
        "/Squiggly",
        "/StrikeOut",
        "/Stamp",
        "/Caret",
        "/Ink",
        "/Popup",
        "/Widget",
        "/PrinterMark",
        "/TrapNet",
        "/Watermark",
        "/Redact",
        "/3D",
        "/Sound",
        "/Screen",
        "/Movie",
        "/FileAttachment"};
    constexpr int kStill = 8 | 16; // no zoom, no turning
    QStringList faults;
    visitDicts(file, [&](Handle owner, Handle dict) {
        if (!isName(dict.getKey("/Type"), "/Annot"))
            return;
        Handle flags = dict.getKey("/F");
        const int bits = flags.isInteger() ? flags.getIntValueAsInt() : 0;
        if (known.count(dict.getKey("/Subtype").getName()) == 0)
            faults << named(owner, QStringLiteral("an unknown annotation"));
        if (isName(dict.getKey("/Subtype"), "/Text") && (bits & kStill) != kStill)
            faults << named(owner, QStringLiteral("a note that turns"));
        if (isName(dict.getKey("/Subtype"), "/Widget") && dict.hasKey("/A"))
            faults << named(owner, QStringLiteral("a field that acts"));
        if (dict.getKey("/AP").isDictionary() && !dict.getKey("/AP").getKey("/N").isStream())
            faults << named(owner, QStringLiteral("a look that is no stream"));
    });
    return faults;
}

QStringList furtherActions(const File& file)
{
    static const std::set<std::string> pages{"/NextPage", "/PrevPage", "/FirstPage", "/LastPage"};
    QStringList faults;
    visitDicts(file, [&](Handle owner, Handle dict) {
        if (isName(dict.getKey("/S"), "/Named")
            && (!dict.getKey("/N").isName() || pages.count(dict.getKey("/N").getName()) == 0))
            faults << named(owner, QStringLiteral("an unknown named action"));
    });
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

QStringList fileTriggers(const File& file)
{
    return file.pdf->getRoot().hasKey("/AA") ? QStringList{QStringLiteral("of the whole file")}
                                             : QStringList();
}

QStringList catalogue(const File& file)
{
    Handle root = file.pdf->getRoot();
    QStringList faults;
    if (root.getKey("/NeedsRendering").isBool() && root.getKey("/NeedsRendering").getBoolValue())
        faults << QStringLiteral("NeedsRendering");
    if (root.hasKey("/Requirements"))
        faults << QStringLiteral("Requirements");
    Handle layers = root.getKey("/OCProperties");
    if (layers.isDictionary() && layers.hasKey("/Configs"))
        faults << QStringLiteral("layers with a choice");
    if (layers.isDictionary() && layers.getKey("/D").hasKey("/Order"))
        faults << QStringLiteral("layers in an order");
    return faults;
}

} // namespace

const std::vector<Clause>& furtherClauses()
{
    static const std::vector<Clause> all{
        {"6.1.4", "one line end after xref", xrefSpacing},
        {"6.1.6", "hexadecimal strings", hexStrings},
        {"6.1.7", "standard filters", filters},
        {"6.1.8", "names in UTF-8", names},
        {"6.1.13", "numbers in their limits", numbers},
        {"6.2.2", "known operators, resources of one's own, no inline images", content},
        {"6.2.3", "one profile, in the file", intents},
        {"6.2.4", "no inks, no other profiles", spaces},
        {"6.2.5", "no halftones", halftones},
        {"6.2.9", "no PostScript", postScript},
        {"6.2.11", "fonts as ISO 32000-1 describes them", fontDicts},
        {"6.2.11.4.1", "glyphs are there", glyphs},
        {"6.3", "known annotations", furtherAnnotations},
        {"6.5.1", "known named actions", furtherActions},
        {"6.5.2", "no triggers of the file", fileTriggers},
        {"6.6.2.3", "schemas that need no description", furtherMetadata},
        {"6.11", "no requirements, nothing to render first, one set of layers", catalogue},
    };
    return all;
}

} // namespace wainscot::archive
