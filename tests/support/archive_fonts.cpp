#include "tests/support/archive_fonts.h"

#include <QRawFont>

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

} // namespace

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

} // namespace wainscot::archive
