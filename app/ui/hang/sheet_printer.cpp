#include "app/ui/hang/sheet_printer.h"

#include <QPageSize>
#include <QPainter>
#include <QPrinter>

#include "app/ui/kit/tokens.h"
#include "core/media/bake.h"
#include "layout/paper/sheets.h"

namespace wainscot::ui {

namespace {

constexpr double kTickMm = 3;
constexpr double kRulerMm = 100;

// Text in the margin, 2.6 mm high.
void write(QPainter& painter, const QPointF& at, const QString& text)
{
    QFont font = interfaceFont();
    font.setPixelSize(10);
    painter.save();
    painter.translate(at);
    painter.scale(0.26, 0.26);
    painter.setFont(font);
    painter.drawText(QPointF(), text);
    painter.restore();
}

void drawMarks(QPainter& painter, const RectMm& part, const SheetPlan& plan, int column, int row)
{
    painter.setPen(QPen(Qt::black, 0.1));
    const auto across = [&](double x) {
        painter.drawLine(QLineF(x, part.y.value() - 1 - kTickMm, x, part.y.value() - 1));
        painter.drawLine(
            QLineF(x, part.bottom().value() + 1, x, part.bottom().value() + 1 + kTickMm));
    };
    const auto down = [&](double y) {
        painter.drawLine(QLineF(part.x.value() - 1 - kTickMm, y, part.x.value() - 1, y));
        painter.drawLine(
            QLineF(part.right().value() + 1, y, part.right().value() + 1 + kTickMm, y));
    };
    // Where the next sheet's cut edge is laid.
    const RectMm area = plan.area(column, row);
    if (column + 1 < plan.columns)
        across((part.x + plan.area(column + 1, row).x - area.x).value());
    if (row + 1 < plan.rows)
        down((part.y + plan.area(column, row + 1).y - area.y).value());
    across(part.x.value());
    across(part.right().value());
    down(part.y.value());
    down(part.bottom().value());
}

void drawRuler(QPainter& painter, const QPointF& left)
{
    painter.setPen(QPen(Qt::black, 0.15));
    painter.drawLine(left, left + QPointF(kRulerMm, 0));
    for (int i = 0; i <= 10; ++i) {
        const QPointF at = left + QPointF(i * 10, 0);
        painter.drawLine(at, at - QPointF(0, i % 5 == 0 ? 2.5 : 1.5));
    }
    write(painter, left + QPointF(kRulerMm + 2, 0), QStringLiteral("100 mm"));
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
    const auto plan = planSheets(panel, SheetOptions{wishes.paper, wishes.overlap, wishes.margin});
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
    const auto even = planSheets(drawn.display.panelSize,
        SheetOptions{wishes.paper, wishes.overlap, wishes.margin, wishes.scale});
    QPainter painter;
    if (!even || !painter.begin(&printer))
        return false;
    const double dots = printer.resolution() / kMmPerInch;
    int sheet = 0;
    bool fresh = true; // the page that is open has nothing on it
    for (const DrawnPanel& panel : drawn.panels) {
        const SheetPlan plan = withQuietSeams(*even, panel.list);
        for (int index = 0; index < plan.count(); ++index) {
            const int row = index / plan.columns;
            const int column = index % plan.columns;
            ++sheet;
            const bool wanted = printer.fromPage() == 0
                || (sheet >= printer.fromPage() && sheet <= printer.toPage());
            if (!wanted)
                continue;
            if (!fresh && !printer.newPage())
                return false;
            fresh = false;
            const RectMm area = plan.area(column, row);
            const RectMm part{wishes.margin, wishes.margin, area.width, area.height};
            painter.resetTransform();
            painter.scale(dots, dots);
            const QPointF middle(plan.sheet.width.value() / 2, plan.sheet.height.value() / 2);
            painter.translate(middle);
            painter.scale(wishes.scale, wishes.scale);
            painter.translate(-middle);
            painter.save();
            painter.setClipRect(
                QRectF(part.x.value(), part.y.value(), part.width.value(), part.height.value()));
            painter.translate((part.x - area.x).value(), (part.y - area.y).value());
            (void)paint(painter, panel.list, pictures, PaintPurpose::Output, area);
            painter.restore();
            drawMarks(painter, part, plan, column, row);
            const double foot = plan.sheet.height.value() - 2.2;
            write(painter,
                {part.x.value() + 6, foot},
                QStringLiteral("%1  %2, panel %3")
                    .arg(sheetName(column, row), drawn.display.name)
                    .arg(panel.cleared.number()));
            if (index == 0)
                drawRuler(painter, {part.x.value() + 70, foot});
        }
    }
    return painter.end();
}

} // namespace wainscot::ui
