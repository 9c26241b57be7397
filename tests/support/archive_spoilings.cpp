#include "tests/support/archive_spoilings.h"

#include "tests/support/spoil_tools.h"

namespace wainscot::archive {

const std::vector<Spoiling>& spoilings()
{
    static const std::vector<Spoiling> all{
        {"6.1.7",
            "LZW",
            [](QPDF& pdf) {
                Handle stream = Handle::newStream(&pdf, "");
                stream.replaceStreamData("\x80\x0b\x60\x50\x22\x0c\x0c\x85\x01",
                    Handle::newName("/LZWDecode"),
                    Handle::newNull());
                pdf.getRoot().replaceKey("/X", stream);
            }},
        {"6.1.7",
            "data outside",
            [](QPDF& pdf) {
                pageOf(pdf)
                    .getKey("/Contents")
                    .getDict()
                    .replaceKey("/F", Handle::newString("a.txt"));
            }},
        {"6.1.13",
            "a page too long",
            [](QPDF& pdf) {
                pageOf(pdf).replaceKey("/MediaBox", Handle::parse("[0 0 14500 100]"));
            }},
        {"6.1.13",
            "a long name",
            [](QPDF& pdf) {
                pdf.getRoot().replaceKey("/X", Handle::newName("/" + std::string(200, 'a')));
            }},
        {"6.1.13",
            "a long string",
            [](QPDF& pdf) {
                pdf.getRoot().replaceKey("/X", Handle::newString(std::string(40000, 'a')));
            }},
        {"6.1.13-q", "29 q", [](QPDF& pdf) { addContent(pdf, nested(29)); }},
        {"6.2.3", "no intent", [](QPDF& pdf) { pdf.getRoot().removeKey("/OutputIntents"); }},
        {"6.2.3",
            "a grey profile",
            [](QPDF& pdf) {
                Handle profile = pdf.getRoot()
                                     .getKey("/OutputIntents")
                                     .getArrayItem(0)
                                     .getKey("/DestOutputProfile");
                replaceIn(profile, "RGB ", "GRAY");
            }},
        {"6.2.4.3",
            "CMYK picture",
            [](QPDF& pdf) {
                firstOf(pdf, "/Subtype", "/Image")
                    .getDict()
                    .replaceKey("/ColorSpace", Handle::newName("/DeviceCMYK"));
            }},
        {"6.2.4.3", "CMYK colour", [](QPDF& pdf) { addContent(pdf, "\n0 0 0 1 k\n"); }},
        {"6.2.5", "TR", [](QPDF& pdf) { putState(pdf, "/TR /Identity"); }},
        {"6.2.5", "HTP", [](QPDF& pdf) { putState(pdf, "/HTP [0 0]"); }},
        {"6.2.8",
            "interpolated",
            [](QPDF& pdf) {
                firstOf(pdf, "/Subtype", "/Image")
                    .getDict()
                    .replaceKey("/Interpolate", Handle::newBool(true));
            }},
        {"6.2.8",
            "alternates",
            [](QPDF& pdf) {
                firstOf(pdf, "/Subtype", "/Image")
                    .getDict()
                    .replaceKey("/Alternates", Handle::newArray());
            }},
        {"6.2.9",
            "PS",
            [](QPDF& pdf) {
                Handle form = Handle::newStream(&pdf, "");
                form.getDict().replaceKey("/Subtype", Handle::newName("/Form"));
                form.getDict().replaceKey("/PS", Handle::newNull());
                form.getDict().replaceKey("/OPI", Handle::newDictionary());
                pageOf(pdf).getKey("/Resources").getKey("/XObject").replaceKey("/Fx", form);
            }},
        {"6.2.10", "an own way to blend", [](QPDF& pdf) { putState(pdf, "/BM /Sparkle"); }},
        {"6.2.11.3.2",
            "no map",
            [](QPDF& pdf) { firstOf(pdf, "/Subtype", "/CIDFontType2").removeKey("/CIDToGIDMap"); }},
        {"6.2.11.4.1",
            "no program",
            [](QPDF& pdf) {
                Handle descriptor = firstOf(pdf, "/Type", "/FontDescriptor");
                descriptor.removeKey("/FontFile2");
                descriptor.removeKey("/FontFile3");
            }},
        {"6.2.11.5",
            "other widths",
            [](QPDF& pdf) {
                Handle widths = firstOf(pdf, "/Subtype", "/CIDFontType2").getKey("/W");
                Handle inner = widths.getArrayItem(1);
                inner.setArrayItem(
                    0, Handle::newInteger(inner.getArrayItem(0).getNumericValue() + 7));
            }},
        {"6.2.11.7.2",
            "no letters",
            [](QPDF& pdf) { firstOf(pdf, "/Subtype", "/Type0").removeKey("/ToUnicode"); }},
        {"6.2.11.8",
            "glyph 0",
            [](QPDF& pdf) {
                const std::string font =
                    *pageOf(pdf).getKey("/Resources").getKey("/Font").getKeys().begin();
                addContent(pdf, "\nBT " + font + " 9 Tf <0000> Tj ET\n");
            }},
        {"6.3",
            "not printed",
            [](QPDF& pdf) { addAnnotation(pdf, "/Subtype /Link /Rect [0 0 9 9]"); }},
        {"6.3",
            "a film",
            [](QPDF& pdf) {
                addAnnotation(pdf, "/Subtype /Movie /F 4 /Rect [0 0 9 9] /AP << /N null >>");
            }},
        {"6.4",
            "XFA",
            [](QPDF& pdf) {
                pdf.getRoot().replaceKey("/AcroForm", Handle::parse("<< /XFA (x) /Fields [] >>"));
            }},
        {"6.5.1",
            "a script",
            [](QPDF& pdf) {
                pdf.getRoot().replaceKey(
                    "/OpenAction", Handle::parse("<< /S /JavaScript /JS (beep) >>"));
            }},
        {"6.5.2",
            "a trigger",
            [](QPDF& pdf) {
                pageOf(pdf).replaceKey("/AA", Handle::parse("<< /O << /S /GoTo >> >>"));
            }},
        {"6.6.2.1", "no XMP", [](QPDF& pdf) { pdf.getRoot().removeKey("/Metadata"); }},
        {"6.6.2.1",
            "an encoding",
            [](QPDF& pdf) {
                replaceIn(pdf.getRoot().getKey("/Metadata"),
                    "<?xpacket begin",
                    "<?xpacket encoding='x' begin");
            }},
        {"6.6.4",
            "part 1",
            [](QPDF& pdf) {
                replaceIn(pdf.getRoot().getKey("/Metadata"), "<pdfaid:part>2", "<pdfaid:part>1");
            }},
        {"6.6.4",
            "part 2 with a file inside",
            [](QPDF& pdf) {
                replaceIn(pdf.getRoot().getKey("/Metadata"), "<pdfaid:part>3", "<pdfaid:part>2");
            },
            true},
        {"6.8",
            "half a name",
            [](QPDF& pdf) { firstOf(pdf, "/Type", "/Filespec").removeKey("/UF"); },
            true},
        {"6.8-3",
            "an attachment of no kind",
            [](QPDF& pdf) { firstOf(pdf, "/Type", "/Filespec").removeKey("/AFRelationship"); },
            true},
        {"6.8-3",
            "an attachment of nothing",
            [](QPDF& pdf) { pdf.getRoot().removeKey("/AF"); },
            true},
        {"6.8-3",
            "an attachment of no type",
            [](QPDF& pdf) {
                firstOf(pdf, "/Type", "/EmbeddedFile").getDict().removeKey("/Subtype");
            },
            true},
        {"6.8-3",
            "an attachment of no day",
            [](QPDF& pdf) {
                firstOf(pdf, "/Type", "/EmbeddedFile")
                    .getDict()
                    .getKey("/Params")
                    .removeKey("/ModDate");
            },
            true},
        {"6.9",
            "layers",
            [](QPDF& pdf) {
                pdf.getRoot().replaceKey("/OCProperties", Handle::parse("<< /OCGs [] /D << >> >>"));
            }},
        {"6.10",
            "a show",
            [](QPDF& pdf) { pageOf(pdf).replaceKey("/PresSteps", Handle::newDictionary()); }},
    };
    return all;
}

} // namespace wainscot::archive
