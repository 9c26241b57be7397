#include "layout/paper/sheet_pages.h"

#include "layout/typeset/style.h"
#include "layout/typeset/text_block.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>

namespace wainscot {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Sheets)
};

constexpr QRgb kInk = 0xff202020;
constexpr QRgb kTickInk = 0xff000000;
constexpr Mm kHairline = toMm(Pt(0.25));
constexpr Mm kOutline = toMm(Pt(0.75));
constexpr Mm kTick{3};
constexpr Mm kTickGap{0.7}; // between a part and its ticks
constexpr Mm kNameCap{1.6};
constexpr Mm kStepCap{2.6};
constexpr Mm kStepLead{6.5};
constexpr Mm kRuler{100};
constexpr Mm kLongLine{5000};

// What is drawn around the panel, in the sheet's own words.
class Marks {
public:
    explicit Marks(SizeMm sheet) { m_list.size = sheet; }

    void fill(const RectMm& rect, QRgb colour)
    {
        m_list.marks.push_back({-1, {}, Fill{rect, colour}});
    }
    void across(Mm fromX, Mm toX, Mm y, Mm thickness, QRgb colour)
    {
        fill({fromX, y - thickness / 2, toX - fromX, thickness}, colour);
    }
    void down(Mm x, Mm fromY, Mm toY, Mm thickness, QRgb colour)
    {
        fill({x - thickness / 2, fromY, thickness, toY - fromY}, colour);
    }

    struct Written {
        Mm width; // of the first line
        int lines = 0;
    };
    // Lines no wider than `column`, the first one's baseline starting at a point.
    Written write(const QString& text, PointMm at, Mm cap, bool bold = false, Mm column = kLongLine)
    {
        const QString language = Words::tr("en", "the language these sentences are written in");
        TextSpan span;
        span.text = text;
        span.face = {
            Voice::Adult, bold ? Weight::Bold : Weight::Regular, TypeRole::Caption, cap, language};
        span.colour = kInk;
        const TextBlock block(pairings().front(), {span}, language);
        const LineBreaks lines = block.lines(Breaking::Paragraph, column);
        for (GlyphRun& run : block.draw(lines, {at.x, false, at.y, kStepLead}).runs)
            m_list.marks.push_back({-1, {}, std::move(run)});
        return {lines.ends.empty() ? Mm(0) : block.widthOf(lines, 0), int(lines.ends.size())};
    }

    [[nodiscard]] DisplayList take() { return std::move(m_list); }

private:
    DisplayList m_list;
};

// Ticks in the margins at a height or a width of the part.
void drawTicks(
    Marks& marks, const RectMm& part, const std::vector<Mm>& xs, const std::vector<Mm>& ys)
{
    const Mm near = kTickGap;
    const Mm far = kTickGap + kTick;
    for (const Mm x : xs) {
        marks.down(x, part.y - far, part.y - near, kHairline, kTickInk);
        marks.down(x, part.bottom() + near, part.bottom() + far, kHairline, kTickInk);
    }
    for (const Mm y : ys) {
        marks.across(part.x - far, part.x - near, y, kHairline, kTickInk);
        marks.across(part.right() + near, part.right() + far, y, kHairline, kTickInk);
    }
}

// What one sheet is cut at and laid on; a neighbour that is left out holds nothing.
QString joinSentence(const SheetPlan& plan, bool withoutWhite, int column, int row)
{
    const auto isThere = [&](int atColumn, int atRow) {
        return atColumn >= 0 && atRow >= 0 && !(withoutWhite && plan.isWhite(atColumn, atRow));
    };
    const bool left = isThere(column - 1, row);
    const bool above = isThere(column, row - 1);
    if (left && above)
        return Words::tr("cut at the left and top ticks, lay on %1 and %2")
            .arg(sheetName(column - 1, row), sheetName(column, row - 1));
    if (left)
        return Words::tr("cut at the left ticks, lay on %1").arg(sheetName(column - 1, row));
    if (above)
        return Words::tr("cut at the top ticks, lay on %1").arg(sheetName(column, row - 1));
    return column == 0 && row == 0 ? Words::tr("start here")
                                   : Words::tr("stands alone: see how the sheets go together");
}

void drawRuler(Marks& marks, PointMm left)
{
    marks.across(left.x, left.x + kRuler, left.y, kOutline, kInk);
    for (int i = 0; i <= 10; ++i) {
        const Mm height(i % 5 == 0 ? 4 : 2.5);
        marks.down(left.x + Mm(i * 10.0), left.y - height, left.y, kOutline, kInk);
    }
    for (const int i : {0, 5, 10})
        marks.write(i == 10 ? QStringLiteral("100 mm") : QString::number(i * 10),
            {left.x + Mm(i * 10.0 + 0.8), left.y - Mm(2.6)},
            kNameCap);
}

// Outlines of the parts on the small panel, and their names.
void drawParts(Marks& marks, const SheetPlan& plan, const SheetPage& page, bool withoutWhite)
{
    const PointMm at = page.panelAt;
    const double scale = page.panelScale;
    const RectMm& small = page.window;
    const auto line = [&](Mm x) { marks.down(x, small.y, small.bottom(), kOutline, kInk); };
    const auto row = [&](Mm y) { marks.across(small.x, small.right(), y, kOutline, kInk); };
    for (int i = 0; i < plan.columns; ++i)
        line(at.x + plan.area(i, 0).x * scale);
    for (int i = 0; i < plan.rows; ++i)
        row(at.y + plan.area(0, i).y * scale);
    line(small.right());
    row(small.bottom());
    for (int index = 0; index < plan.count(); ++index) {
        const int column = index % plan.columns;
        if (withoutWhite && plan.isWhite(column, index / plan.columns))
            continue;
        const RectMm area = plan.area(column, index / plan.columns);
        const PointMm corner{at.x + area.x * scale, at.y + area.y * scale};
        const QString name = sheetName(column, index / plan.columns);
        marks.fill({corner.x + Mm(1),
                       corner.y + Mm(1),
                       Mm(2.6 + 2.4 * double(name.size())),
                       kStepCap + Mm(2)},
            0xffffffff);
        marks.write(name, {corner.x + Mm(2), corner.y + Mm(2) + kStepCap}, kStepCap, true);
    }
}

SheetPage togetherPage(const SheetPlan& plan, const SheetOptions& options, const QString& panelName)
{
    const Mm inset = std::max(options.margin, Mm(10));
    const Mm width = plan.sheet.width - 2 * inset;
    const Mm foot(52); // ruler and words
    const Mm head(12);
    SheetPage page;
    page.name = QStringLiteral("Together");
    page.size = plan.sheet;
    page.panelScale = std::min(width / plan.panel.width,
        (plan.sheet.height - 2 * inset - foot - head) / plan.panel.height);
    const SizeMm small{plan.panel.width * page.panelScale, plan.panel.height * page.panelScale};
    page.panelAt = {inset + (width - small.width) / 2, inset + head};
    page.window = {page.panelAt.x, page.panelAt.y, small.width, small.height};

    Marks marks(plan.sheet);
    const auto heading =
        marks.write(panelName.isEmpty() ? Words::tr("How the sheets go together") : panelName,
            {inset, inset + Mm(4)},
            Mm(3.2),
            true);
    const int white = options.leaveOutWhite ? plan.whiteCount() : 0;
    const QString count =
        Words::tr("%1 sheets, %2 in a row").arg(plan.count() - white).arg(plan.columns);
    marks.write(white == 0 ? count
                           : count + QStringLiteral("; ")
                + Words::tr("%1 would stay white and are left out").arg(white),
        {inset + heading.width + Mm(4), inset + Mm(4)},
        kStepCap);
    drawParts(marks, plan, page, options.leaveOutWhite);
    const Mm line = page.window.bottom() + Mm(14);
    drawRuler(marks, {inset, line});
    const std::array steps{
        Words::tr("This line must measure 100 mm. If it does not, print again at actual size (100 "
                  "%), or tell the program what it measures."),
        Words::tr("Begin with A1. Cut each further sheet at its left and top ticks."),
        Words::tr("Lay its cut edge on the ticks of the sheet before and glue it down."),
    };
    Mm below = line + Mm(8);
    for (const QString& step : steps)
        below += kStepLead * marks.write(step, {inset, below}, kStepCap, false, width).lines;
    page.marks = marks.take();
    return page;
}

SheetPage partPage(const SheetPlan& plan,
    const SheetOptions& options,
    const QString& panelName,
    int column,
    int row)
{
    const Mm margin = options.margin;
    const RectMm area = plan.area(column, row);
    SheetPage page;
    page.name = sheetName(column, row);
    page.size = plan.sheet;
    page.window = {margin, margin, area.width, area.height};
    page.panelAt = {margin - area.x, margin - area.y};
    const RectMm& part = page.window;

    std::vector<Mm> xs{part.x, part.right()};
    std::vector<Mm> ys{part.y, part.bottom()};
    // Where the next sheet's part begins: its cut edge is laid here.
    if (column + 1 < plan.columns && plan.overlap > Mm(0))
        xs.push_back(part.x + plan.area(column + 1, row).x - area.x);
    if (row + 1 < plan.rows && plan.overlap > Mm(0))
        ys.push_back(part.y + plan.area(column, row + 1).y - area.y);
    Marks marks(plan.sheet);
    drawTicks(marks, part, xs, ys);
    const QString name =
        panelName.isEmpty() ? page.name : panelName + QStringLiteral(" \u00b7 ") + page.name;
    const PointMm foot{part.x + Mm(2), part.bottom() + kTickGap + kNameCap};
    const Mm width = marks.write(name, foot, kNameCap, true).width;
    marks.write(joinSentence(plan, options.leaveOutWhite, column, row),
        {foot.x + width + Mm(2), foot.y},
        kNameCap);
    page.marks = marks.take();
    return page;
}

} // namespace

RectMm SheetPage::seen() const
{
    return {(window.x - panelAt.x) / panelScale,
        (window.y - panelAt.y) / panelScale,
        window.width / panelScale,
        window.height / panelScale};
}

std::vector<SheetPage> sheetPages(
    const SheetPlan& plan, const SheetOptions& options, const QString& panelName)
{
    std::vector<SheetPage> pages{togetherPage(plan, options, panelName)};
    for (int row = 0; row < plan.rows; ++row) {
        for (int column = 0; column < plan.columns; ++column) {
            if (!options.leaveOutWhite || !plan.isWhite(column, row))
                pages.push_back(partPage(plan, options, panelName, column, row));
        }
    }
    return pages;
}

QString sheetPanelName(int number, std::size_t panels)
{
    return panels > 1 ? Words::tr("Panel %1").arg(number) : QString();
}

} // namespace wainscot
