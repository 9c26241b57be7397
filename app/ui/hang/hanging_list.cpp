#include "app/ui/hang/hanging_list.h"

#include <QCoreApplication>
#include <QLocale>
#include <QPrinter>

#include <algorithm>
#include <array>

#include "app/ui/hang/wall_picture.h"
#include "app/ui/kit/finding_mark.h"
#include "app/ui/kit/surfaces.h"
#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(HangingList)
};

constexpr double kTitlePt = 16;
constexpr double kMeasurePt = 10;
constexpr double kSmallPt = 8.5;
constexpr double kLeastPicture = 0.3; // of the page
constexpr double kMostPicture = 0.52;
constexpr double kScreenDpi = 96;
// Left of the picture its heights, right of it the names of the bands, below it the metres.
constexpr double kLeftOfWall = 64;
constexpr double kRightOfWall = 190;
constexpr double kBelowWall = 30;
// Where the columns end, as parts of the width.
constexpr std::array kColumns{0.25, 0.37, 0.49, 0.61, 0.73, 0.85, 1.0};

QString inMillimetres(Mm length)
{
    return Words::tr("%1 mm").arg(millimetres(length));
}

} // namespace

// Lines of text down a page.
class HangingList::Page {
public:
    Page(QPainter& painter, const QRectF& room)
        : m_painter(painter)
        , m_room(room)
        , m_y(room.top())
    {
    }
    [[nodiscard]] QPainter& painter() { return m_painter; }
    [[nodiscard]] const QRectF& room() const { return m_room; }
    [[nodiscard]] double y() const { return m_y; }
    [[nodiscard]] double left() const { return m_room.bottom() - m_y; }
    [[nodiscard]] double dots() const { return m_painter.device()->logicalDpiY() / kScreenDpi; }
    void skip(double by) { m_y += by; }
    void toTop() { m_y = m_room.top(); }

    [[nodiscard]] double lineHeight(double points) { return set(points, false).height() * 1.2; }
    // Breaks where it is longer than the page is wide.
    void line(const QString& text, double points, bool bold = false)
    {
        (void)set(points, bold);
        QRectF box = m_painter.boundingRect(
            QRectF(m_room.left(), m_y, m_room.width(), m_room.height()), Qt::TextWordWrap, text);
        m_painter.drawText(box, Qt::TextWordWrap, text);
        m_y += box.height() * 1.15;
    }
    [[nodiscard]] double heightOf(const QString& text, double points)
    {
        (void)set(points, false);
        return m_painter.boundingRect(m_room, Qt::TextWordWrap, text).height() * 1.15;
    }
    // The first cell begins at the left, the others end at their columns.
    void row(const QStringList& cells, double points, bool bold = false)
    {
        const QFontMetricsF metrics = set(points, bold);
        for (qsizetype i = 0; i < cells.size(); ++i) {
            const double end = m_room.left() + kColumns[std::size_t(i)] * m_room.width();
            const QString text = i > 0
                ? cells[i]
                : metrics.elidedText(cells[i], Qt::ElideRight, end - m_room.left());
            const double x = i == 0 ? m_room.left() : end - metrics.horizontalAdvance(text);
            m_painter.drawText(QPointF(x, m_y + metrics.ascent()), text);
        }
        m_y += metrics.height() * 1.1;
    }

private:
    QFontMetricsF set(double points, bool bold)
    {
        QFont font = interfaceFont(1.0, bold ? QFont::DemiBold : QFont::Normal);
        font.setPointSizeF(points);
        m_painter.setFont(QFont(font, m_painter.device()));
        return QFontMetricsF(m_painter.font());
    }

    QPainter& m_painter;
    QRectF m_room;
    double m_y;
};

HangingList::HangingList(
    const Wall& wall, const WallPlan& plan, std::function<QPixmap(PanelId, int)> panelPixmap)
    : m_wall(wall)
    , m_plan(plan)
    , m_panelPixmap(std::move(panelPixmap))
{
}

QStringList HangingList::footLines() const
{
    QStringList lines;
    lines << Words::tr(
        "Measured to the panel's own edges, from the floor and from the left edge of "
        "the wall; its board reaches %1 mm further on every side.")
                 .arg(millimetres(kBoardBorder));
    lines << Words::tr(
        "Nails go in %1 mm under the upper edge (common practice, no source); strips "
        "behind the corners. Floors slope: measure one nail up from the floor, then "
        "use a level.")
                 .arg(millimetres(kNailDrop));
    for (const CutLine& cut : m_plan.boards) {
        const SizeMm board = cut.board;
        lines << Words::tr("Cut %1 of %2 by %3 mm (%4 by %5): the panel with %6 mm all round.")
                     .arg(counted(cut.count, Words::tr("1 board"), Words::tr("%1 boards")))
                     .arg(millimetres(board.width), millimetres(board.height))
                     .arg(inchesInWords(board.width), inchesInWords(board.height))
                     .arg(millimetres(kBoardBorder));
    }
    for (const Finding& finding : m_plan.findings) {
        if (finding.severity != Severity::Note && finding.panel > 0)
            lines << Words::tr("Before you hang it: %1").arg(saysInLine(finding));
    }
    lines << Words::tr("%1 % of the wall is covered, limit %2 % (%3). Ask your fire authority.")
                 .arg(QLocale().toString(m_plan.coveredShare * 100, 'f', 1),
                     QLocale().toString(m_plan.limit.share * 100, 'f', 0),
                     QCoreApplication::translate("Says", m_plan.limit.source));
    return lines;
}

// Drawn as on a screen of 96 dots an inch, and scaled.
void HangingList::drawPicture(Page& page, double height) const
{
    const double dots = page.dots();
    const Tokens colours = lightTokens();
    const WallPicture picture(m_wall, m_plan, colours, m_panelPixmap);
    QPainter& painter = page.painter();
    painter.save();
    painter.translate(page.room().left(), page.y());
    painter.scale(dots, dots);
    const QRectF place(kLeftOfWall,
        8,
        page.room().width() / dots - kLeftOfWall - kRightOfWall,
        height / dots - 8 - kBelowWall);
    const QRectF wall = picture.fitted(place);
    picture.paintScales(painter, wall);
    picture.paint(painter, wall, -1);
    picture.paintNails(painter, wall);
    painter.restore();
    painter.setPen(Qt::black);
    page.skip((wall.bottom() + kBelowWall) * dots);
}

void HangingList::drawHeads(Page& page) const
{
    page.row({Words::tr("Panel"),
                 Words::tr("left edge"),
                 Words::tr("right edge"),
                 Words::tr("lower edge"),
                 Words::tr("upper edge"),
                 Words::tr("nails up"),
                 Words::tr("from the left")},
        kSmallPt,
        true);
}

void HangingList::drawRow(Page& page, std::size_t index) const
{
    const HangingLine& line = m_plan.list[index];
    const std::vector<Nail> nails = line.nails();
    QStringList metric{QStringLiteral("%1  %2").arg(index + 1).arg(line.name)};
    QStringList inches{QString()};
    for (const Mm length : {line.left(), line.right(), line.bottom, line.top, nails.front().up}) {
        metric << inMillimetres(length);
        inches << inchesInWords(length);
    }
    if (nails.size() == 1) {
        metric << inMillimetres(nails.front().left);
        inches << inchesInWords(nails.front().left);
    } else {
        metric << Words::tr("%1 and %2 mm")
                      .arg(millimetres(nails.front().left), millimetres(nails.back().left));
        inches << Words::tr("%1 and %2")
                      .arg(inchesInWords(nails.front().left).remove(QStringLiteral(" in")),
                          inchesInWords(nails.back().left));
    }
    page.row(metric, kMeasurePt, false);
    page.row(inches, kSmallPt, false);
    page.skip(page.lineHeight(kSmallPt) * 0.25);
}

bool HangingList::print(QPrinter& printer)
{
    QPainter painter;
    if (!painter.begin(&printer))
        return false;
    Page page(painter,
        QRectF(QPointF(), printer.pageLayout().paintRectPixels(printer.resolution()).size()));
    painter.setPen(Qt::black);
    page.line(Words::tr("%1: %2 by %3 mm (%4 by %5)")
                  .arg(m_wall.name,
                      millimetres(m_wall.size.width),
                      millimetres(m_wall.size.height),
                      inchesInWords(m_wall.size.width),
                      inchesInWords(m_wall.size.height)),
        kTitlePt,
        true);
    const QStringList foot = footLines();
    const double row = page.lineHeight(kMeasurePt) + page.lineHeight(kSmallPt) * 1.25;
    double needed = page.lineHeight(kSmallPt) * 2 + row * double(m_plan.list.size());
    for (const QString& line : foot)
        needed += page.heightOf(line, kSmallPt);
    const double whole = page.room().height();
    drawPicture(
        page, std::clamp(page.left() - needed, kLeastPicture * whole, kMostPicture * whole));
    drawHeads(page);
    const auto turn = [&](double height) {
        if (page.left() >= height)
            return false;
        page.toTop();
        return printer.newPage();
    };
    for (std::size_t i = 0; i < m_plan.list.size(); ++i) {
        if (turn(row))
            drawHeads(page);
        drawRow(page, i);
    }
    for (const QString& line : foot) {
        (void)turn(page.heightOf(line, kSmallPt));
        page.line(line, kSmallPt);
    }
    return painter.end();
}

} // namespace wainscot::ui
