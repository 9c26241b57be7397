#include "app/jobs/engine_request.h"

#include "layout/check/limits.h"

#include <QLocale>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <map>
#include <utility>

namespace wainscot {

namespace {

// Both lists name the same kinds in the same order.
static_assert(static_cast<int>(engine::Kind::Credits) == static_cast<int>(PieceKind::Credits));
static_assert(static_cast<int>(engine::Kind::Quote) == static_cast<int>(PieceKind::Quote));

// A marked part needs its own room and three percent of air on each side. With it safe, more of the
// rest may go than from a picture of which nobody has said what matters.
constexpr double kLeastKeptAroundMark = 0.55;
double keepAround(double marked)
{
    return std::min(1.0, std::max(kLeastKeptAroundMark, marked + 0.06));
}

// "Bigger" is half as large again and a little more: a change that is seen across a room.
double scaleFor(int size)
{
    constexpr double kStep = 1.6;
    double scale = 1;
    for (int step = 0; step < std::abs(size); ++step)
        scale *= size > 0 ? kStep : 1 / kStep;
    return scale;
}

engine::PictureShape shapeOf(const ClearedPiece& piece)
{
    engine::PictureShape shape;
    shape.size = piece.picture->size;
    if (piece.kind == PieceKind::Work) {
        shape.keepWidth = 1;
        shape.keepHeight = 1;
    } else if (piece.picture->mustStay) {
        shape.keepWidth = keepAround(piece.picture->mustStay->width);
        shape.keepHeight = keepAround(piece.picture->mustStay->height);
    }
    return shape;
}

// What a template can do without, before anything else has to go.
bool mayBeLeftOut(const ClearedPiece& piece, const QString& plan)
{
    if (plan == QLatin1String("evening"))
        return piece.group > 1;
    if (plan == QLatin1String("drawing"))
        return piece.kind == PieceKind::Interpretation;
    if (plan == QLatin1String("voices"))
        return piece.kind == PieceKind::Credits;
    if (plan == QLatin1String("before"))
        return piece.kind == PieceKind::Interpretation;
    if (plan == QLatin1String("questions"))
        return piece.kind == PieceKind::Credits;
    if (plan == QLatin1String("door"))
        return piece.kind == PieceKind::NextStep || piece.kind == PieceKind::Context;
    if (plan == QLatin1String("thread"))
        return piece.kind == PieceKind::Interpretation || piece.kind == PieceKind::NextStep;
    return piece.kind == PieceKind::NextStep;
}

// A pin stays exactly where it is. What a hand has put over the margin is taken into the grid: the
// engine knows nothing beyond it.
void pin(engine::Item& item, const RectMm& cell, const Grid& grid)
{
    constexpr Mm kHair(0.05);
    const RectMm inside =
        RectMm{{}, {}, grid.panel.width, grid.panel.height}.grown(kHair - grid.margin);
    const bool whole = cell.x >= inside.x && cell.y >= inside.y && cell.right() <= inside.right()
        && cell.bottom() <= inside.bottom();
    item.pinned = gridRectFor(grid, cell);
    if (whole)
        item.pinnedAt = cell;
}

// Pieces of one group, and pieces the teacher keeps together, are one block.
class Blocks {
public:
    explicit Blocks(const std::vector<ClearedPiece>& pieces)
    {
        std::map<int, int> ofGroup;
        std::map<int, int> ofTogether;
        for (const ClearedPiece& piece : pieces) {
            m_parents.push_back(int(m_parents.size()));
            const int at = m_parents.back();
            if (piece.group > 0)
                join(at, ofGroup.try_emplace(piece.group, at).first->second);
            if (piece.together > 0)
                join(at, ofTogether.try_emplace(piece.together, at).first->second);
        }
        std::map<int, int> sizes;
        for (int i = 0; i < int(pieces.size()); ++i)
            ++sizes[root(i)];
        std::map<int, int> numbers;
        for (int i = 0; i < int(pieces.size()); ++i) {
            const bool alone = pieces[std::size_t(i)].group == 0 && sizes[root(i)] == 1;
            m_numbers.push_back(
                alone ? 0 : numbers.try_emplace(root(i), int(numbers.size()) + 1).first->second);
        }
    }
    [[nodiscard]] int numberOf(std::size_t piece) const { return m_numbers[piece]; } // 0 = alone

private:
    [[nodiscard]] int root(int at) const
    {
        while (m_parents[std::size_t(at)] != at)
            at = m_parents[std::size_t(at)];
        return at;
    }
    void join(int a, int b)
    {
        const int first = std::min(root(a), root(b));
        m_parents[std::size_t(std::max(root(a), root(b)))] = first;
    }

    std::vector<int> m_parents;
    std::vector<int> m_numbers;
};

// A block is read in one go: its pieces follow its first one.
void bringTogether(std::vector<engine::Item>& items)
{
    std::map<int, std::size_t> firsts;
    for (std::size_t i = 0; i < items.size(); ++i) {
        if (items[i].group > 0)
            firsts.try_emplace(items[i].group, i);
    }
    std::vector<std::pair<std::size_t, std::size_t>> order;
    for (std::size_t i = 0; i < items.size(); ++i)
        order.emplace_back(items[i].group > 0 ? firsts[items[i].group] : i, i);
    std::sort(order.begin(), order.end());
    std::vector<engine::Item> sorted;
    sorted.reserve(items.size());
    for (const auto& [first, own] : order)
        sorted.push_back(items[own]);
    items = std::move(sorted);
}

} // namespace

engine::GridRect gridRectFor(const Grid& grid, const RectMm& cell)
{
    const Mm across = grid.column + grid.gutter;
    engine::GridRect at;
    at.x = std::clamp(
        static_cast<int>(std::lround((cell.x - grid.margin) / across)), 0, grid.columns - 1);
    at.y = std::clamp(
        static_cast<int>(std::lround((cell.y - grid.margin) / grid.rowUnit)), 0, grid.rows - 1);
    const auto columns = static_cast<int>(std::lround((cell.width + grid.gutter) / across));
    const auto rows = static_cast<int>(std::lround((cell.height + grid.gutter) / grid.rowUnit));
    at.w = std::clamp(columns, 1, grid.columns - at.x);
    at.h = std::clamp(rows, 1, grid.rows - at.y);
    return at;
}

double leastPpi(const PanelStyle& style)
{
    const double metres = 0.8 * style.readingDistance.value() / 1000;
    return std::max(check::limitOf(check::Limit::PictureFloor).value,
        check::limitOf(check::Limit::PictureSharpness).value / metres);
}

engine::Request requestFor(
    const ClearedPanel& panel, const PanelStyle& style, const PanelMeasurer& text)
{
    engine::Request request;
    const Grid& grid = style.grid;
    request.page.size = grid.panel;
    request.page.margin = grid.margin;
    request.page.gutter = grid.gutter;
    request.page.rowUnit = grid.rowUnit;
    request.page.columns = grid.columns;
    request.page.rows = grid.rows;
    request.page.minPpi = leastPpi(style);
    request.pages = 1;
    request.plan = panel.display().plan.toStdString();
    const bool twoLanguages = panel.display().plan == QLatin1String("evening");
    const QString first = panel.pieces().empty() ? QString() : panel.pieces().front().language;
    const Blocks blocks(panel.pieces());
    for (std::size_t at = 0; at < panel.pieces().size(); ++at) {
        const ClearedPiece& piece = panel.pieces()[at];
        engine::Item item;
        item.id = piece.id.number();
        item.kind = static_cast<engine::Kind>(piece.kind);
        item.importance = piece.dominant ? 3 : 1;
        item.group = blocks.numberOf(at);
        item.indent = text.indent(item.id);
        item.fromRight = QLocale(piece.language).textDirection() == Qt::RightToLeft;
        item.optional = mayBeLeftOut(piece, panel.display().plan);
        if (twoLanguages && !isPicture(piece.kind))
            item.side = sameLanguage(piece.language, first) ? 1 : 2;
        item.wish.scale = scaleFor(piece.size);
        if (piece.picture)
            item.picture = shapeOf(piece);
        if (piece.pinned && !piece.cell.isEmpty())
            pin(item, piece.cell, grid);
        request.items.push_back(item);
    }
    bringTogether(request.items);
    return request;
}

} // namespace wainscot
