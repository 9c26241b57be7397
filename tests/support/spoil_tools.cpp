#include "tests/support/spoil_tools.h"

#include <qpdf/QPDFPageDocumentHelper.hh>

#include <stdexcept>

namespace wainscot::archive {

Handle firstOf(QPDF& pdf, const char* key, const char* name)
{
    for (Handle object : pdf.getAllObjects()) {
        Handle dict = object.isStream() ? object.getDict() : object;
        if (dict.isDictionary() && dict.getKey(key).isName() && dict.getKey(key).getName() == name)
            return object;
    }
    throw std::runtime_error(std::string("the file has no ") + name);
}

Handle pageOf(QPDF& pdf)
{
    return QPDFPageDocumentHelper(pdf).getAllPages().front().getObjectHandle();
}

void putState(QPDF& pdf, const char* state)
{
    Handle resources = pageOf(pdf).getKey("/Resources");
    resources.replaceKey(
        "/ExtGState", Handle::parse("<< /G1 << /Type /ExtGState " + std::string(state) + " >> >>"));
}

void addContent(QPDF& pdf, const std::string& words)
{
    Handle contents = pageOf(pdf).getKey("/Contents");
    const auto data = contents.getStreamData();
    const std::string before(reinterpret_cast<const char*>(data->getBuffer()), data->getSize());
    contents.replaceStreamData(before + words, Handle::newNull(), Handle::newNull());
}

void replaceIn(Handle stream, const std::string& what, const std::string& with)
{
    const auto data = stream.getStreamData();
    std::string text(reinterpret_cast<const char*>(data->getBuffer()), data->getSize());
    const std::size_t at = text.find(what);
    if (at == std::string::npos)
        throw std::runtime_error("the stream has no " + what);
    text.replace(at, what.size(), with);
    stream.replaceStreamData(text, Handle::newNull(), Handle::newNull());
}

void addAnnotation(QPDF& pdf, const std::string& words)
{
    pageOf(pdf).replaceKey("/Annots", Handle::parse("[ << /Type /Annot " + words + " >> ]"));
}

std::string nested(int depth)
{
    std::string words = "\n";
    for (int i = 0; i < depth; ++i)
        words += "q ";
    for (int i = 0; i < depth; ++i)
        words += "Q ";
    return words;
}

Handle profileOf(QPDF& pdf)
{
    return pdf.getRoot().getKey("/OutputIntents").getArrayItem(0).getKey("/DestOutputProfile");
}

Handle packet(QPDF& pdf)
{
    return pdf.getRoot().getKey("/Metadata");
}

void setFilter(QPDF& pdf, const char* name)
{
    firstOf(pdf, "/Subtype", "/Image").getDict().replaceKey("/Filter", Handle::newName(name));
}

void setSpace(QPDF& pdf, const char* space)
{
    pageOf(pdf)
        .getKey("/Resources")
        .replaceKey("/ColorSpace", Handle::parse("<< /Cs1 " + std::string(space) + " >>"));
}

void setLayers(QPDF& pdf, const char* words)
{
    pdf.getRoot().replaceKey(
        "/OCProperties", Handle::parse("<< /OCGs [] " + std::string(words) + " >>"));
}

void putForm(QPDF& pdf, const char* kind, const char* key, const char* value)
{
    Handle form = Handle::newStream(&pdf, "");
    form.getDict().replaceKey("/Subtype", Handle::newName(kind));
    form.getDict().replaceKey(key, Handle::parse(value));
    pageOf(pdf).getKey("/Resources").getKey("/XObject").replaceKey("/Fx", form);
}

Handle fontsOf(QPDF& pdf)
{
    return pageOf(pdf).getKey("/Resources").getKey("/Font");
}

Handle fontOf(QPDF& pdf)
{
    return fontsOf(pdf).getKey(*fontsOf(pdf).getKeys().begin());
}

void putFont(QPDF& pdf, const char* words)
{
    Handle font = Handle::parse("<< /Type /Font " + std::string(words) + " >>");
    font.replaceKey("/FontDescriptor", firstOf(pdf, "/Type", "/FontDescriptor"));
    fontsOf(pdf).replaceKey("/Fx", font);
}

void putInDescriptor(QPDF& pdf, const char* key)
{
    firstOf(pdf, "/Type", "/FontDescriptor").replaceKey(key, Handle::newString("a"));
}

std::string trueTypeName(QPDF& pdf)
{
    for (const std::string& name : fontsOf(pdf).getKeys()) {
        Handle inner = fontsOf(pdf).getKey(name).getKey("/DescendantFonts");
        if (inner.isArray()
            && inner.getArrayItem(0).getKey("/Subtype").getName() == "/CIDFontType2")
            return name;
    }
    throw std::runtime_error("no TrueType font");
}

void setLook(QPDF& pdf)
{
    Handle looks = pageOf(pdf).getKey("/Annots").getArrayItem(0).getKey("/AP");
    Handle form = Handle::newStream(&pdf, "");
    form.getDict().replaceKey("/Subtype", Handle::newName("/Form"));
    for (const std::string& key : looks.getKeys())
        looks.replaceKey(key, form);
}

} // namespace wainscot::archive
