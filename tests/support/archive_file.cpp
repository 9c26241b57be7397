#include "tests/support/archive_file.h"

#include <qpdf/QPDFPageDocumentHelper.hh>
#include <qpdf/QPDFPageObjectHelper.hh>

namespace wainscot::archive {

QString named(Handle object, const QString& what)
{
    return QStringLiteral("object %1: %2").arg(object.getObjectID()).arg(what);
}

void visitValues(const File& file, const std::function<void(Handle)>& visit)
{
    std::function<void(Handle)> walk = [&](Handle value) {
        visit(value);
        if (value.isArray()) {
            for (int i = 0; i < value.getArrayNItems(); ++i) {
                if (!value.getArrayItem(i).isIndirect())
                    walk(value.getArrayItem(i));
            }
        } else if (value.isDictionary() || value.isStream()) {
            Handle dict = value.isStream() ? value.getDict() : value;
            for (const std::string& key : dict.getKeys()) {
                if (!dict.getKey(key).isIndirect())
                    walk(dict.getKey(key));
            }
        }
    };
    for (Handle object : file.pdf->getAllObjects())
        walk(object);
    walk(file.pdf->getTrailer());
}

void visitDicts(const File& file, const std::function<void(Handle owner, Handle dict)>& visit)
{
    visitValues(file, [&](Handle value) {
        if (value.isStream())
            visit(value, value.getDict());
        else if (value.isDictionary())
            visit(value, value);
    });
}

bool isName(Handle value, const char* name)
{
    return value.isName() && value.getName() == name;
}

QStringList filtersOf(Handle stream)
{
    QStringList all;
    Handle filter = stream.getDict().getKey("/Filter");
    if (filter.isName())
        all << QString::fromStdString(filter.getName());
    for (int i = 0; filter.isArray() && i < filter.getArrayNItems(); ++i)
        all << QString::fromStdString(filter.getArrayItem(i).getName());
    return all;
}

void visitContents(
    const File& file, const std::function<void(const Operators&, Handle resources)>& visit)
{
    for (auto& page : QPDFPageDocumentHelper(*file.pdf).getAllPages()) {
        Operators words;
        page.parseContents(&words);
        visit(words, page.getAttribute("/Resources", false));
    }
    for (Handle object : file.pdf->getAllObjects()) {
        if (!object.isStream() || !isName(object.getDict().getKey("/Subtype"), "/Form"))
            continue;
        Operators words;
        Handle::parseContentStream(object, &words);
        visit(words, object.getDict().getKey("/Resources"));
    }
}

void visitFonts(const File& file, const std::function<void(Handle)>& visit)
{
    visitDicts(file, [&](Handle, Handle dict) {
        if (isName(dict.getKey("/Type"), "/Font"))
            visit(dict);
    });
}

Handle programOf(Handle font)
{
    Handle descriptor = font.getKey("/FontDescriptor");
    for (const char* key : {"/FontFile", "/FontFile2", "/FontFile3"}) {
        if (descriptor.isDictionary() && descriptor.hasKey(key))
            return descriptor.getKey(key);
    }
    return Handle::newNull();
}

std::string contentOf(Handle stream)
{
    const auto data = stream.getStreamData();
    return {reinterpret_cast<const char*>(data->getBuffer()), data->getSize()};
}

QByteArray packetOf(const File& file)
{
    Handle metadata = file.pdf->getRoot().getKey("/Metadata");
    if (!metadata.isStream())
        return {};
    const auto data = metadata.getStreamData();
    return {reinterpret_cast<const char*>(data->getBuffer()), qsizetype(data->getSize())};
}

} // namespace wainscot::archive
