#include "tests/support/wall_boxes.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

namespace wainscot::walls {

namespace {

constexpr double kPhotoInk = 0.45;
constexpr double kWorkInk = 0.15;
constexpr double kTintInk = 0.05;
constexpr double kLetters = 0.25; // of a line's cap band
constexpr double kTouch = 0.2; // mm
constexpr int kHoleColumns = 3;
constexpr int kHoleRows = 6;

bool isGround(const check::FillFact& fill, const PanelStyle& style)
{
    return fill.colour == style.palette.tint1 || fill.colour == style.palette.tint2;
}

RectMm boxOf(const check::TextLine& line)
{
    return {line.left, line.capLine(), line.right - line.left, line.cap};
}

// A gutter, or a gutter and whole steps.
bool stepsApart(double distance, double gutter, double step)
{
    const double steps = (distance - gutter) / step;
    return steps > -kTouch / step && std::abs(steps - std::round(steps)) * step <= kTouch;
}

double distance(const RectMm& a, const RectMm& b)
{
    const double x = std::max({(b.x - a.right()).value(), (a.x - b.right()).value(), 0.0});
    const double y = std::max({(b.y - a.bottom()).value(), (a.y - b.bottom()).value(), 0.0});
    return std::hypot(x, y);
}

class Covered {
public:
    Covered(const std::vector<Box>& boxes, const Grid& grid)
        : m_columns(grid.columns)
        , m_rows(grid.rows)
        , m_cells(std::size_t(grid.columns) * std::size_t(grid.rows))
    {
        for (int c = 0; c < m_columns; ++c)
            for (int r = 0; r < m_rows; ++r) {
                const RectMm cell{grid.x(c), grid.y(r), grid.column, grid.rowUnit};
                at(c, r) = std::any_of(boxes.begin(), boxes.end(), [&](const Box& box) {
                    const RectMm both = intersection(cell, box.all);
                    return both.width > Mm(kTouch) && both.height > Mm(kTouch);
                });
            }
    }

    // Fills the largest hole; false = there is none.
    bool fillHole()
    {
        int best = kHoleColumns * kHoleRows;
        int left = 0, top = 0, right = -1, bottom = -1;
        for (int c = 0; c < m_columns; ++c)
            for (int end = c + kHoleColumns; end <= m_columns; ++end)
                for (int r = 0, from = 0; r <= m_rows; ++r) {
                    if (r < m_rows && whiteRow(c, end, r))
                        continue;
                    const int high = r - from;
                    const bool atFoot = r == m_rows;
                    if (!atFoot && high >= kHoleRows && high * (end - c) > best) {
                        best = high * (end - c);
                        left = c, top = from, right = end, bottom = r;
                    }
                    from = r + 1;
                }
        for (int c = left; c < right; ++c)
            for (int r = top; r < bottom; ++r)
                at(c, r) = true;
        return right >= 0;
    }

private:
    bool whiteRow(int from, int end, int row)
    {
        for (int c = from; c < end; ++c)
            if (at(c, row))
                return false;
        return true;
    }
    std::vector<bool>::reference at(int column, int row)
    {
        return m_cells[std::size_t(row * m_columns + column)];
    }

    int m_columns;
    int m_rows;
    std::vector<bool> m_cells;
};

} // namespace

RectMm united(const RectMm& a, const RectMm& b)
{
    if (a.isEmpty())
        return b;
    if (b.isEmpty())
        return a;
    const Mm x = std::min(a.x, b.x);
    const Mm y = std::min(a.y, b.y);
    return {x, y, std::max(a.right(), b.right()) - x, std::max(a.bottom(), b.bottom()) - y};
}

std::vector<Box> boxesOf(const check::PanelFacts& facts)
{
    std::map<PieceId, Box> boxes;
    for (const check::TextLine& line : facts.lines)
        boxes[line.piece].words = united(boxes[line.piece].words, boxOf(line));
    for (const check::PictureFact& picture : facts.pictures)
        boxes[picture.piece].picture = picture.place;
    for (const check::FillFact& fill : facts.fills)
        if (isGround(fill, facts.style))
            boxes[fill.piece].ground = united(boxes[fill.piece].ground, fill.rect);
    std::vector<Box> out;
    for (auto& [piece, box] : boxes) {
        box.piece = piece;
        box.all = united(united(box.words, box.picture), box.ground);
        out.push_back(box);
    }
    return out;
}

int holesIn(const std::vector<Box>& boxes, const Grid& grid)
{
    Covered covered(boxes, grid);
    int holes = 0;
    while (covered.fillHole())
        ++holes;
    return holes;
}

double imbalanceOf(const std::vector<Box>& boxes, SizeMm panel)
{
    double quarters[4] = {};
    const double area = panel.width.value() * panel.height.value() / 4;
    double mean = 0;
    for (int q = 0; q < 4; ++q) {
        const RectMm quarter{panel.width / 2 * (q % 2),
            panel.height / 2 * (q / 2),
            panel.width / 2,
            panel.height / 2};
        for (const Box& box : boxes)
            for (const RectMm& part : {box.ground.isEmpty() ? box.picture : box.ground,
                     box.ground.isEmpty() || !box.picture.isEmpty() ? box.words : RectMm()})
                quarters[q] += intersection(part, quarter).areaMm2() / area;
        mean += quarters[q] / 4;
    }
    double variance = 0;
    for (const double quarter : quarters)
        variance += (quarter - mean) * (quarter - mean) / 4;
    return std::sqrt(variance);
}

Touched touchedBy(const check::PanelFacts& facts, const std::vector<Box>& boxes)
{
    Touched out;
    for (const Box& box : boxes) {
        const bool framed = !box.picture.isEmpty() && !box.ground.isEmpty();
        out.paper += box.ground.areaMm2() + (framed ? 0 : box.picture.areaMm2());
        out.ink += box.picture.areaMm2() * (framed ? kWorkInk : kPhotoInk);
        out.ink += kTintInk * (box.ground.areaMm2() - (framed ? box.picture.areaMm2() : 0));
        out.tint += box.picture.isEmpty() ? box.ground.areaMm2() : 0;
    }
    for (const check::TextLine& line : facts.lines) {
        out.paper += kLetters * boxOf(line).areaMm2();
        out.ink += kLetters * boxOf(line).areaMm2();
    }
    const double page =
        facts.display.panelSize.width.value() * facts.display.panelSize.height.value();
    return {out.paper / page, out.ink / page, out.tint / page};
}

bool slotsApart(const std::vector<Place>& places, const Grid& grid)
{
    const double gutter = grid.gutter.value();
    const double column = (grid.column + grid.gutter).value();
    for (const Place& one : places) {
        const RectMm& a = one.slot;
        double below = 1e9;
        double beside = 1e9;
        for (const Place& other : places) {
            const RectMm& b = other.slot;
            const bool sameColumns = b.x < a.right() - Mm(kTouch) && a.x < b.right() - Mm(kTouch);
            const bool sameRows = b.y < a.bottom() - Mm(kTouch) && a.y < b.bottom() - Mm(kTouch);
            if (sameColumns && b.y > a.y)
                below = std::min(below, (b.y - a.bottom()).value());
            if (sameRows && b.x > a.x)
                beside = std::min(beside, (b.x - a.right()).value());
        }
        if (below < 1e9 && !stepsApart(below, gutter, grid.rowUnit.value()))
            return false;
        if (beside < 1e9 && !stepsApart(beside, gutter, column))
            return false;
    }
    return true;
}

bool captionsApart(const check::PanelFacts& facts, const std::vector<Box>& boxes)
{
    for (const Box& one : boxes) {
        if (one.picture.isEmpty() || one.words.isEmpty())
            continue;
        const RectMm& shown = one.ground.isEmpty() ? one.picture : one.ground;
        const double own = (one.words.y - shown.bottom()).value();
        for (const Box& other : boxes)
            if (other.piece != one.piece && distance(one.words, other.all) < 2 * own - kTouch)
                return false;
    }
    return !facts.pieces.empty();
}

bool marginsClear(const check::PanelFacts& facts)
{
    const Grid& grid = facts.style.grid;
    const RectMm room =
        RectMm{Mm(0), Mm(0), grid.panel.width, grid.panel.height}.grown(Mm(kTouch) - grid.margin);
    const auto inside = [&](const RectMm& rect) {
        return rect.x >= room.x && rect.y >= room.y && rect.right() <= room.right()
            && rect.bottom() <= room.bottom();
    };
    // Other scripts are sized by eye against Latin and have no cap line: a fifth of it is theirs.
    const auto lineInside = [&](const check::TextLine& line) {
        const Pairing& faces = facts.style.pairing;
        RectMm box = boxOf(line);
        if (line.family != faces.voiceFamily && line.family != faces.adultFamily) {
            box.y += 0.2 * line.cap;
            box.height -= 0.2 * line.cap; // the baseline stays where it is
        }
        return inside(box);
    };
    return std::all_of(facts.lines.begin(), facts.lines.end(), lineInside)
        && std::all_of(facts.pictures.begin(),
            facts.pictures.end(),
            [&](const check::PictureFact& picture) { return inside(picture.place); });
}

} // namespace wainscot::walls
