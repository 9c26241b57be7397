#include "layout/paper/drawn_font.h"

#include "layout/paper/font_objects.h"
#include "layout/paper/pdf_syntax.h"

namespace wainscot::pdf {

namespace {

using Handle = QPDFObjectHandle;

std::string pointOf(const QPainterPath::Element& element)
{
    return number(element.x) + " " + number(element.y) + " ";
}

// Width, extent, and the outline filled.
std::string procedure(const FontFace& face, quint32 glyph)
{
    const QPainterPath path = face.outline(glyph);
    const QRectF box = path.boundingRect();
    std::string text = number(face.advance(glyph)) + " 0 " + number(box.left()) + " "
        + number(box.top()) + " " + number(box.right()) + " " + number(box.bottom()) + " d1\n";
    for (int i = 0; i < path.elementCount(); ++i) {
        const QPainterPath::Element element = path.elementAt(i);
        if (element.isMoveTo())
            text += pointOf(element) + "m\n";
        else if (element.isLineTo())
            text += pointOf(element) + "l\n";
        else if (element.isCurveTo()) { // with the two elements after it
            text += pointOf(element) + pointOf(path.elementAt(i + 1))
                + pointOf(path.elementAt(i + 2)) + "c\n";
            i += 2;
        }
    }
    return text + (path.isEmpty() ? "" : "f\n");
}

} // namespace

void fillInDrawn(QPDF& file, Handle& font, const FontFace& face)
{
    Handle procedures = Handle::newDictionary();
    Handle widths = Handle::newArray();
    Handle differences = Handle::newArray({Handle::newInteger(1)});
    QRectF box;
    for (const auto& [code, shown] : face.codes()) { // 1, 2, 3 ...
        const std::string name = "/g" + std::to_string(code);
        procedures.replaceKey(name, Handle::newStream(&file, procedure(face, shown.glyph)));
        differences.appendItem(Handle::newName(name));
        widths.appendItem(Handle::newReal(number(face.advance(shown.glyph))));
        box |= face.outline(shown.glyph).boundingRect();
    }
    font.replaceKey("/Type", Handle::newName("/Font"));
    font.replaceKey("/Subtype", Handle::newName("/Type3"));
    font.replaceKey("/FontBBox",
        Handle::newArray({Handle::newReal(number(box.left())),
            Handle::newReal(number(box.top())),
            Handle::newReal(number(box.right())),
            Handle::newReal(number(box.bottom()))}));
    font.replaceKey("/FontMatrix", Handle::parse("[0.001 0 0 0.001 0 0]"));
    font.replaceKey("/CharProcs", procedures);
    font.replaceKey("/Resources", Handle::newDictionary());
    Handle encoding = Handle::parse("<< /Type /Encoding >>");
    encoding.replaceKey("/Differences", differences);
    font.replaceKey("/Encoding", encoding);
    font.replaceKey("/FirstChar", Handle::newInteger(1));
    font.replaceKey("/LastChar", Handle::newInteger(static_cast<long long>(face.codes().size())));
    font.replaceKey("/Widths", widths);
    font.replaceKey("/ToUnicode", Handle::newStream(&file, toUnicodeMap(face)));
}

} // namespace wainscot::pdf
