// What can be pressed, filled in or switched (6.3 to 6.5, 6.9 to 6.11).
#include "tests/support/archive_clauses.h"

#include <set>

namespace wainscot::archive {

namespace {

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

QStringList triggers(const File& file)
{
    QStringList faults;
    visitDicts(file, [&](Handle owner, Handle dict) {
        if (dict.hasKey("/AA"))
            faults << named(owner, QStringLiteral("AA"));
    });
    return faults;
}

QStringList fileTriggers(const File& file)
{
    return file.pdf->getRoot().hasKey("/AA") ? QStringList{QStringLiteral("of the whole file")}
                                             : QStringList();
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

const std::vector<Clause>& actsClauses()
{
    static const std::vector<Clause> all{
        {"6.3", "annotations print and look one way", annotations},
        {"6.3", "known annotations", furtherAnnotations},
        {"6.4", "no XFA, no NeedAppearances", formFields},
        {"6.5.1", "no script, no launch", actions},
        {"6.5.1", "known named actions", furtherActions},
        {"6.5.2", "no triggers", triggers},
        {"6.5.2", "no triggers of the file", fileTriggers},
        {"6.9", "layers have a name and stay", layers},
        {"6.10", "no presentations", presentations},
        {"6.11", "no requirements, nothing to render first, one set of layers", catalogue},
    };
    return all;
}

} // namespace wainscot::archive
