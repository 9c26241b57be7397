// A PDF being put together from display lists. Internal: callers outside this folder have only
// cleared panels, see pdf_writer.h and sheets.h.
#pragma once

#include "layout/paper/font_objects.h"
#include "layout/paper/page_content.h"
#include "layout/paper/pdf_writer.h"
#include "layout/paper/picture_baker.h"
#include "layout/paper/qpdf.h"
#include "layout/paper/sheets.h"
#include "layout/paper/structure_tree.h"
#include "layout/typeset/display_list.h"

#include <functional>
#include <memory>
#include <span>
#include <vector>

namespace wainscot::pdf {

class PdfFile {
public:
    // Pictures by index in the plan.
    PdfFile(const PaperOptions& options,
        const PicturePlan& plan,
        const std::vector<BakedPicture>& pictures,
        const std::shared_ptr<Spool>& spool);

    // A tagged page with its boxes, bleed and crop marks. `several`: the file has more than one, so
    // that each is a section of the document.
    void addPage(const DisplayList& list, bool several);

    // The panel without bleed as an object that can be drawn on any number of pages. Untagged: the
    // content of one object cannot belong to the structure of several pages.
    [[nodiscard]] QPDFObjectHandle form(const DisplayList& list);
    // A page of printer's paper, origin at its top left.
    [[nodiscard]] PageContent blankPage(SizeMm size);
    void addPage(PageContent content, SizeMm size);

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
    int m_passedThrough = 0;
};

// Bakes, builds and writes; turns what is thrown into errors. `build` adds the pages.
Result<PaperReport> produce(const QString& path,
    const std::vector<DisplayList>& lists,
    PictureSource& source,
    const PaperOptions& options,
    const PaperWatch& watch,
    const std::function<void(PdfFile&)>& build,
    bool tagged);

// One tagged page per list.
Result<PaperReport> writePages(const QString& path,
    const std::vector<DisplayList>& lists,
    PictureSource& source,
    const PaperOptions& options,
    const PaperWatch& watch = {});

// An assembly sheet and the sheets of each list.
Result<PaperReport> writeSheetsOf(const QString& path,
    const std::vector<DisplayList>& lists,
    PictureSource& source,
    const PaperOptions& options,
    const SheetOptions& sheets,
    const PaperWatch& watch = {});

} // namespace wainscot::pdf
