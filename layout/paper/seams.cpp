// Where the seams between sheets cut least.
#include "layout/paper/sheets.h"

#include "layout/typeset/faces.h"
#include "layout/typeset/mark_place.h"
#include "layout/typeset/marked_part.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace wainscot {

namespace {

constexpr Mm kLeastFlap{5}; // to glue on
constexpr Mm kTiny{1e-6};
constexpr Mm kNear{1}; // a seam that close to something looks as if it cut it
constexpr double kMoved = 0.02; // of a millimetre of picture, for each millimetre of moving
// What it costs to cut a millimetre of it; set by eye on printed panels, no source.
constexpr double kPicture = 1;
constexpr double kWork = 3;
constexpr double kText = 10;
constexpr double kMarked = 40;
// Height of letters around a baseline, in em.
constexpr double kAscent = 0.8;
constexpr double kDescent = 0.25;

struct Obstacle {
    RectMm place;
    double cost = 0;
};

RectMm boxOf(const GlyphRun& run)
{
    const double em = run.sizeUnits;
    double left = run.positions.front().x();
    double right = left;
    for (const QPointF& at : run.positions) {
        left = std::min(left, at.x());
        right = std::max(right, at.x() + 0.5 * em);
    }
    const double baseline = run.positions.front().y();
    return {run.origin.x + unitsToMm(left),
        run.origin.y + unitsToMm(baseline - kAscent * em),
        unitsToMm(right - left),
        unitsToMm((kAscent + kDescent) * em)};
}

std::vector<Obstacle> obstaclesOf(const DisplayList& list)
{
    std::vector<Obstacle> found;
    for (const Mark& mark : list.marks) {
        if (const auto* run = std::get_if<GlyphRun>(&mark.shape); run && !run->positions.empty())
            found.push_back({boxOf(*run), kText});
        const auto* placed = std::get_if<PlacedPicture>(&mark.shape);
        if (placed == nullptr)
            continue;
        const bool whole = placed->picture.visible == RectFraction();
        found.push_back({placed->place, whole ? kWork : kPicture});
        if (placed->picture.mustStay)
            found.push_back({markedPart(placed->picture, placed->place), kMarked});
    }
    return found;
}

// Nothing is drawn there; a white ground does not count.
bool staysWhite(const DisplayList& list, const RectMm& area)
{
    return std::none_of(list.marks.begin(), list.marks.end(), [&](const Mark& mark) {
        if (const auto* fill = std::get_if<Fill>(&mark.shape);
            fill != nullptr && fill->colour == 0xffffffff)
            return false;
        const auto* run = std::get_if<GlyphRun>(&mark.shape);
        if (run != nullptr)
            return !run->positions.empty()
                && !intersection(boxOf(*run).grown(kNear), area).isEmpty();
        const auto place = placeOf(mark);
        return place && !intersection(*place, area).isEmpty();
    });
}

// What a straight seam across the whole panel would cut at a place along one side.
double costAt(const std::vector<Obstacle>& obstacles, Mm at, Qt::Orientation along)
{
    double cost = 0;
    for (const Obstacle& one : obstacles) {
        const bool across = along == Qt::Horizontal;
        const Mm from = (across ? one.place.x : one.place.y) - kNear;
        const Mm to = (across ? one.place.right() : one.place.bottom()) + kNear;
        if (at > from && at < to)
            cost += one.cost * (across ? one.place.height : one.place.width).value();
    }
    return cost;
}

struct Side {
    Mm length; // of the panel
    Mm part; // of a sheet
    Mm overlap;
    std::vector<Mm> usual; // where sheets begin
    // From where one sheet begins to where the next does.
    [[nodiscard]] Mm longestStep() const { return part - std::min(overlap, kLeastFlap); }
    [[nodiscard]] Mm shortestStep() const { return std::min(kLeastStrip, part - overlap); }
};

// Where a sheet may begin, by whole millimetres from its usual place: every sheet reaches under the
// next one, all of them together to the panel's end, and none shows next to nothing of its own.
// What the last sheet does not need of its paper is slack for every seam.
std::vector<Mm> choicesOf(const Side& side, std::size_t sheet)
{
    const std::size_t count = side.usual.size();
    const Mm usual = side.usual[sheet];
    if (sheet == 0)
        return {usual};
    const auto after = double(count - 1 - sheet);
    const Mm ownOfLast = std::min(kLeastStrip, side.length - side.usual.back());
    const Mm from = side.length - side.part - after * side.longestStep();
    const Mm to =
        std::min(double(sheet) * side.longestStep(), side.length - ownOfLast - after * kLeastStrip);
    std::vector<Mm> choices{usual};
    for (Mm at = usual - Mm(1); at >= std::max(from, Mm(1)) - kTiny; at -= Mm(1))
        choices.push_back(at);
    for (Mm at = usual + Mm(1); at <= to + kTiny; at += Mm(1))
        choices.push_back(at);
    return choices;
}

// A beginning of a sheet, the cheapest seams up to it, and which beginning of the sheet before they
// come from.
struct Begun {
    Mm at;
    double cost = std::numeric_limits<double>::infinity();
    std::size_t from = 0;
};

void reachFrom(const std::vector<Begun>& before, Begun& begun, double own, const Side& side)
{
    for (std::size_t i = 0; i < before.size(); ++i) {
        const Mm step = begun.at - before[i].at;
        const double sum = before[i].cost + own;
        if (step < side.shortestStep() - kTiny || step > side.longestStep() + kTiny
            || sum >= begun.cost)
            continue;
        begun.cost = sum;
        begun.from = i;
    }
}

// The cheapest beginnings of all sheets.
std::vector<Mm> quietest(
    const Side& side, const std::vector<Obstacle>& obstacles, Qt::Orientation along)
{
    const std::size_t count = side.usual.size();
    std::vector<std::vector<Begun>> all(count);
    for (std::size_t sheet = 0; sheet < count; ++sheet) {
        for (const Mm at : choicesOf(side, sheet)) {
            Begun& begun = all[sheet].emplace_back(Begun{at});
            if (sheet == 0) {
                begun.cost = 0;
                continue;
            }
            const double moved = std::abs((at - side.usual[sheet]).value());
            reachFrom(all[sheet - 1], begun, costAt(obstacles, at, along) + kMoved * moved, side);
        }
    }
    std::vector<Mm> places = side.usual;
    const auto cheapest = std::min_element(all.back().begin(),
        all.back().end(),
        [](const Begun& a, const Begun& b) { return a.cost < b.cost; });
    auto choice = static_cast<std::size_t>(cheapest - all.back().begin());
    for (std::size_t sheet = count; sheet-- > 1;) {
        places[sheet] = all[sheet][choice].at;
        choice = all[sheet][choice].from;
    }
    return places;
}

} // namespace

SheetPlan withQuietSeams(SheetPlan plan, const DisplayList& list)
{
    const std::vector<Obstacle> obstacles = obstaclesOf(list);
    plan.lefts = quietest(
        {plan.panel.width, plan.part.width, plan.overlap, plan.lefts}, obstacles, Qt::Horizontal);
    plan.tops = quietest(
        {plan.panel.height, plan.part.height, plan.overlap, plan.tops}, obstacles, Qt::Vertical);
    plan.white.clear();
    for (int row = 0; row < plan.rows; ++row) {
        for (int column = 0; column < plan.columns; ++column)
            plan.white.push_back(staysWhite(list, plan.area(column, row)));
    }
    return plan;
}

} // namespace wainscot
