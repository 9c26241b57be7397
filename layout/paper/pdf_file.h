// A PDF being put together from display lists. Internal: callers outside this folder have only
// cleared panels, see pdf_writer.h and sheets.h.
#pragma once

#include "layout/paper/attachment.h"
#include "layout/paper/font_objects.h"
#include "layout/paper/page_content.h"
#include "layout/paper/pdf_writer.h"
#include "layout/paper/picture_baker.h"
#include "layout/paper/qpdf.h"
#include "layout/paper/sheets.h"
#include "layout/paper/structure_tree.h"
#include "layout/paper/way_finding.h"
#include "layout/typeset/display_list.h"
#include "layout/typeset/page_flow.h"

#include <functional>
#include <memory>
#include <optional>
#include <span>
#include <vector>

namespace wainscot::pdf {

class PdfFile {
public:
    // REQUIRES: the plan outlives it
    PdfFile(const PaperOptions& options, const PicturePlan& plan, std::shared_ptr<Spool> spool);

    // A picture of the plan. REQUIRES: set before a page that shows it is added
    void setPicture(std::size_t index, const BakedPicture& picture);
    [[nodiscard]] bool hasPicture(std::size_t index) const;

    // A tagged page with its boxes, bleed and crop marks. `several`: the file has more than one, so
    // that each is a section of the document.
    void addPage(const DisplayList& list, bool several);

    // A tagged page of text with panels drawn small; answers its number in the file.
    int addPage(const TermPage& page, StructureTree::Node parent);
    [[nodiscard]] StructureTree::Node addSection(const QString& language);
    // To find one's way: entries in reading order, ways from a part of a page to another page, and
    // how pages are numbered from some page on ("/S /r", "/P (Cover)").
    void addOutline(const OutlineEntry& entry) { m_outline.push_back(entry); }
    void addLink(const PageWay& way) { m_ways.push_back(way); }
    // Makes the file one of PDF/A part 3, which may hold other files.
    void attach(const Attachment& attachment) { m_attachment = attachment; }
    void labelFrom(int page, const std::string& form) { m_labels.emplace_back(page, form); }

    // The panel without bleed as an object that can be drawn on any number of pages. Untagged: the
    // content of one object cannot belong to the structure of several pages.
    [[nodiscard]] QPDFObjectHandle form(const DisplayList& list);
    // A page of printer's paper, origin at its top left.
    [[nodiscard]] PageContent blankPage(SizeMm size);
    // `scale`: larger or smaller around the middle of the page.
    void addPage(PageContent content, SizeMm size, double scale = 1);

    // Embeds the fonts, completes the document and writes it. Throws what OutputFile throws.
    [[nodiscard]] PaperReport write(const QString& path, const PaperWatch& watch, bool tagged);

private:
    [[nodiscard]] SharedObjects shared() { return {m_fonts, m_plan, m_pictures}; }
    QPDFObjectHandle addPageObject(SizeMm media, PageContent& content);

    QPDF m_pdf;
    PaperOptions m_options;
    const PicturePlan& m_plan;
    std::vector<QPDFObjectHandle> m_pictures;
    FontObjects m_fonts;
    StructureTree m_tree;
    std::vector<QPDFObjectHandle> m_pages;
    std::shared_ptr<Spool> m_spool;
    std::shared_ptr<FileNumber> m_number = std::make_shared<FileNumber>();
    std::vector<OutlineEntry> m_outline;
    std::vector<PageWay> m_ways;
    std::vector<std::pair<int, std::string>> m_labels;
    std::optional<Attachment> m_attachment;
    int m_passedThrough = 0;
};

// Turns what is thrown while a file is written into errors.
Result<PaperReport> caught(const QString& path, const std::function<Result<PaperReport>()>& write);

// Bakes, builds and writes. `build` adds the pages.
Result<PaperReport> produce(const QString& path,
    const std::vector<DisplayList>& lists,
    PictureSource& source,
    const PaperOptions& options,
    const PaperWatch& watch,
    const std::function<void(PdfFile&)>& build,
    bool tagged);

// One tagged page per list, and what goes along with them.
Result<PaperReport> writePages(const QString& path,
    const std::vector<DisplayList>& lists,
    PictureSource& source,
    const PaperOptions& options,
    const PaperWatch& watch = {},
    const std::optional<Attachment>& attachment = {});

// An assembly sheet and the sheets of each list.
Result<PaperReport> writeSheetsOf(const QString& path,
    const std::vector<DisplayList>& lists,
    PictureSource& source,
    const PaperOptions& options,
    const SheetOptions& sheets,
    const PaperWatch& watch = {});

} // namespace wainscot::pdf
