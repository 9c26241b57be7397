// Colours, pictures and what content may say (6.2.2 to 6.2.10).
#include "tests/support/archive_clauses.h"

#include <qpdf/QPDFPageDocumentHelper.hh>
#include <qpdf/QPDFPageObjectHelper.hh>

#include <set>

namespace wainscot::archive {

namespace {

// ISO 32000-1, annex A.
const QStringList& operatorNames()
{
    static const QStringList all = QStringLiteral(
        "b B b* B* BDC BMC BT c cm CS cs d d0 d1 Do DP EMC ET f F f* G g gs h i j J K "
        "k l m M MP n q Q re RG rg ri s S SC sc SCN scn sh T* Tc Td TD Tf Tj TJ TL Tm "
        "Tr Ts Tw Tz v w W W* y ' \" BX EX BI ID EI")
                                       .split(u' ');
    return all;
}

QStringList content(const File& file)
{
    QStringList faults;
    visitContents(file, [&](const Operators& words, Handle) {
        for (const std::string& used : words.used) {
            if (!operatorNames().contains(QString::fromStdString(used)))
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

QStringList halftones(const File& file)
{
    QStringList faults;
    visitDicts(file, [&](Handle owner, Handle dict) {
        if (isName(dict.getKey("/Type"), "/ExtGState") && dict.hasKey("/HT"))
            faults << named(owner, QStringLiteral("a halftone"));
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

QStringList postScript(const File& file)
{
    QStringList faults;
    visitDicts(file, [&](Handle owner, Handle dict) {
        if (owner.isStream() && isName(dict.getKey("/Subtype"), "/PS"))
            faults << named(owner, QStringLiteral("a PostScript object"));
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

} // namespace

const std::vector<Clause>& graphicsClauses()
{
    static const std::vector<Clause> all{
        {"6.2.2", "known operators, resources of one's own, no inline images", content},
        {"6.2.3", "an output intent with a profile", outputIntent},
        {"6.2.3", "one profile, in the file", intents},
        {"6.2.4.3", "device colours fit the output intent", colours},
        {"6.2.4", "no inks, no other profiles", spaces},
        {"6.2.5", "no TR, no HTP", graphicsStates},
        {"6.2.5", "no halftones", halftones},
        {"6.2.8", "images: no interpolation, no alternates, known bits", images},
        {"6.2.9", "forms: no OPI, PS, Ref", forms},
        {"6.2.9", "no PostScript", postScript},
        {"6.2.10", "known ways to blend", blending},
    };
    return all;
}

} // namespace wainscot::archive
