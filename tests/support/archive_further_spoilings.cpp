#include "tests/support/archive_spoilings.h"

#include "tests/support/spoil_tools.h"

namespace wainscot::archive {

const std::vector<Spoiling>& furtherSpoilings()
{
    static const std::vector<Spoiling> all{
        {"6.1.6",
            "half a byte",
            [](QPDF& pdf) { addContent(pdf, "\n/Artifact << /X <ABC> >> BDC EMC\n"); }},
        {"6.1.6",
            "no digit",
            [](QPDF& pdf) { addContent(pdf, "\n/Artifact << /X <00GG> >> BDC EMC\n"); }},
        {"6.1.7", "a filter of our own", [](QPDF& pdf) { setFilter(pdf, "/SparkleDecode"); }},
        {"6.1.7", "JPEG 2000", [](QPDF& pdf) { setFilter(pdf, "/JPXDecode"); }},
        {"6.1.8",
            "a broken name",
            [](QPDF& pdf) {
                firstOf(pdf, "/Subtype", "/Type0")
                    .replaceKey("/BaseFont", Handle::newName("/A\xC3\x28"));
            }},
        {"6.1.13",
            "a large integer",
            [](QPDF& pdf) { pdf.getRoot().replaceKey("/X", Handle::newInteger(3000000000LL)); }},
        {"6.1.13",
            "a large number",
            [](QPDF& pdf) {
                pdf.getRoot().replaceKey("/X", Handle::newReal(std::string(40, '9') + ".5"));
            }},
        {"6.1.13",
            "a tiny number",
            [](QPDF& pdf) {
                pdf.getRoot().replaceKey("/X", Handle::newReal("0." + std::string(40, '0') + "1"));
            }},
        {"6.1.13",
            "a page too narrow",
            [](QPDF& pdf) { pageOf(pdf).replaceKey("/MediaBox", Handle::parse("[0 0 2 100]")); }},
        {"6.2.2", "an operator", [](QPDF& pdf) { addContent(pdf, "\nBX sparkle EX\n"); }},
        {"6.2.2",
            "an inline image",
            [](QPDF& pdf) { addContent(pdf, "\nBI /W 1 /H 1 /BPC 8 /CS /RGB ID abc EI\n"); }},
        {"6.2.2", "an intent", [](QPDF& pdf) { addContent(pdf, "\n/Sparkling ri\n"); }},
        {"6.2.2",
            "resources above",
            [](QPDF& pdf) {
                Handle page = pageOf(pdf);
                page.getKey("/Parent").replaceKey("/Resources", page.getKey("/Resources"));
                page.removeKey("/Resources");
            }},
        {"6.2.3",
            "a profile of cameras",
            [](QPDF& pdf) { replaceIn(profileOf(pdf), "mntr", "scnr"); }},
        {"6.2.3",
            "two profiles",
            [](QPDF& pdf) {
                Handle intents = pdf.getRoot().getKey("/OutputIntents");
                Handle second = intents.getArrayItem(0).shallowCopy();
                second.replaceKey(
                    "/DestOutputProfile", Handle::newStream(&pdf, std::string(200, 'x')));
                intents.appendItem(second);
            }},
        {"6.2.3",
            "a profile elsewhere",
            [](QPDF& pdf) {
                pdf.getRoot()
                    .getKey("/OutputIntents")
                    .getArrayItem(0)
                    .replaceKey("/DestOutputProfileRef", Handle::newDictionary());
            }},
        {"6.2.4", "ICC", [](QPDF& pdf) { setSpace(pdf, "[/ICCBased null]"); }},
        {"6.2.4",
            "one ink",
            [](QPDF& pdf) { setSpace(pdf, "[/Separation /Gold /DeviceRGB null]"); }},
        {"6.2.4", "inks", [](QPDF& pdf) { setSpace(pdf, "[/DeviceN [/A /B] /DeviceRGB null]"); }},
        {"6.2.5", "TR2", [](QPDF& pdf) { putState(pdf, "/TR2 /Identity"); }},
        {"6.2.5", "a halftone", [](QPDF& pdf) { putState(pdf, "/HT << /HalftoneType 6 >>"); }},
        {"6.2.8",
            "a print server's",
            [](QPDF& pdf) {
                firstOf(pdf, "/Subtype", "/Image")
                    .getDict()
                    .replaceKey("/OPI", Handle::newDictionary());
            }},
        {"6.2.8",
            "three bits",
            [](QPDF& pdf) {
                firstOf(pdf, "/Subtype", "/Image")
                    .getDict()
                    .replaceKey("/BitsPerComponent", Handle::newInteger(3));
            }},
        {"6.2.9", "a form of PostScript", [](QPDF& pdf) { putForm(pdf, "/Form", "/PS", "<< >>"); }},
        {"6.2.9", "a reference", [](QPDF& pdf) { putForm(pdf, "/Form", "/Ref", "<< >>"); }},
        {"6.2.9", "PostScript", [](QPDF& pdf) { putForm(pdf, "/PS", "/X", "true"); }},
        {"6.2.11", "no type", [](QPDF& pdf) { fontOf(pdf).removeKey("/Type"); }},
        {"6.2.11", "no BaseFont", [](QPDF& pdf) { fontOf(pdf).removeKey("/BaseFont"); }},
        {"6.2.11", "a kind", [](QPDF& pdf) { putFont(pdf, "/Subtype /Sparkle /BaseFont /A"); }},
        {"6.2.11", "simple", [](QPDF& pdf) { putFont(pdf, "/Subtype /TrueType /BaseFont /A"); }},
        {"6.2.11", "no FirstChar", [](QPDF& pdf) { putFont(pdf, "/Subtype /Type3 /LastChar 1"); }},
        {"6.2.11", "no LastChar", [](QPDF& pdf) { putFont(pdf, "/Subtype /Type3 /FirstChar 1"); }},
        {"6.2.11",
            "too few widths",
            [](QPDF& pdf) {
                putFont(pdf, "/Subtype /Type3 /FirstChar 1 /LastChar 3 /Widths [1 2]");
            }},
        {"6.2.11",
            "another map",
            [](QPDF& pdf) {
                fontOf(pdf).replaceKey("/Encoding", Handle::newName("/UniGB-UTF16-H"));
            }},
        {"6.2.11", "CharSet", [](QPDF& pdf) { putInDescriptor(pdf, "/CharSet"); }},
        {"6.2.11", "CIDSet", [](QPDF& pdf) { putInDescriptor(pdf, "/CIDSet"); }},
        {"6.2.11.4.1",
            "a glyph too far",
            [](QPDF& pdf) {
                addContent(pdf, "\nBT " + trueTypeName(pdf) + " 9 Tf <FFF0> Tj ET\n");
            }},
        {"6.2.11.7.2",
            "letter 0",
            [](QPDF& pdf) {
                Handle map = firstOf(pdf, "/Subtype", "/Type0").getKey("/ToUnicode");
                replaceIn(map, "endbfchar", "<0001> <0000>\nendbfchar");
            }},
        {"6.3",
            "an annotation",
            [](QPDF& pdf) {
                addAnnotation(pdf, "/Subtype /Sparkle /F 4 /Rect [0 0 9 9] /AP << /N true >>");
                setLook(pdf);
            }},
        {"6.3",
            "hidden",
            [](QPDF& pdf) { addAnnotation(pdf, "/Subtype /Link /F 6 /Rect [0 0 9 9]"); }},
        {"6.3",
            "a note that turns",
            [](QPDF& pdf) {
                addAnnotation(pdf, "/Subtype /Text /F 4 /Rect [0 0 9 9] /AP << /N true >>");
                setLook(pdf);
            }},
        {"6.3",
            "no look",
            [](QPDF& pdf) { addAnnotation(pdf, "/Subtype /Square /F 4 /Rect [0 0 9 9]"); }},
        {"6.3",
            "two looks",
            [](QPDF& pdf) {
                addAnnotation(
                    pdf, "/Subtype /Square /F 4 /Rect [0 0 9 9] /AP << /N true /D true >>");
                setLook(pdf);
            }},
        {"6.3",
            "a look of looks",
            [](QPDF& pdf) {
                addAnnotation(pdf, "/Subtype /Square /F 4 /Rect [0 0 9 9] /AP << /N << >> >>");
            }},
        {"6.3",
            "a field",
            [](QPDF& pdf) {
                addAnnotation(pdf,
                    "/Subtype /Widget /F 4 /Rect [0 0 9 9] /AP << /N true >> /A << /S /GoTo >>");
                setLook(pdf);
            }},
        {"6.4",
            "looks to be made",
            [](QPDF& pdf) {
                pdf.getRoot().replaceKey(
                    "/AcroForm", Handle::parse("<< /NeedAppearances true /Fields [] >>"));
            }},
        {"6.5.1",
            "a named action",
            [](QPDF& pdf) {
                pdf.getRoot().replaceKey("/OpenAction", Handle::parse("<< /S /Named /N /Print >>"));
            }},
        {"6.5.2",
            "a trigger of the file",
            [](QPDF& pdf) {
                pdf.getRoot().replaceKey("/AA", Handle::parse("<< /WC << /S /GoTo >> >>"));
            }},
        {"6.6.2.1",
            "bytes",
            [](QPDF& pdf) {
                replaceIn(packet(pdf), "<?xpacket begin", "<?xpacket bytes='9' begin");
            }},
        {"6.6.2.1",
            "half a tag",
            [](QPDF& pdf) { replaceIn(packet(pdf), "</rdf:RDF>", "</rdf:RDX>"); }},
        {"6.6.2.3",
            "an extension",
            [](QPDF& pdf) {
                replaceIn(packet(pdf),
                    "xmlns:pdfaid=",
                    "xmlns:pdfaExtension='http://www.aiim.org/pdfa/ns/extension/' xmlns:pdfaid=");
            }},
        {"6.6.2.3",
            "a schema of our own",
            [](QPDF& pdf) {
                replaceIn(packet(pdf), "xmlns:pdfaid=", "xmlns:own='urn:own' xmlns:pdfaid=");
            }},
        {"6.6.2.3",
            "another prefix",
            [](QPDF& pdf) {
                replaceIn(packet(pdf),
                    "xmlns:pdfaid=",
                    "xmlns:idpdfa='http://www.aiim.org/pdfa/ns/id/' xmlns:pdfaid=");
            }},
        {"6.6.4",
            "level C",
            [](QPDF& pdf) {
                replaceIn(packet(pdf), "<pdfaid:conformance>U", "<pdfaid:conformance>C");
            }},
        {"6.9",
            "layers that switch",
            [](QPDF& pdf) { setLayers(pdf, "/D << /Name (a) /AS [] >>"); }},
        {"6.10",
            "another show",
            [](QPDF& pdf) {
                pdf.getRoot().replaceKey(
                    "/Names", Handle::parse("<< /AlternatePresentations << >> >>"));
            }},
        {"6.11",
            "a choice of layers",
            [](QPDF& pdf) { setLayers(pdf, "/D << /Name (a) >> /Configs []"); }},
        {"6.11",
            "an order of layers",
            [](QPDF& pdf) { setLayers(pdf, "/D << /Name (a) /Order [] >>"); }},
        {"6.11",
            "to be rendered",
            [](QPDF& pdf) { pdf.getRoot().replaceKey("/NeedsRendering", Handle::newBool(true)); }},
        {"6.11",
            "requirements",
            [](QPDF& pdf) { pdf.getRoot().replaceKey("/Requirements", Handle::newArray()); }},
    };
    return all;
}

} // namespace wainscot::archive
