#include "layout/paper/attachment.h"

#include "layout/paper/qpdf.h"

namespace wainscot::pdf {

namespace {

using Handle = QPDFObjectHandle;

Handle embedded(QPDF& file, const Attachment& attachment, const QDateTime& changed)
{
    Handle stream = Handle::newStream(&file, attachment.bytes.toStdString());
    Handle dict = stream.getDict();
    dict.replaceKey("/Type", Handle::newName("/EmbeddedFile"));
    // A slash inside a name is written by its number when the file is.
    dict.replaceKey("/Subtype", Handle::newName("/" + attachment.mimeType.toStdString()));
    Handle parameters = Handle::newDictionary();
    parameters.replaceKey("/Size", Handle::newInteger(attachment.bytes.size()));
    const Handle date = Handle::newString(pdfDate(changed).toStdString());
    parameters.replaceKey("/CreationDate", date);
    parameters.replaceKey("/ModDate", date);
    dict.replaceKey("/Params", parameters);
    return stream;
}

} // namespace

QString pdfDate(const QDateTime& when)
{
    const int minutes = when.offsetFromUtc() / 60;
    return when.toString(QStringLiteral("'D:'yyyyMMddHHmmss"))
        + QStringLiteral("%1%2'%3'")
              .arg(minutes < 0 ? QLatin1Char('-') : QLatin1Char('+'))
              .arg(std::abs(minutes) / 60, 2, 10, QLatin1Char('0'))
              .arg(std::abs(minutes) % 60, 2, 10, QLatin1Char('0'));
}

void writeAttachment(QPDF& file, const Attachment& attachment, const QDateTime& changed)
{
    const Handle stream = embedded(file, attachment, changed);
    const Handle name = Handle::newUnicodeString(attachment.name.toStdString());
    Handle spec = file.makeIndirectObject(Handle::newDictionary());
    spec.replaceKey("/Type", Handle::newName("/Filespec"));
    spec.replaceKey("/F", name);
    spec.replaceKey("/UF", name);
    spec.replaceKey("/Desc", Handle::newUnicodeString(attachment.says.toStdString()));
    spec.replaceKey("/AFRelationship", Handle::newName("/Data"));
    Handle both = Handle::newDictionary();
    both.replaceKey("/F", stream);
    both.replaceKey("/UF", stream);
    spec.replaceKey("/EF", both);
    Handle tree = Handle::newDictionary();
    tree.replaceKey("/Names", Handle::newArray({name, spec}));
    Handle names = Handle::newDictionary();
    names.replaceKey("/EmbeddedFiles", file.makeIndirectObject(tree));
    file.getRoot().replaceKey("/Names", names);
    file.getRoot().replaceKey("/AF", Handle::newArray({spec}));
}

} // namespace wainscot::pdf
