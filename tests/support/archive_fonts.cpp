// Fonts (6.2.11).
#include "tests/support/archive_clauses.h"

#include <QRawFont>

#include <cmath>

namespace wainscot::archive {

namespace {

// Of every font that a page or form names.
void visitNamedFonts(const File& file, const std::function<void(Handle)>& visit)
{
    visitDicts(file, [&](Handle, Handle dict) {
        Handle fonts = dict.getKey("/Resources").isDictionary()
            ? dict.getKey("/Resources").getKey("/Font")
            : Handle::newNull();
        if (!fonts.isDictionary())
            return;
        for (const std::string& key : fonts.getKeys())
            visit(fonts.getKey(key));
    });
}

QStringList fontDicts(const File& file)
{
    static const std::set<std::string> kinds{"/Type1", "/MMType1", "/TrueType", "/Type3", "/Type0"};
    QStringList faults;
    visitNamedFonts(file, [&](Handle font) {
        const bool known =
            font.getKey("/Subtype").isName() && kinds.count(font.getKey("/Subtype").getName()) > 0;
        if (!isName(font.getKey("/Type"), "/Font"))
            faults << named(font, QStringLiteral("a font without type"));
        if (!known)
            faults << named(font, QStringLiteral("an unknown kind of font"));
        if (!isName(font.getKey("/Subtype"), "/Type3") && !font.getKey("/BaseFont").isName())
            faults << named(font, QStringLiteral("no BaseFont"));
        if (isName(font.getKey("/Subtype"), "/TrueType"))
            faults << named(font, QStringLiteral("a simple TrueType font"));
        if (isName(font.getKey("/Subtype"), "/Type0")
            && !isName(font.getKey("/Encoding"), "/Identity-H"))
            faults << named(font, QStringLiteral("codes by another map"));
        if (!isName(font.getKey("/Subtype"), "/Type3"))
            return;
        if (!font.getKey("/FirstChar").isInteger())
            faults << named(font, QStringLiteral("no FirstChar"));
        if (!font.getKey("/LastChar").isInteger())
            faults << named(font, QStringLiteral("no LastChar"));
        if (font.getKey("/FirstChar").isInteger() && font.getKey("/LastChar").isInteger()
            && (!font.getKey("/Widths").isArray()
                || font.getKey("/Widths").getArrayNItems()
                    != font.getKey("/LastChar").getIntValueAsInt()
                        - font.getKey("/FirstChar").getIntValueAsInt() + 1))
            faults << named(font, QStringLiteral("widths of another number"));
    });
    visitDicts(file, [&](Handle owner, Handle dict) {
        for (const char* key : {"/CharSet", "/CIDSet"}) {
            if (isName(dict.getKey("/Type"), "/FontDescriptor") && dict.hasKey(key))
                faults << named(owner, QString::fromLatin1(key));
        }
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

QStringList glyphs(const File& file)
{
    QStringList faults;
    visitContents(file, [&](const Operators& words, Handle resources) {
        for (const auto& [name, codes] : words.codes) {
            Handle inner = resources.getKey("/Font").getKey(name).getKey("/DescendantFonts");
            Handle font = inner.isArray() ? inner.getArrayItem(0) : Handle::newNull();
            if (!font.isDictionary() || !isName(font.getKey("/Subtype"), "/CIDFontType2")
                || !programOf(font).isStream())
                continue;
            const std::string program = contentOf(programOf(font));
            const QRawFont raw(
                QByteArray(program.data(), qsizetype(program.size())), 100, QFont::PreferNoHinting);
            const QByteArray table = raw.fontTable("maxp");
            const int count = table.size() < 6
                ? 0
                : static_cast<unsigned char>(table[4]) * 256 + static_cast<unsigned char>(table[5]);
            if (!codes.empty() && *codes.rbegin() >= count)
                faults << named(font, QStringLiteral("a glyph that is not there"));
        }
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

} // namespace

const std::vector<Clause>& fontsClauses()
{
    static const std::vector<Clause> all{
        {"6.2.11", "fonts as ISO 32000-1 describes them", fontDicts},
        {"6.2.11.3.2", "TrueType fonts map codes to glyphs", glyphMaps},
        {"6.2.11.4.1", "fonts are embedded", embedding},
        {"6.2.11.4.1", "glyphs are there", glyphs},
        {"6.2.11.5", "widths agree within one unit", widths},
        {"6.2.11.7.2", "every font tells its letters", unicode},
        {"6.2.11.8", "no .notdef", missingGlyphs},
    };
    return all;
}

} // namespace wainscot::archive
