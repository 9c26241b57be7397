#include "layout/paper/pdf_file.h"

#include "layout/paper/document_metadata.h"
#include "layout/paper/output_file.h"
#include "layout/paper/pdf_syntax.h"
#include "layout/paper/qpdf.h"
#include "layout/paper/reused_memory.h"

namespace wainscot::pdf {

namespace {

using Handle = QPDFObjectHandle;

constexpr Mm kMostBleed{25};

// A rectangle of the media as a box of the page.
Handle boxOf(const RectMm& rect, SizeMm media)
{
    const auto real = [](Mm length) { return Handle::newReal(points(length)); };
    return Handle::newArray({real(rect.x),
        real(media.height - rect.bottom()),
        real(rect.right()),
        real(media.height - rect.y)});
}

RectMm whole(SizeMm size)
{
    return {Mm(0), Mm(0), size.width, size.height};
}

std::optional<Error> misuse(
    const QString& path, const std::vector<DisplayList>& lists, const PaperOptions& options)
{
    if (lists.empty())
        return Error{ErrorCode::WrongUse, path, QStringLiteral("there is no panel to print")};
    if (options.bleed < Mm(0) || options.bleed > kMostBleed)
        return Error{ErrorCode::WrongUse,
            path,
            QStringLiteral("a bleed is 0 to %1 mm").arg(kMostBleed.value())};
    for (const DisplayList& list : lists) {
        if (!pageBoxes(list.size, options.bleed, options.cropMarks).fitsPdf())
            return Error{ErrorCode::WrongUse,
                path,
                QStringLiteral("a page is at most 5080 mm long, with bleed and crop marks")};
    }
    return std::nullopt;
}

PaperOptions completed(PaperOptions options, const DisplayList& first)
{
    if (options.title.isEmpty())
        options.title = first.title;
    if (options.language.isEmpty())
        options.language = first.language;
    return options;
}

} // namespace

PdfFile::PdfFile(const PaperOptions& options, const PicturePlan& plan, std::shared_ptr<Spool> spool)
    : m_options(options)
    , m_plan(plan)
    , m_pictures(plan.pictures().size())
    , m_fonts(m_pdf)
    , m_tree(options.language)
    , m_spool(std::move(spool))
{
    m_pdf.emptyPDF();
}

void PdfFile::setPicture(std::size_t index, const BakedPicture& picture)
{
    m_pictures[index] = imageObject(m_pdf, picture, m_spool, m_number);
    m_passedThrough += picture.passedThrough() ? 1 : 0;
}

bool PdfFile::hasPicture(std::size_t index) const
{
    return m_pictures[index].isInitialized();
}

Handle PdfFile::addPageObject(SizeMm media, PageContent& content)
{
    Handle page = m_pdf.makeIndirectObject(Handle::parse("<< /Type /Page >>"));
    page.replaceKey("/MediaBox", boxOf(whole(media), media));
    page.replaceKey("/Resources", content.resources());
    page.replaceKey("/Contents", Handle::newStream(&m_pdf, content.take()));
    m_pdf.addPage(page, false);
    m_pages.push_back(page);
    return page;
}

void PdfFile::addPage(const DisplayList& list, bool several)
{
    const PageBoxes boxes = pageBoxes(list.size, m_options.bleed, m_options.cropMarks);
    const int number = static_cast<int>(m_pages.size());
    PageContent content(shared(), boxes.media, boxes.trim.topLeft(), m_options.bleed);
    StructureTree::Node parent = StructureTree::kRoot;
    if (several)
        parent = m_tree.add(parent, {"Sect", list.language, {}, {}, {}});
    content.tagInto(m_tree, parent, number);
    content.play(list);
    if (m_options.cropMarks)
        content.drawLines(cropMarks(boxes, m_options.bleed), kCropMarkThickness);
    Handle page = addPageObject(boxes.media, content);
    page.replaceKey("/BleedBox", boxOf(boxes.bleed, boxes.media));
    page.replaceKey("/TrimBox", boxOf(boxes.trim, boxes.media));
    page.replaceKey("/StructParents", Handle::newInteger(number));
    page.replaceKey("/Tabs", Handle::newName("/S"));
}

StructureTree::Node PdfFile::addSection(const QString& language)
{
    return m_tree.add(StructureTree::kRoot, {"Sect", language, {}, {}, {}});
}

int PdfFile::addPage(const TermPage& page, StructureTree::Node parent)
{
    const SizeMm size = page.list.size;
    const int number = static_cast<int>(m_pages.size());
    PageContent content(shared(), size, {Mm(0), Mm(0)}, Mm(0));
    content.tagInto(m_tree, parent, number);
    content.play(page.list);
    for (const PanelOnPage& panel : page.panels) {
        content.tagInto(
            m_tree, m_tree.add(parent, {"Sect", panel.list.language, {}, {}, {}}), number);
        content.playInto(panel.list, panel.place);
    }
    Handle object = addPageObject(size, content);
    object.replaceKey("/TrimBox", boxOf(whole(size), size));
    object.replaceKey("/StructParents", Handle::newInteger(number));
    object.replaceKey("/Tabs", Handle::newName("/S"));
    return number;
}

Handle PdfFile::form(const DisplayList& list)
{
    PageContent content(shared(), list.size, {Mm(0), Mm(0)}, Mm(0));
    content.play(list);
    Handle form = Handle::newStream(&m_pdf, content.take());
    Handle dict = form.getDict();
    dict.replaceKey("/Type", Handle::newName("/XObject"));
    dict.replaceKey("/Subtype", Handle::newName("/Form"));
    dict.replaceKey("/BBox", boxOf(whole(list.size), list.size));
    dict.replaceKey("/Resources", content.resources());
    return form;
}

PageContent PdfFile::blankPage(SizeMm size)
{
    return PageContent(shared(), size, {Mm(0), Mm(0)}, Mm(0));
}

void PdfFile::addPage(PageContent content, SizeMm size, double scale)
{
    if (scale != 1)
        content.enlarge(scale);
    addPageObject(size, content);
}

PaperReport PdfFile::write(const QString& path, const PaperWatch& watch, bool tagged)
{
    m_fonts.embed();
    if (tagged)
        m_tree.write(m_pdf, m_pages);
    writeOutline(m_pdf, m_outline, m_pages);
    writeWays(m_pdf, m_ways, m_pages);
    writePageLabels(m_pdf, m_labels);
    const bool missing = m_fonts.showsMissingGlyph();
    // A page that shows the box for a missing letter may not call itself archival (PDFA-2B rules,
    // clause 6.2.11.8).
    const int part = m_attachment ? 3 : 2;
    writeMetadata(
        m_pdf, {m_options.title, m_options.language, m_options.created, missing ? 0 : part});
    if (m_attachment)
        writeAttachment(m_pdf, *m_attachment, m_options.created);

    OutputFile out(
        path, [&watch] { return watch.cancelled(); }, m_number);
    out.open();
    QPDFWriter writer(m_pdf);
    writer.setOutputPipeline(&out);
    writer.setMinimumPDFVersion("1.7");
    writer.setStaticID(true); // replaced by the number of the file
    writer.setObjectStreamMode(qpdf_o_generate);
    writer.setNewlineBeforeEndstream(true);
    writer.write();
    out.commit();
    return {static_cast<int>(m_pages.size()),
        static_cast<int>(m_pictures.size()),
        m_passedThrough,
        out.bytes(),
        missing};
}

Result<PaperReport> caught(const QString& path, const std::function<Result<PaperReport>()>& write)
{
    const ReusedMemory reused;
    try {
        return write();
    } catch (const WriteCancelled&) {
        return Error{ErrorCode::Cancelled, path, {}};
    } catch (const WriteFailed& failure) {
        return Error{ErrorCode::CannotWrite, path, QString::fromUtf8(failure.what())};
    } catch (const std::exception& failure) {
        return Error{ErrorCode::Internal, path, QString::fromUtf8(failure.what())};
    }
}

Result<PaperReport> produce(const QString& path,
    const std::vector<DisplayList>& lists,
    PictureSource& source,
    const PaperOptions& options,
    const PaperWatch& watch,
    const std::function<void(PdfFile&)>& build,
    bool tagged)
{
    return caught(path, [&]() -> Result<PaperReport> {
        if (std::optional<Error> error = misuse(path, lists, options))
            return std::move(*error);
        PicturePlan plan;
        for (const DisplayList& list : lists)
            plan.add(list, options.maxResolution);
        const auto spool = std::make_shared<Spool>(path);
        QString why;
        if (!spool->open(why))
            return Error{ErrorCode::CannotWrite, path, why};
        Result<std::vector<BakedPicture>> baked =
            bakeAll(plan.pictures(), source, options.workers, path, *spool, watch);
        if (!baked)
            return baked.error();
        PdfFile file(completed(options, lists.front()), plan, spool);
        for (std::size_t i = 0; i < baked->size(); ++i)
            file.setPicture(i, (*baked)[i]);
        build(file);
        return file.write(path, watch, tagged);
    });
}

Result<PaperReport> writePages(const QString& path,
    const std::vector<DisplayList>& lists,
    PictureSource& source,
    const PaperOptions& options,
    const PaperWatch& watch,
    const std::optional<Attachment>& attachment)
{
    const auto build = [&](PdfFile& file) {
        file.labelFrom(0, "/P (Panel ) /S /D");
        for (std::size_t i = 0; i < lists.size(); ++i) {
            file.addPage(lists[i], lists.size() > 1);
            if (lists.size() > 1) {
                file.addOutline(
                    {0, QStringLiteral("Panel %1").arg(i + 1), static_cast<int>(i), Mm()});
            }
        }
        if (attachment)
            file.attach(*attachment);
    };
    return produce(path, lists, source, options, watch, build, true);
}

} // namespace wainscot::pdf
