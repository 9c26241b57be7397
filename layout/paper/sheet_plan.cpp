#include "layout/paper/sheets.h"

#include <algorithm>
#include <cmath>

namespace wainscot {

namespace {

constexpr int kMostSheets = 400;
constexpr Mm kLeastPart{20};

// Where sheets begin along one side. The last one begins earlier where only a strip would be left
// for it; two half steps are always there to be shared.
std::vector<Mm> beginnings(Mm length, Mm part, Mm overlap, int count)
{
    const Mm step = part - overlap;
    std::vector<Mm> places;
    places.reserve(static_cast<std::size_t>(count));
    for (int i = 0; i < count; ++i)
        places.push_back(i * step);
    if (count > 1)
        places.back() = std::min(places.back(), length - std::min(kLeastStrip, step / 2));
    return places;
}

SheetPlan planFor(SizeMm panel, SizeMm sheet, const SheetOptions& options)
{
    SheetPlan plan;
    plan.sheet = sheet;
    plan.part = {sheet.width - 2 * options.margin, sheet.height - 2 * options.margin};
    plan.panel = panel;
    plan.overlap = options.overlap;
    const auto count = [&](Mm length, Mm part) {
        const double exact = (length - options.overlap) / (part - options.overlap);
        return std::max(1, static_cast<int>(std::ceil(exact - 1e-9)));
    };
    plan.columns = count(panel.width, plan.part.width);
    plan.rows = count(panel.height, plan.part.height);
    plan.lefts = beginnings(panel.width, plan.part.width, plan.overlap, plan.columns);
    plan.tops = beginnings(panel.height, plan.part.height, plan.overlap, plan.rows);
    return plan;
}

} // namespace

RectMm SheetPlan::area(int column, int row) const
{
    const auto length = [this](const std::vector<Mm>& from, int index, Mm most, Mm end) {
        const auto at = static_cast<std::size_t>(index);
        const Mm to = at + 1 < from.size() ? std::min(from[at + 1] + overlap, end) : end;
        return std::min(most, to - from[at]);
    };
    return {lefts[static_cast<std::size_t>(column)],
        tops[static_cast<std::size_t>(row)],
        length(lefts, column, part.width, panel.width),
        length(tops, row, part.height, panel.height)};
}

bool SheetPlan::isWhite(int column, int row) const
{
    const auto at = static_cast<std::size_t>(row) * static_cast<std::size_t>(columns)
        + static_cast<std::size_t>(column);
    return at < white.size() && white[at];
}

int SheetPlan::whiteCount() const
{
    return static_cast<int>(std::count(white.begin(), white.end(), true));
}

Result<SheetPlan> planSheets(SizeMm panel, const SheetOptions& options)
{
    const QString paper = QStringLiteral("%1 x %2 mm")
                              .arg(options.paper.width.value())
                              .arg(options.paper.height.value());
    const Mm shorter = std::min(options.paper.width, options.paper.height);
    const Mm longer = std::max(options.paper.width, options.paper.height);
    if (options.margin < Mm(0) || options.overlap < Mm(0) || panel.isEmpty()
        || shorter - 2 * options.margin < options.overlap + kLeastPart) {
        return Error{ErrorCode::WrongUse,
            paper,
            QStringLiteral(
                "a margin of %1 mm and an overlap of %2 mm leave too little of the paper")
                .arg(options.margin.value())
                .arg(options.overlap.value())};
    }
    const SheetPlan upright = planFor(panel, {shorter, longer}, options);
    const SheetPlan sideways = planFor(panel, {longer, shorter}, options);
    const SheetPlan& fewer = sideways.count() < upright.count() ? sideways : upright;
    if (fewer.count() > kMostSheets)
        return Error{ErrorCode::WrongUse,
            paper,
            QStringLiteral("it would take %1 sheets").arg(fewer.count())};
    return fewer;
}

QString sheetName(int column, int row)
{
    QString letters;
    for (int rest = row; rest >= 0; rest = rest / 26 - 1)
        letters.prepend(QChar(u'A' + rest % 26));
    return letters + QString::number(column + 1);
}

} // namespace wainscot
