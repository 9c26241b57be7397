#include "app/ui/hang/sheet_printer.h"

#include <QPageSize>
#include <QPainter>
#include <QPrinter>

#include "core/media/bake.h"
#include "layout/paper/sheet_pages.h"

namespace wainscot::ui {

namespace {

// The part of the panel and what stands around it; one unit of the painter is a millimetre.
void drawSheet(
    QPainter& painter, const SheetPage& page, const DisplayList& panel, PictureProvider& pictures)
{
    const RectMm& window = page.window;
    painter.save();
    painter.setClipRect(
        QRectF(window.x.value(), window.y.value(), window.width.value(), window.height.value()));
    painter.translate(page.panelAt.x.value(), page.panelAt.y.value());
    painter.scale(page.panelScale, page.panelScale);
    (void)paint(painter, panel, pictures, PaintPurpose::Output, page.seen());
    painter.restore();
    NoPictures none;
    (void)paint(painter, page.marks, none, PaintPurpose::Output);
}

} // namespace

ProvidedPicture PrintedPictures::picture(const ClearedPicture& picture, SizePx wanted)
{
    const PictureRecipe recipe{m_session.originalPath(picture.sha256),
        picture.format,
        picture.orientation,
        picture.size,
        picture.visible,
        picture.treatment};
    const Result<QImage> baked = bakeImage(recipe, wanted);
    return {baked.ok() ? *baked : QImage(), picture.visible};
}

void setSheetPaper(QPrinter& printer, SizeMm panel, const SheetWishes& wishes)
{
    const auto plan = planSheets(panel, wishes.options());
    if (!plan)
        return;
    const bool turned = plan->sheet.width > plan->sheet.height;
    const SizeMm upright = turned ? plan->sheet.transposed() : plan->sheet;
    printer.setPageSize(
        QPageSize(QSizeF(upright.width.value(), upright.height.value()), QPageSize::Millimeter));
    printer.setPageOrientation(turned ? QPageLayout::Landscape : QPageLayout::Portrait);
    printer.setFullPage(true);
}

bool printSheets(QPrinter& printer,
    const DrawnDisplay& drawn,
    const SheetWishes& wishes,
    PictureProvider& pictures)
{
    setSheetPaper(printer, drawn.display.panelSize, wishes);
    const auto even = planSheets(drawn.display.panelSize, wishes.options());
    QPainter painter;
    if (!even || !painter.begin(&printer))
        return false;
    const double dots = printer.resolution() / kMmPerInch;
    const auto wanted = [&printer](int sheet) {
        return printer.fromPage() == 0
            || (sheet >= printer.fromPage() && sheet <= printer.toPage());
    };
    int sheet = 0;
    bool fresh = true; // the page that is open has nothing on it
    for (const DrawnPanel& panel : drawn.panels) {
        for (const SheetPage& page : sheetPages(withQuietSeams(*even, panel.list),
                 wishes.options(),
                 sheetPanelName(panel.cleared.number(), drawn.panels.size()))) {
            if (!wanted(++sheet))
                continue;
            if (!fresh && !printer.newPage())
                return false;
            fresh = false;
            painter.resetTransform();
            painter.scale(dots, dots);
            const QPointF middle(page.size.width.value() / 2, page.size.height.value() / 2);
            painter.translate(middle);
            painter.scale(wishes.scale, wishes.scale);
            painter.translate(-middle);
            drawSheet(painter, page, panel.list, pictures);
        }
    }
    return painter.end();
}

} // namespace wainscot::ui
