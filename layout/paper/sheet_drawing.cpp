#include "layout/paper/sheet_drawing.h"

#include "layout/typeset/style.h"
#include "layout/typeset/text_block.h"

#include <algorithm>

namespace wainscot::pdf {

namespace {

constexpr QRgb kInk = 0xff202020;
constexpr Pt kHairline{0.25};
constexpr Pt kOutline{0.75};
constexpr Mm kTick{3};
constexpr Mm kTickGap{0.7}; // between a part and its ticks
constexpr Mm kNameCap{1.6};
constexpr Mm kStepCap{2.6};
constexpr Mm kRuler{100};

// A line of the sheet's own words, its baseline starting at a point; answers its width.
Mm write(PageContent& page, const QString& text, PointMm at, Mm cap, bool bold = false)
{
    TextSpan span;
    span.text = text;
    span.face = {Voice::Adult,
        bold ? Weight::Bold : Weight::Regular,
        TypeRole::Caption,
        cap,
        QStringLiteral("en")};
    span.colour = kInk;
    const TextBlock block(pairings().front(), {span}, QStringLiteral("en"));
    const LineBreaks line = block.lines(Breaking::Paragraph, Mm(5000));
    for (const GlyphRun& run : block.draw(line, {at.x, false, at.y, cap * 2}).runs)
        page.drawRun(run);
    return line.ends.empty() ? Mm(0) : block.widthOf(line, 0);
}

// The part on its sheet.
RectMm window(const SheetContext& context, int column, int row)
{
    const RectMm area = context.plan.area(column, row);
    return {context.options.margin, context.options.margin, area.width, area.height};
}

// Ticks in the margins at a height or a width of the part.
std::vector<Line> ticks(const RectMm& part, const std::vector<Mm>& xs, const std::vector<Mm>& ys)
{
    const Mm length = kTick;
    std::vector<Line> lines;
    for (const Mm x : xs) {
        lines.push_back({{x, part.y - kTickGap - length}, {x, part.y - kTickGap}});
        lines.push_back({{x, part.bottom() + kTickGap}, {x, part.bottom() + kTickGap + length}});
    }
    for (const Mm y : ys) {
        lines.push_back({{part.x - kTickGap - length, y}, {part.x - kTickGap, y}});
        lines.push_back({{part.right() + kTickGap, y}, {part.right() + kTickGap + length, y}});
    }
    return lines;
}

QString joinSentence(int column, int row)
{
    if (column == 0 && row == 0)
        return QStringLiteral("start here");
    if (row == 0)
        return QStringLiteral("cut at the left ticks, lay on %1").arg(sheetName(column - 1, row));
    if (column == 0)
        return QStringLiteral("cut at the top ticks, lay on %1").arg(sheetName(column, row - 1));
    return QStringLiteral("cut at the left and top ticks, lay on %1 and %2")
        .arg(sheetName(column - 1, row), sheetName(column, row - 1));
}

void drawRuler(PageContent& page, PointMm left)
{
    std::vector<Line> lines{{left, {left.x + kRuler, left.y}}};
    for (int i = 0; i <= 10; ++i) {
        const Mm x = left.x + Mm(i * 10.0);
        const Mm height(i % 5 == 0 ? 4 : 2.5);
        lines.push_back({{x, left.y - height}, {x, left.y}});
    }
    page.drawLines(lines, kOutline, kInk);
    for (const int i : {0, 5, 10})
        write(page,
            i == 10 ? QStringLiteral("100 mm") : QString::number(i * 10),
            {left.x + Mm(i * 10.0 + 0.8), left.y - Mm(2.6)},
            kNameCap);
}

// Outlines of the parts on the small panel, and their names.
void drawParts(PageContent& page, const SheetContext& context, PointMm at, double scale)
{
    const SheetPlan& plan = context.plan;
    std::vector<Line> lines;
    const Mm right = at.x + plan.panel.width * scale;
    const Mm bottom = at.y + plan.panel.height * scale;
    const auto vertical = [&](Mm x) { lines.push_back({{x, at.y}, {x, bottom}}); };
    const auto horizontal = [&](Mm y) { lines.push_back({{at.x, y}, {right, y}}); };
    for (int column = 0; column < plan.columns; ++column)
        vertical(at.x + plan.area(column, 0).x * scale);
    for (int row = 0; row < plan.rows; ++row)
        horizontal(at.y + plan.area(0, row).y * scale);
    vertical(right);
    horizontal(bottom);
    page.drawLines(lines, kOutline, kInk);
    for (int row = 0; row < plan.rows; ++row) {
        for (int column = 0; column < plan.columns; ++column) {
            const RectMm area = plan.area(column, row);
            const PointMm corner{at.x + area.x * scale, at.y + area.y * scale};
            const QString name = sheetName(column, row);
            page.fill({corner.x + Mm(1),
                          corner.y + Mm(1),
                          Mm(2.6 + 2.4 * double(name.size())),
                          kStepCap + Mm(2)},
                0xffffffff);
            write(page, name, {corner.x + Mm(2), corner.y + Mm(2) + kStepCap}, kStepCap, true);
        }
    }
}

} // namespace

void drawSheet(PageContent& page, const SheetContext& context, int column, int row)
{
    const SheetPlan& plan = context.plan;
    const RectMm area = plan.area(column, row);
    const RectMm part = window(context, column, row);
    page.drawForm("/Panel", context.form, part, {part.x - area.x, part.y - area.y}, 1, plan.panel);

    std::vector<Mm> xs{part.x, part.right()};
    std::vector<Mm> ys{part.y, part.bottom()};
    // Where the next sheet's part begins: its cut edge is laid here.
    if (column + 1 < plan.columns && plan.overlap > Mm(0))
        xs.push_back(part.x + plan.area(column + 1, row).x - area.x);
    if (row + 1 < plan.rows && plan.overlap > Mm(0))
        ys.push_back(part.y + plan.area(column, row + 1).y - area.y);
    page.drawLines(ticks(part, xs, ys), kHairline);

    QString name = sheetName(column, row);
    if (!context.panelName.isEmpty())
        name = context.panelName + QStringLiteral(" \u00b7 ") + name;
    const PointMm foot{part.x + Mm(2), part.bottom() + kTickGap + kNameCap};
    const Mm width = write(page, name, foot, kNameCap, true);
    write(page, joinSentence(column, row), {foot.x + width + Mm(2), foot.y}, kNameCap);
}

void drawAssembly(PageContent& page, const SheetContext& context)
{
    const SheetPlan& plan = context.plan;
    const Mm inset = std::max(context.options.margin, Mm(10));
    const Mm width = plan.sheet.width - 2 * inset;
    const Mm foot(44); // ruler and words
    const Mm head(12);
    const double scale = std::min(width / plan.panel.width,
        (plan.sheet.height - 2 * inset - foot - head) / plan.panel.height);
    const PointMm at{inset + (width - plan.panel.width * scale) / 2, inset + head};
    const QString count =
        QStringLiteral("%1 sheets, %2 in a row").arg(plan.count()).arg(plan.columns);
    const Mm used = write(page,
        context.panelName.isEmpty() ? QStringLiteral("How the sheets go together")
                                    : context.panelName,
        {inset, inset + Mm(4)},
        Mm(3.2),
        true);
    write(page, count, {inset + used + Mm(4), inset + Mm(4)}, kStepCap);
    page.drawForm("/Panel",
        context.form,
        {at.x, at.y, plan.panel.width * scale, plan.panel.height * scale},
        at,
        scale,
        plan.panel);
    drawParts(page, context, at, scale);

    const Mm top = at.y + plan.panel.height * scale + Mm(14);
    drawRuler(page, {inset, top});
    const std::array steps{
        QStringLiteral("This line must measure 100 mm; else print again at actual size (100 %)."),
        QStringLiteral("Begin with A1. Cut each further sheet at its left and top ticks."),
        QStringLiteral("Lay its cut edge on the ticks of the sheet before and glue it down."),
    };
    for (std::size_t i = 0; i < steps.size(); ++i)
        write(page, steps[i], {inset, top + Mm(8 + 6.5 * double(i))}, kStepCap);
}

} // namespace wainscot::pdf
