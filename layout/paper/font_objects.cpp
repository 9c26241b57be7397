#include "layout/paper/font_objects.h"

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

struct Shown {
    double width = 0;
    QString text;
};

// By code, ascending: the order in which widths and texts are listed.
std::map<unsigned, Shown> shownCodes(const FontFace& face)
{
    std::map<unsigned, Shown> codes;
    for (const auto& [glyph, meaning] : face.used())
        codes[face.codeOf(glyph)] = {face.advance(glyph), meaning.text};
    return codes;
}

std::string widthArray(const std::map<unsigned, Shown>& codes)
{
    std::string widths = "[";
    unsigned expected = 0;
    bool open = false;
    for (const auto& [code, shown] : codes) {
        if (!open || code != expected)
            widths += (open ? "] " : " ") + std::to_string(code) + " [";
        else
            widths += ' ';
        widths += number(shown.width);
        open = true;
        expected = code + 1;
    }
    return widths + (open ? "] ]" : "]");
}

std::string toUnicodeMap(const std::map<unsigned, Shown>& codes)
{
    std::vector<std::string> lines;
    for (const auto& [code, shown] : codes) {
        if (!shown.text.isEmpty())
            lines.push_back("<" + hexCode(code) + "> <" + utf16Hex(shown.text) + ">\n");
    }
    std::string map = "/CIDInit /ProcSet findresource begin\n12 dict begin\nbegincmap\n"
                      "/CIDSystemInfo << /Registry (Adobe) /Ordering (UCS) /Supplement 0 >> def\n"
                      "/CMapName /Adobe-Identity-UCS def\n/CMapType 2 def\n"
                      "1 begincodespacerange\n<0000> <FFFF>\nendcodespacerange\n";
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

Handle descriptor(QPDF& file, const FontFace& face, const std::string& name, Handle program)
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

void fillIn(QPDF& file, FontObjects::Entry& entry)
{
    const std::string program = entry.face.subset();
    if (program.empty())
        throw std::runtime_error("the font " + entry.face.postScriptName() + " cannot be embedded");
    const std::string name = "/" + subsetTag(program) + "+" + entry.face.postScriptName();
    const auto codes = shownCodes(entry.face);
    const bool trueType = entry.face.outlines() == Outlines::TrueType;

    Handle descendant = Handle::parse(
        "<< /Type /Font /CIDSystemInfo << /Registry (Adobe) /Ordering (Identity) /Supplement 0 >>"
        " /W "
        + widthArray(codes) + " >>");
    descendant.replaceKey(
        "/Subtype", Handle::newName(trueType ? "/CIDFontType2" : "/CIDFontType0"));
    if (trueType)
        descendant.replaceKey("/CIDToGIDMap", Handle::newName("/Identity"));
    descendant.replaceKey("/BaseFont", Handle::newName(name));
    descendant.replaceKey("/FontDescriptor",
        descriptor(file, entry.face, name, programStream(file, entry.face, program)));

    Handle& font = entry.object;
    font.replaceKey("/Type", Handle::newName("/Font"));
    font.replaceKey("/Subtype", Handle::newName("/Type0"));
    font.replaceKey("/Encoding", Handle::newName("/Identity-H"));
    font.replaceKey("/BaseFont", Handle::newName(trueType ? name : name + "-Identity-H"));
    font.replaceKey("/DescendantFonts", Handle::newArray({file.makeIndirectObject(descendant)}));
    font.replaceKey("/ToUnicode", Handle::newStream(&file, toUnicodeMap(codes)));
}

} // namespace

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
        fillIn(m_file, *entry);
}

bool FontObjects::showsMissingGlyph() const
{
    return std::any_of(m_entries.begin(), m_entries.end(), [](const auto& known) {
        return known.second->face.used().count(0) > 0;
    });
}

} // namespace wainscot::pdf
