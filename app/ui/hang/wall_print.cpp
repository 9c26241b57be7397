// The wall on one printed page: the picture, the list to hang by, the boards to cut.
#include <QCoreApplication>
#include <QPrintPreviewDialog>
#include <QPrinter>

#include "app/ui/hang/wall_page.h"
#include "app/ui/session/kept_limits.h"

namespace wainscot::ui {

namespace {

// Draws lines of text down a page.
class Page {
public:
    Page(QPainter& painter, const QRectF& room)
        : m_painter(painter)
        , m_room(room)
        , m_y(room.top())
    {
    }
    void skip(double points) { m_y += points; }
    void line(const QString& text, double points, bool bold = false)
    {
        row({text}, {0}, points, bold);
    }
    // Cells at parts of the width; all but the first are aligned at their right.
    void row(const QStringList& cells, const QList<double>& at, double points, bool bold = false)
    {
        QFont font = interfaceFont(1.0, bold ? QFont::DemiBold : QFont::Normal);
        font.setPointSizeF(points);
        m_painter.setFont(QFont(font, m_painter.device()));
        const QFontMetricsF metrics(m_painter.font());
        for (qsizetype i = 0; i < cells.size(); ++i) {
            const double x = m_room.left() + at[i] * m_room.width();
            const double left = i == 0 ? x : x - metrics.horizontalAdvance(cells[i]);
            m_painter.drawText(QPointF(left, m_y + metrics.ascent()), cells[i]);
        }
        m_y += metrics.height() * 1.25;
    }
    [[nodiscard]] double y() const { return m_y; }
    void setY(double y) { m_y = y; }

private:
    QPainter& m_painter;
    QRectF m_room;
    double m_y;
};

} // namespace

void WallPage::askPrint()
{
    QPrinter printer(QPrinter::HighResolution);
    printer.setPageOrientation(QPageLayout::Landscape);
    QPrintPreviewDialog preview(&printer, this);
    preview.setWindowTitle(tr("The hanging list"));
    connect(&preview, &QPrintPreviewDialog::paintRequested, this, [this](QPrinter* to) {
        (void)printList(*to);
    });
    preview.exec();
}

bool WallPage::printList(QPrinter& printer)
{
    QPainter painter;
    if (wall() == nullptr || !painter.begin(&printer)) {
        Q_EMIT announced(tr("The printer does not answer."));
        return false;
    }
    const Wall& shown = *wall();
    const WallPlan plan = planOf(m_session.book(), shown, keptStandOut());
    const QRectF room(QPointF(), printer.pageLayout().paintRectPixels(printer.resolution()).size());
    painter.setPen(Qt::black);
    Page page(painter, room);
    page.line(tr("%1: %2 by %3 cm")
                  .arg(shown.name, centimetres(shown.size.width), centimetres(shown.size.height)),
        16,
        true);
    // The picture is drawn as on a screen of 96 dots an inch and scaled.
    const double dots = printer.resolution() / 96.0;
    const Tokens colours = lightTokens();
    const WallPicture picture(shown, plan, colours, [this](PanelId panel, int width) {
        return m_view->panelPixmap(panel, qMin(width, 800));
    });
    painter.save();
    painter.translate(room.left(), page.y());
    painter.scale(dots, dots);
    const QRectF place(64, 8, room.width() / dots - 64 - 190, room.height() * 0.52 / dots);
    const QRectF wallAt = picture.fitted(place);
    picture.paintScales(painter, wallAt);
    picture.paint(painter, wallAt, -1);
    painter.restore();
    painter.setPen(Qt::black);
    page.skip((place.bottom() + 36) * dots);
    const QList<double> at{0, 0.50, 0.66, 0.82, 0.98};
    page.row({tr("Hang"), tr("from the left"), tr("bottom"), tr("middle"), tr("top")}, at, 9, true);
    for (const HangingLine& line : plan.list) {
        const auto both = [](Mm length) {
            return QStringLiteral("%1 cm, %2").arg(centimetres(length), inchesInWords(length));
        };
        page.row(
            {line.name, both(line.left()), both(line.bottom), both(line.middle()), both(line.top)},
            at,
            9);
    }
    page.skip(6 * dots);
    page.line(
        tr("Bottom, middle and top count from the floor; the middle is where nails or strips go."),
        8);
    for (const CutLine& cut : plan.boards)
        page.line(tr("Cut %1 of %2 by %3 cm: the panel with 8 mm all round.")
                      .arg(counted(cut.count, tr("1 board"), tr("%1 boards")))
                      .arg(centimetres(cut.board.width), centimetres(cut.board.height)),
            9);
    page.line(tr("%1 % of the wall is covered, limit %2 % (%3). Ask your fire authority.")
                  .arg(QLocale().toString(plan.coveredShare * 100, 'f', 1),
                      QLocale().toString(plan.limit.share * 100, 'f', 0),
                      QCoreApplication::translate("Says", plan.limit.source)),
        9);
    return painter.end();
}

} // namespace wainscot::ui
