#include "layout/paper/font_objects.h"

#include "layout/paper/drawn_font.h"
#include "layout/paper/pdf_syntax.h"

#include <QCryptographicHash>

#include <algorithm>
#include <stdexcept>

namespace wainscot::pdf {

namespace {

using Handle = QPDFObjectHandle;

// What tells two faces apart whatever their size: names, weight, and the head table, which holds a
// check sum over the whole font.
QByteArray keyOf(const QRawFont& font)
{
    return font.familyName().toUtf8() + '|' + font.styleName().toUtf8() + '|'
        + QByteArray::number(font.weight()) + '|' + font.fontTable("head") + font.fontTable("maxp");
}

// Six capital letters that mark a subset (ISO 32000-1, 9.6.4), from its bytes, so that the same
// pages give the same file.
std::string subsetTag(const std::string& program)
{
    const QByteArray digest = QCryptographicHash::hash(
        QByteArrayView(program.data(), static_cast<qsizetype>(program.size())),
        QCryptographicHash::Sha256);
    std::string tag;
    for (int i = 0; i < 6; ++i)
        tag += static_cast<char>('A' + static_cast<std::uint8_t>(digest[i]) % 26);
    return tag;
}

using Codes = std::map<FontFace::Code, FontFace::Shown>;

std::string widthArray(const FontFace& face)
{
    std::string widths = "[";
    unsigned expected = 0;
    bool open = false;
    for (const auto& [code, shown] : face.codes()) {
        if (!open || code != expected)
            widths += (open ? "] " : " ") + std::to_string(code) + " [";
        else
            widths += ' ';
        widths += number(face.advance(shown.glyph));
        open = true;
        expected = code + 1U;
    }
    return widths + (open ? "] ]" : "]");
}

Handle descriptor(QPDF& file, const FontFace& face, const std::string& name, const Handle& program)
{
    const FaceMeasures m = face.measures();
    const bool leans = m.italicAngle != 0;
    Handle dict = Handle::parse("<< /Type /FontDescriptor /StemV 80 >>");
    dict.replaceKey("/FontName", Handle::newName(name));
    dict.replaceKey("/Flags", Handle::newInteger(leans ? 4 + 64 : 4)); // symbolic, italic
    dict.replaceKey("/ItalicAngle", Handle::newReal(number(m.italicAngle)));
    dict.replaceKey("/Ascent", Handle::newReal(number(m.ascent)));
    dict.replaceKey("/Descent", Handle::newReal(number(m.descent)));
    dict.replaceKey("/CapHeight", Handle::newReal(number(m.capHeight)));
    dict.replaceKey("/FontBBox",
        Handle::newArray({Handle::newReal(number(m.left)),
            Handle::newReal(number(m.bottom)),
            Handle::newReal(number(m.right)),
            Handle::newReal(number(m.top))}));
    const bool trueType = face.outlines() == Outlines::TrueType;
    dict.replaceKey(trueType ? "/FontFile2" : "/FontFile3", program);
    return file.makeIndirectObject(dict);
}

Handle programStream(QPDF& file, const FontFace& face, const std::string& program)
{
    Handle stream = Handle::newStream(&file, program);
    if (face.outlines() == Outlines::TrueType)
        stream.getDict().replaceKey(
            "/Length1", Handle::newInteger(static_cast<long long>(program.size())));
    else
        stream.getDict().replaceKey("/Subtype", Handle::newName("/CIDFontType0C"));
    return stream;
}

// Which glyph a code shows: as long as every code is its glyph's number that need not be said.
Handle glyphMap(QPDF& file, const Codes& codes)
{
    std::string map;
    bool identity = true;
    for (const auto& [code, shown] : codes) {
        map.resize(2 * std::size_t(code) + 2, '\0');
        map[2 * std::size_t(code)] = static_cast<char>(shown.glyph >> 8 & 0xffU);
        map[2 * std::size_t(code) + 1] = static_cast<char>(shown.glyph & 0xffU);
        identity = identity && code == shown.glyph;
    }
    return identity ? Handle::newName("/Identity") : Handle::newStream(&file, map);
}

void fillInEmbedded(QPDF& file, FontObjects::Entry& entry)
{
    const FontFace& face = entry.face;
    const std::string program = face.subset();
    if (program.empty())
        throw std::runtime_error("the font " + face.postScriptName() + " cannot be embedded");
    const std::string name = "/" + subsetTag(program) + "+" + face.postScriptName();
    const bool trueType = face.outlines() == Outlines::TrueType;

    Handle descendant = Handle::parse(
        "<< /Type /Font /CIDSystemInfo << /Registry (Adobe) /Ordering (Identity) /Supplement 0 >>"
        " /W "
        + widthArray(face) + " >>");
    descendant.replaceKey(
        "/Subtype", Handle::newName(trueType ? "/CIDFontType2" : "/CIDFontType0"));
    if (trueType)
        descendant.replaceKey("/CIDToGIDMap", glyphMap(file, face.codes()));
    descendant.replaceKey("/BaseFont", Handle::newName(name));
    descendant.replaceKey(
        "/FontDescriptor", descriptor(file, face, name, programStream(file, face, program)));

    Handle& font = entry.object;
    font.replaceKey("/Type", Handle::newName("/Font"));
    font.replaceKey("/Subtype", Handle::newName("/Type0"));
    font.replaceKey("/Encoding", Handle::newName("/Identity-H"));
    font.replaceKey("/BaseFont", Handle::newName(trueType ? name : name + "-Identity-H"));
    font.replaceKey("/DescendantFonts", Handle::newArray({file.makeIndirectObject(descendant)}));
    font.replaceKey("/ToUnicode", Handle::newStream(&file, toUnicodeMap(face)));
}

} // namespace

std::string toUnicodeMap(const FontFace& face)
{
    const bool oneByte = face.outlines() == Outlines::Drawn;
    std::vector<std::string> lines;
    for (const auto& [code, shown] : face.codes()) {
        if (!shown.text.isEmpty())
            lines.push_back("<" + face.spelled(code) + "> <" + utf16Hex(shown.text) + ">\n");
    }
    std::string map = "/CIDInit /ProcSet findresource begin\n12 dict begin\nbegincmap\n"
                      "/CIDSystemInfo << /Registry (Adobe) /Ordering (UCS) /Supplement 0 >> def\n"
                      "/CMapName /Adobe-Identity-UCS def\n/CMapType 2 def\n"
                      "1 begincodespacerange\n"
        + std::string(oneByte ? "<00> <FF>" : "<0000> <FFFF>") + "\nendcodespacerange\n";
    constexpr std::size_t atOnce = 100; // a CMap section holds no more
    for (std::size_t from = 0; from < lines.size(); from += atOnce) {
        const std::size_t to = std::min(lines.size(), from + atOnce);
        map += std::to_string(to - from) + " beginbfchar\n";
        for (std::size_t i = from; i < to; ++i)
            map += lines[i];
        map += "endbfchar\n";
    }
    return map + "endcmap\nCMapName currentdict /CMap defineresource pop\nend\nend\n";
}

FontObjects::FontObjects(QPDF& file)
    : m_file(file)
{
}

FontObjects::Entry& FontObjects::entry(const QRawFont& font)
{
    QByteArray key = keyOf(font);
    const auto found = std::find_if(
        m_entries.begin(), m_entries.end(), [&](const auto& known) { return known.first == key; });
    if (found != m_entries.end())
        return *found->second;
    auto made = std::unique_ptr<Entry>(new Entry{FontFace(font),
        "/F" + std::to_string(m_entries.size() + 1),
        m_file.makeIndirectObject(Handle::newDictionary())});
    return *m_entries.emplace_back(std::move(key), std::move(made)).second;
}

void FontObjects::embed()
{
    for (auto& [key, entry] : m_entries)
        entry->face.outlines() == Outlines::Drawn ? fillInDrawn(m_file, entry->object, entry->face)
                                                  : fillInEmbedded(m_file, *entry);
}

bool FontObjects::showsMissingGlyph() const
{
    return std::any_of(m_entries.begin(), m_entries.end(), [](const auto& known) {
        const FontFace& face = known.second->face;
        const auto isMissing = [&face](const auto& code) {
            const auto& [glyph, text] = code.second;
            // A face of pictures (colour emoji) has no outlines to draw.
            const bool invisible = face.outlines() == Outlines::Drawn && !text.trimmed().isEmpty()
                && face.outline(glyph).isEmpty();
            return glyph == 0 || invisible;
        };
        return std::any_of(face.codes().begin(), face.codes().end(), isMissing);
    });
}

} // namespace wainscot::pdf
